package ridgeproof.ledger;

/** What a response says of a submission. */
public enum ResponseOutcome {
  /** The bureau processed it. */
  ACCEPTED,
  /** The bureau did not process it. */
  REJECTED
}
