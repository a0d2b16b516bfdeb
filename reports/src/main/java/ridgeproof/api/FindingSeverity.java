package ridgeproof.api;

/** What a finding means for the sender, the worst first. */
public enum FindingSeverity {
  /** A bureau that follows the source rejects the file or cannot read it. */
  BLOCKING,
  /** Commonly rejected, or the print may not match. */
  LIKELY,
  /** Allowed, but worth checking. */
  ADVICE,
  /** For information. */
  NOTE
}
