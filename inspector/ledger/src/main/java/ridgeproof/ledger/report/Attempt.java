package ridgeproof.ledger.report;

import java.util.Optional;
import ridgeproof.examination.Verdict;
import ridgeproof.ledger.ResponseOutcome;

/**
 * A file of the ledger, as far as figures need it.
 *
 * @param day days since 1970-01-01
 * @param fileHash the first digits
 * @param control keyed hash of its control number, empty text without one
 * @param refers keyed hash of the control number that a response answers
 * @param outcome of a response
 */
record Attempt(
    long id,
    long day,
    String fileHash,
    String control,
    long station,
    String operator,
    Verdict verdict,
    Optional<String> refers,
    Optional<ResponseOutcome> outcome) {}
