package ridgeproof.ledger.response;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.Outcome;
import ridgeproof.ledger.Response;
import ridgeproof.ledger.ResponseMessage;
import ridgeproof.spec.Code;
import ridgeproof.spec.FieldNumber;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Field;
import ridgeproof.transaction.Transaction;

/** Tells responses from other transactions by the published types, and reads them. */
public final class Responses {

  private static final String TYPES = "transaction-types";
  private static final String KIND = "kind";
  private static final int REFERENCE = 10;
  private static final FieldNumber MESSAGE = new FieldNumber(2, 60);
  private static final Pattern CODE = Pattern.compile("\\b[A-Z]\\d{4}\\b");
  private static final int MAX_MESSAGES = 50;

  private final SpecTables tables;
  private final KeyedHash hash;

  public Responses(SpecTables tables, KeyedHash hash) {
    this.tables = tables;
    this.hash = hash;
  }

  /** What a response says; empty for other transactions and where it names no submission. */
  public Optional<Response> of(Transaction transaction) {
    Optional<Outcome> outcome = outcome(transaction);
    Optional<String> refers = transaction.header().flatMap(header -> header.text(REFERENCE));
    return outcome.isEmpty() || refers.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Response(
                hash.control(refers.get()), outcome.get(), messages(transaction, outcome.get())));
  }

  /** An error is a rejection, and any other answer says that the submission was processed. */
  private Optional<Outcome> outcome(Transaction transaction) {
    return transaction
        .typeOfTransaction()
        .flatMap(type -> tables.codes(TYPES).find(type))
        .map((Code code) -> code.property(KIND))
        .flatMap(
            kind ->
                switch (kind) {
                  case "error" -> Optional.of(Outcome.REJECTED);
                  case "response" -> Optional.of(Outcome.ACCEPTED);
                  default -> Optional.empty();
                });
  }

  private static List<ResponseMessage> messages(Transaction transaction, Outcome outcome) {
    if (outcome == Outcome.ACCEPTED) {
      return List.of();
    }
    return transaction.recordsOfType(MESSAGE.recordType()).stream()
        .flatMap(record -> record.field(MESSAGE).stream())
        .flatMap(Responses::texts)
        .limit(MAX_MESSAGES)
        .map(Responses::message)
        .toList();
  }

  private static Stream<String> texts(Field field) {
    return field.subfields().stream().map(subfield -> subfield.text(1)).filter(t -> !t.isEmpty());
  }

  private static ResponseMessage message(String text) {
    Matcher code = CODE.matcher(text);
    return new ResponseMessage(
        code.find() ? code.group() : ResponseMessage.NO_CODE, OptionalInt.empty());
  }
}
