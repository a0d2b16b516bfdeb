package ridgeproof.finding;

/** A number and its noun, which agree: 1 byte, 2 bytes. */
public final class Quantity {

  private Quantity() {}

  /** The digits without separators, as they are in the file, and the noun with an s unless one. */
  public static String of(long number, String noun) {
    return number + " " + (number == 1 ? noun : noun + "s");
  }
}
