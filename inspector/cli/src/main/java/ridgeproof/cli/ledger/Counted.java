package ridgeproof.cli.ledger;

/** A number with its noun. */
final class Counted {

  private Counted() {}

  static String of(long count, String one, String several) {
    return count + " " + (count == 1 ? one : several);
  }
}
