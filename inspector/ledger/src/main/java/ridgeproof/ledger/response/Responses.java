package ridgeproof.ledger.response;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.Response;
import ridgeproof.ledger.ResponseMessage;
import ridgeproof.ledger.ResponseOutcome;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;

/** Tells responses from other transactions by the published types, and reads them. */
public final class Responses {

  private static final String TYPES = "transaction-types";
  private static final String KIND = "kind";
  private static final int REFERENCE = 10;
  private static final FieldNumber MESSAGE = new FieldNumber(2, 60);
  private static final int MAX_MESSAGES = 50;

  private final SpecTables tables;
  private final KeyedHash hash;
  private final Reasons reasons;

  public Responses(SpecTables tables, KeyedHash hash) {
    this.tables = tables;
    this.hash = hash;
    this.reasons = new Reasons(tables);
  }

  /** What a response says; empty for other transactions and where it names no submission. */
  public Optional<Response> of(Transaction transaction) {
    Optional<ResponseOutcome> outcome = outcome(transaction);
    Optional<String> refers = transaction.header().flatMap(header -> header.text(REFERENCE));
    return outcome.isEmpty() || refers.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Response(
                hash.control(refers.get()), outcome.get(), messages(transaction, outcome.get())));
  }

  /** An error is a rejection, and any other answer says that the submission was processed. */
  private Optional<ResponseOutcome> outcome(Transaction transaction) {
    return transaction
        .typeOfTransaction()
        .flatMap(type -> tables.codes(TYPES).find(type))
        .map((Code code) -> code.property(KIND))
        .flatMap(
            kind ->
                switch (kind) {
                  case "error" -> Optional.of(ResponseOutcome.REJECTED);
                  case "response" -> Optional.of(ResponseOutcome.ACCEPTED);
                  default -> Optional.empty();
                });
  }

  private List<ResponseMessage> messages(Transaction transaction, ResponseOutcome outcome) {
    return outcome == ResponseOutcome.ACCEPTED
        ? List.of()
        : texts(transaction).map(reasons::of).limit(MAX_MESSAGES).toList();
  }

  /** The messages of the bureau as it sent them (field 2.060); they may name a person. */
  public static Stream<String> texts(Transaction transaction) {
    return transaction.recordsOfType(MESSAGE.recordType()).stream()
        .flatMap(record -> record.field(MESSAGE).stream())
        .flatMap(field -> field.subfields().stream())
        .map(subfield -> subfield.text(1))
        .filter(text -> !text.isEmpty());
  }
}
