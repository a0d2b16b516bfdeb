package ridgeproof.spec.rule;

/** What a finding means for the sender, the worst first. */
public enum Severity {
  /** A bureau that follows the source will reject the transaction or cannot read it. */
  BLOCKING,
  /** Commonly rejected, or will not match. */
  LIKELY,
  /** Allowed, worth knowing. */
  ADVICE,
  /** A fact. */
  NOTE;

  public boolean worseThan(Severity other) {
    return ordinal() < other.ordinal();
  }
}
