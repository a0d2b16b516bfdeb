package ridgeproof.ledger.report;

import ridgeproof.ledger.ResponseOutcome;

/**
 * A submission that was answered.
 *
 * @param first whether it is the first one under its control number that was answered
 */
record Sending(Attempt submission, Attempt response, boolean first) {

  boolean accepted() {
    return response.outcome().orElseThrow() == ResponseOutcome.ACCEPTED;
  }
}
