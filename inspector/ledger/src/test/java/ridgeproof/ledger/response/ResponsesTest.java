package ridgeproof.ledger.response;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.Response;
import ridgeproof.ledger.ResponseMessage;
import ridgeproof.ledger.ResponseOutcome;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

class ResponsesTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final KeyedHash HASH = new KeyedHash(new byte[KeyedHash.KEY_BYTES]);

  private static Transaction transaction(String type, String reference, String... messages) {
    List<FieldDraft> header =
        new ArrayList<>(
            List.of(
                text(1, 1, ""),
                text(1, 2, "0500"),
                text(1, 3, ""),
                text(1, 4, type),
                text(1, 5, "20260302"),
                text(1, 7, "THP000001"),
                text(1, 8, "THP000000"),
                text(1, 9, "BUREAU-1")));
    if (!reference.isEmpty()) {
      header.add(text(1, 10, reference));
    }
    header.add(text(1, 11, "00.00"));
    header.add(text(1, 12, "00.00"));
    List<FieldDraft> second = new ArrayList<>(List.of(text(2, 1, ""), text(2, 2, "00")));
    if (messages.length > 0) {
      second.add(
          FieldDraft.text(
              new FieldNumber(2, 60), List.of(messages).stream().map(List::of).toList()));
    }
    byte[] bytes =
        new TransactionWriter(CharacterEncoding.ASCII)
            .write(List.of(RecordDraft.tagged(1, header), RecordDraft.tagged(2, second)));
    return new TransactionReader(TABLES, ParseLimits.standard()).read(ByteSource.of(bytes));
  }

  private static FieldDraft text(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), value);
  }

  private static Optional<Response> of(Transaction transaction) {
    return new Responses(TABLES, HASH).of(transaction);
  }

  @Test
  void resultsOfASubmissionAreAnAcceptance() {
    assertEquals(
        Optional.of(new Response(HASH.control("PILOT-7"), ResponseOutcome.ACCEPTED, List.of())),
        of(transaction("SRE", "PILOT-7")));
  }

  @Test
  void anErrorIsARejectionWithItsReasonsAndFingers() {
    assertEquals(
        Optional.of(
            new Response(
                HASH.control("PILOT-7"),
                ResponseOutcome.REJECTED,
                List.of(
                    new ResponseMessage("L0008", OptionalInt.of(3)),
                    new ResponseMessage("E0002", OptionalInt.empty())))),
        of(
            transaction(
                "ERRT",
                "PILOT-7",
                "L0008 QUALITY TOO LOW, FINGER 3",
                "E0002 ELEMENT FAILED VALIDATION 2.022")));
  }

  @Test
  void aSubmissionIsNoResponse() {
    assertEquals(Optional.empty(), of(transaction("FAUF", "PILOT-7")));
  }

  @Test
  void anAnswerThatNamesNoSubmissionCannotBeTied() {
    assertEquals(Optional.empty(), of(transaction("SRE", "")));
  }

  @ParameterizedTest
  @CsvSource({
    "'L0008 QUALITY TOO LOW, FINGER 07', 7",
    "'L0008 FGP: 2', 2",
    "'L0008 LEFT RING FINGER', 9",
    "'L0008 right thumb of poor quality', 1"
  })
  void theFingerIsReadFromTheWords(String text, int finger) {
    assertEquals(
        new ResponseMessage("L0008", OptionalInt.of(finger)), new Reasons(TABLES).of(text));
  }

  @Test
  void nothingOfTheTextItselfIsKept() {
    assertEquals(
        new ResponseMessage(ResponseMessage.UNKNOWN, OptionalInt.empty()),
        new Reasons(TABLES).of("SPECIMEN,ADA IS KNOWN TO US"));
  }
}
