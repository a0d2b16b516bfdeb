package ridgeproof.transaction.writer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteSource;

class RecordDraftTest {

  private static final RecordDraft DRAFT =
      RecordDraft.tagged(
          2, List.of(text("2.001", 1, ""), text("2.02", 2, "00"), text("2.018", 18, "SPECIMEN")));

  private static FieldDraft text(String tag, int field, String value) {
    return new FieldDraft(
        new FieldNumber(2, field), tag, List.of(List.of(value)), Optional.empty());
  }

  private static List<String> fields(RecordDraft record) {
    return record.fields().stream().map(field -> field.tag() + ":" + field.firstText()).toList();
  }

  @Test
  void aFieldThatIsThereIsReplacedUnderItsTag() {
    assertEquals(List.of("2.001:", "2.02:07", "2.018:SPECIMEN"), fields(DRAFT.with(2, "07")));
  }

  @Test
  void aFieldThatIsMissingIsPutWhereItsNumberBelongs() {
    assertEquals(
        List.of("2.001:", "2.02:00", "2.003:X", "2.018:SPECIMEN"), fields(DRAFT.with(3, "X")));
    assertEquals(
        List.of("2.001:", "2.02:00", "2.018:SPECIMEN", "2.019:X"), fields(DRAFT.with(19, "X")));
  }

  @Test
  void onlyTheFirstOfTwoFieldsOfANumberIsReplaced() {
    RecordDraft twice =
        RecordDraft.tagged(2, List.of(text("2.018", 18, "A"), text("2.018", 18, "B")));
    assertEquals(List.of("2.018:X", "2.018:B"), fields(twice.with(18, "X")));
    assertEquals(List.of("2.003:X", "2.018:A", "2.018:B"), fields(twice.with(3, "X")));
  }

  @Test
  void everyFieldOfANumberIsTakenOut() {
    RecordDraft twice =
        RecordDraft.tagged(2, List.of(text("2.018", 18, "A"), text("2.018", 18, "B")));
    assertEquals(List.of(), fields(twice.without(18)));
    assertEquals(List.of("2.001:", "2.018:SPECIMEN"), fields(DRAFT.without(2)));
    assertEquals(fields(DRAFT), fields(DRAFT.without(3)));
  }

  @Test
  void aChangedRecordKeepsItsTypeAndEncoding() {
    RecordDraft binary =
        RecordDraft.binary(4, List.of(FieldDraft.binary(new FieldNumber(4, 2), 1, 7)));
    for (RecordDraft changed : List.of(binary.with(10, "X"), binary.without(10))) {
      assertEquals(4, changed.type());
      assertEquals(Encoding.BINARY, changed.encoding());
    }
  }

  @Test
  void theIdcIsThatOfFieldTwo() {
    assertEquals("00", DRAFT.idcText());
    assertEquals("", DRAFT.without(2).idcText());
    assertEquals(
        "07",
        RecordDraft.binary(4, List.of(FieldDraft.binary(new FieldNumber(4, 2), 1, 7))).idcText());
    FieldNumber number = new FieldNumber(4, 2);
    assertEquals(
        "",
        RecordDraft.binary(4, List.of(FieldDraft.binary(number, ByteSource.of(new byte[0]))))
            .idcText());
    assertEquals(
        "",
        RecordDraft.tagged(4, List.of(FieldDraft.data(number, ByteSource.of(new byte[] {7}))))
            .idcText());
  }

  @Test
  void aNumberTakesItsBytesFromTheHighestOn() {
    FieldDraft draft = FieldDraft.binary(new FieldNumber(4, 6), 3, 0x010203, 0xFFFFFE);
    byte[] bytes = draft.data().orElseThrow().toArray();
    assertEquals(
        List.of(1, 2, 3, 255, 255, 254),
        List.of(
            (int) bytes[0],
            (int) bytes[1],
            (int) bytes[2],
            bytes[3] & 0xFF,
            bytes[4] & 0xFF,
            bytes[5] & 0xFF));
    assertEquals("", draft.tag());
    assertEquals("", draft.firstText());
  }
}
