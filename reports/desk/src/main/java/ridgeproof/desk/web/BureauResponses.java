package ridgeproof.desk.web;

import java.util.List;
import java.util.Optional;
import ridgeproof.examination.FindingsReport;
import ridgeproof.ledger.response.Responses;

/** Transactions that a bureau sends back, by the published kinds of transaction. */
final class BureauResponses {

  private static final String TYPES = "transaction-types";
  private static final String KIND = "kind";
  private static final String ERROR = "error";
  private static final String RESPONSE = "response";
  private static final int REFERENCE = 10;

  private BureauResponses() {}

  /** Whether a bureau sent it: by its type, or by the messages in it. */
  static boolean isResponse(FindingsReport report) {
    return isOfKind(report, ERROR) || isAcceptance(report) || !messages(report).isEmpty();
  }

  /** Whether the bureau processed what it answers. */
  static boolean isAcceptance(FindingsReport report) {
    return isOfKind(report, RESPONSE);
  }

  private static boolean isOfKind(FindingsReport report, String kind) {
    return report
        .transaction()
        .typeOfTransaction()
        .flatMap(type -> report.tables().codes(TYPES).find(type))
        .filter(code -> kind.equals(code.property(KIND)))
        .isPresent();
  }

  /** The control number of what it answers (field 1.010). */
  static Optional<String> reference(FindingsReport report) {
    return report
        .transaction()
        .header()
        .flatMap(header -> header.text(REFERENCE))
        .map(String::strip)
        .filter(number -> !number.isEmpty());
  }

  /** What the bureau says in words (field 2.060). */
  static List<String> messages(FindingsReport report) {
    return Responses.texts(report.transaction()).filter(text -> !text.isBlank()).toList();
  }
}
