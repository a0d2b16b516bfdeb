package ridgeproof.ledger;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;

/**
 * One examination as the ledger keeps it.
 *
 * @param id drawn at random, so that several writers need not agree
 * @param examined when, to the millisecond
 * @param day the date of the transaction (field 1.005) where it is plausible, else of the
 *     examination
 * @param fileHash SHA-256 of the file, hexadecimal
 * @param control keyed hash of the control number (field 1.009)
 * @param clearControl the control number itself, only where the user asked for it
 * @param type code of the type of transaction (field 1.004), empty text where no list has it
 * @param operator keyed hash of the operator
 * @param program version of Ridgeproof
 * @param tables version of its tables
 * @param response what it says, if the file is a response
 */
public record Entry(
    long id,
    Instant examined,
    LocalDate day,
    String fileHash,
    Optional<String> control,
    Optional<String> clearControl,
    String type,
    Station station,
    Optional<String> operator,
    Verdict verdict,
    Depth depth,
    String program,
    String tables,
    List<EntryFinding> findings,
    List<EntryPrint> prints,
    Optional<Response> response) {

  public Entry {
    findings = List.copyOf(findings);
    prints = List.copyOf(prints);
  }
}
