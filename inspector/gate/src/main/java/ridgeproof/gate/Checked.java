package ridgeproof.gate;

/**
 * What a gate makes of a file's content.
 *
 * @param sha256 of the bytes that were examined; empty where none were
 * @param verdict in one word, or why there is none
 * @param ready whether it may be sent
 * @param report a page to lay beside a file that is held
 * @param step what to do first; empty where there is nothing to do
 */
record Checked(String sha256, String verdict, boolean ready, String report, String step) {

  /** Whether a file with this SHA-256 is the one that was examined. */
  boolean isOf(String found) {
    return sha256.isEmpty() || sha256.equals(found);
  }
}
