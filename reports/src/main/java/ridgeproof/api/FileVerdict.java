package ridgeproof.api;

/** What the findings on a file come to; the later the worse. */
public enum FileVerdict {
  /** Nothing was found that a bureau is known to reject. */
  READY,
  /** Some of the problems are commonly rejected, or the prints may not match. */
  REVIEW,
  /** A bureau that follows the published standards will reject the file. */
  HOLD,
  /** The file cannot be read as a transaction. */
  UNREADABLE
}
