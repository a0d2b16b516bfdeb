package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Accounting;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

class TransactionReaderTest {

  private static final String FS = "\u001C";
  private static final String GS = "\u001D";

  @Test
  void aSoundTransactionHasNoReadingFinding() {
    Transaction transaction = read(sample());
    assertEquals(List.of(), TransactionSamples.rules(transaction));
    assertEquals(List.of(1, 2, 14), types(transaction));
    assertEquals(500, transaction.version());
  }

  @Test
  void imageBytesAreDataEvenWhereTheyLookLikeSeparators() {
    LogicalRecord print = read(sample()).records().get(2);
    assertEquals(10, print.data().orElseThrow().length());
    assertEquals(0x1C, print.data().orElseThrow().byteAt(0));
  }

  @Test
  void binaryRecordsAreShownAsFields() {
    Transaction transaction =
        TransactionSamples.read(
            TransactionSamples.write(
                List.of(
                    TransactionSamples.header(),
                    TransactionSamples.particulars(),
                    TransactionSamples.binaryFingerprint(7, 3))));
    LogicalRecord record = transaction.records().get(2);
    assertEquals(List.of(), TransactionSamples.rules(transaction));
    assertEquals(7, record.idc().orElseThrow());
    assertEquals(3, record.number(6).orElseThrow());
    assertEquals(2, record.number(7).orElseThrow());
    assertEquals(6, record.field(4).orElseThrow().subfields().size());
    assertEquals(6, record.data().orElseThrow().length());
  }

  @Test
  void anEmptyFileIsSaidToBeEmpty() {
    Transaction transaction = TransactionSamples.read(new byte[0]);
    assertEquals(List.of("RP-STR-001"), TransactionSamples.rules(transaction));
    assertTrue(transaction.records().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "<?xml version='1.0'?><a/>, an XML file",
    "%PDF-1.7, a PDF document",
    "{\"a\": 1}, JSON text",
    "Dear colleagues, text",
  })
  void aFileThatIsNoTransactionIsNamed(String content, String kind) {
    Transaction transaction = TransactionSamples.read(content.getBytes(StandardCharsets.UTF_8));
    assertEquals(List.of("RP-STR-002"), TransactionSamples.rules(transaction));
    assertEquals("looks like " + kind, transaction.findings().get(0).observed().text());
  }

  @Test
  void picturesAndArchivesAreNamedByTheirFirstBytes() {
    assertEquals("looks like a JPEG image", looksLike(0xFF, 0xD8, 0xFF, 0xE0));
    assertEquals(
        "looks like a ZIP archive (perhaps an office document)", looksLike('P', 'K', 3, 4));
    assertEquals("looks like a bare WSQ image", looksLike(0xFF, 0xA0, 0xFF, 0xA8));
    assertEquals("looks like unknown binary data", looksLike(1, 2, 3));
  }

  @Test
  void aWrongLengthIsReportedWithTheOneThatFitsAndReadingGoesOn() {
    Transaction transaction = read(sample().replaceFirst("2\\.001:\\d+", "2.001:99"));
    Finding finding = only(transaction);
    assertEquals("RP-STR-004", finding.ruleId());
    assertEquals("LEN 99", finding.observed().text());
    assertEquals("LEN 37", finding.required());
    assertEquals(List.of(1, 2, 14), types(transaction));
  }

  @Test
  void aLengthOffByOneDoesNotReadTheNextTagFromItsSecondDigit() {
    for (String length : List.of("36", "38")) {
      Transaction transaction = read(sample().replaceFirst("2\\.001:\\d+", "2.001:" + length));
      assertEquals("RP-STR-004", only(transaction).ruleId());
      assertEquals(List.of(1, 2, 14), types(transaction));
    }
  }

  @Test
  void aWrongLengthOfAnImageRecordDoesNotLoseTheNextRecord() {
    byte[] two =
        TransactionSamples.write(
            List.of(
                TransactionSamples.header(),
                TransactionSamples.particulars(),
                TransactionSamples.fingerprint(1, 1),
                TransactionSamples.fingerprint(2, 2)));
    Transaction transaction =
        read(TransactionSamples.text(two).replaceFirst("14\\.001:\\d+", "14.001:44"));
    assertEquals(List.of("RP-STR-004"), TransactionSamples.rules(transaction));
    assertEquals(List.of(1, 2, 14, 14), types(transaction));
  }

  @Test
  void aWrongBinaryLengthDoesNotLoseTheNextRecord() {
    byte[] bytes =
        TransactionSamples.write(
            List.of(
                TransactionSamples.header(),
                TransactionSamples.particulars(),
                TransactionSamples.binaryFingerprint(1, 1),
                TransactionSamples.binaryFingerprint(2, 2)));
    int start = read(TransactionSamples.text(bytes)).records().get(2).range().offset();
    bytes[start + 3]++;
    Transaction transaction = TransactionSamples.read(bytes);
    assertEquals(List.of("RP-STR-004"), TransactionSamples.rules(transaction));
    assertEquals(List.of(1, 2, 4, 4), types(transaction));
  }

  @Test
  void aLengthThatIsNoNumberIsReported() {
    assertEquals(
        List.of("RP-STR-005"),
        TransactionSamples.rules(read(sample().replaceFirst("2\\.001:\\d+", "2.001:xx"))));
  }

  @Test
  void aMissingRecordSeparatorIsReported() {
    String damaged = sample().replaceFirst(FS + "2\\.001", GS + "2.001");
    Transaction transaction = read(damaged);
    assertEquals(List.of("RP-STR-006"), TransactionSamples.rules(transaction));
    assertEquals(List.of(1, 2, 14), types(transaction));
  }

  @ParameterizedTest
  @ValueSource(strings = {"SPECIMEN,ADA", "SPECIMEN,ADA 2", "SPECIMEN,ADA 14"})
  void aMissingEndOfARecordIsOneFindingWhateverItsLastValueEndsIn(String name) {
    String file =
        TransactionSamples.text(
            new TransactionWriter(CharacterEncoding.ASCII)
                .write(
                    List.of(
                        TransactionSamples.header(),
                        TransactionSamples.particulars().with(18, name),
                        TransactionSamples.fingerprint(1, 1),
                        TransactionSamples.fingerprint(2, 2))));
    String broken = file.replace(name + "\u001c", name);
    Transaction transaction = TransactionSamples.read(TransactionSamples.ascii(broken));
    assertEquals(List.of("RP-STR-006"), TransactionSamples.rules(transaction));
    assertEquals(4, transaction.records().size());
    assertEquals(name, transaction.records().get(1).text(18).orElseThrow());
  }

  @Test
  void aMissingFieldSeparatorIsReportedAndTheFieldIsStillRead() {
    Transaction transaction = read(sample().replaceFirst(GS + "1\\.005", " 1.005"));
    assertEquals(List.of("RP-STR-007"), TransactionSamples.rules(transaction));
    assertEquals("20260302", transaction.records().get(0).text(5).orElseThrow());
  }

  @Test
  void aRecordSeparatorWithinARecordIsReported() {
    Transaction transaction = read(sample().replaceFirst(GS + "1\\.005", FS + "1.005"));
    assertEquals(List.of("RP-STR-007"), TransactionSamples.rules(transaction));
    assertEquals(List.of(1, 2, 14), types(transaction));
  }

  @Test
  void bytesWithoutATagAreReportedWithTheirOffset() {
    String damaged = sample().replace("2.018:", "NAME::");
    Finding finding = only(read(damaged));
    assertEquals("RP-STR-009", finding.ruleId());
    assertEquals(damaged.indexOf("NAME::"), finding.location().bytes().orElseThrow().offset());
  }

  @Test
  void aRepeatedFieldIsReported() {
    RecordDraft header = TransactionSamples.header();
    List<FieldDraft> fields = new ArrayList<>(header.fields());
    fields.add(4, FieldDraft.text(new FieldNumber(1, 4), "FAUF"));
    Transaction transaction =
        TransactionSamples.read(
            TransactionSamples.write(
                List.of(RecordDraft.tagged(1, fields), TransactionSamples.particulars())));
    assertEquals(List.of("RP-STR-010"), TransactionSamples.rules(transaction));
  }

  @Test
  void fieldsOutOfOrderAreNoted() {
    RecordDraft header = TransactionSamples.header();
    List<FieldDraft> fields = new ArrayList<>(header.fields());
    fields.add(fields.remove(4));
    Transaction transaction =
        TransactionSamples.read(
            TransactionSamples.write(
                List.of(RecordDraft.tagged(1, fields), TransactionSamples.particulars())));
    assertEquals(List.of("RP-STR-011"), TransactionSamples.rules(transaction));
  }

  @Test
  void aCutTailIsReportedAsSuch() {
    String whole = sample();
    Transaction transaction = read(whole.substring(0, whole.length() - 4));
    assertEquals(List.of("RP-STR-012"), TransactionSamples.rules(transaction));
  }

  @Test
  void bytesAfterTheLastRecordAreReported() {
    Transaction transaction = read(sample() + "\r\n");
    assertEquals(List.of("RP-STR-013"), TransactionSamples.rules(transaction));
    assertEquals(sample().length(), transaction.unread().get(0).offset());
  }

  @Test
  void aRecordThatTheContentsDoNotListIsReported() {
    String extra =
        sample() + TransactionSamples.text(TransactionSamples.bytes()).substring(lastRecord());
    assertEquals(List.of("RP-STR-014"), TransactionSamples.rules(read(extra)));
  }

  @Test
  void aListedRecordThatIsNotThereIsReported() {
    assertEquals(
        List.of("RP-STR-014"), TransactionSamples.rules(read(sample().substring(0, lastRecord()))));
  }

  @Test
  void recordsInAnotherOrderThanListedAreReported() {
    String whole = sample();
    int second = read(whole).records().get(1).range().offset();
    String swapped =
        whole.substring(0, second)
            + whole.substring(lastRecord())
            + whole.substring(second, lastRecord());
    assertEquals(List.of("RP-STR-015"), TransactionSamples.rules(read(swapped)));
  }

  @Test
  void anIdcThatDiffersFromTheListIsReported() {
    Finding finding = only(read(sample().replace("14.002:01", "14.002:05")));
    assertEquals("RP-STR-016", finding.ruleId());
    assertEquals("Type-14 IDC 05", finding.observed().text());
    assertEquals("Type-14 IDC 01", finding.required());
    assertEquals(3, finding.location().record().orElseThrow());
  }

  @Test
  void aRecordOfAnotherTypeThanListedIsReportedWithBoth() {
    Transaction transaction = read(sample().replaceFirst("14\u001F01", "15\u001F01"));
    Finding finding = only(transaction);
    assertEquals("RP-STR-014", finding.ruleId());
    assertEquals("in the file: Type-14 IDC 01", finding.observed().text());
    assertEquals("listed: Type-15 IDC 01", finding.required());
    assertEquals(1, finding.location().record().orElseThrow());
    assertEquals("1.003", finding.location().field().orElseThrow().toString());
  }

  @Test
  void anotherOrderThanListedIsReportedAtTheFirstRecordThatDiffers() {
    Transaction transaction =
        read(sample().replaceFirst("2\u001F00\u001E14\u001F01", "14\u001F01\u001E2\u001F00"));
    Finding finding = only(transaction);
    assertEquals("RP-STR-015", finding.ruleId());
    assertEquals("record 2 is Type-2 IDC 00", finding.observed().text());
    assertEquals("Type-14 IDC 01", finding.required());
  }

  @Test
  void bytesBetweenRecordsAreReportedAndSkipped() {
    String whole = sample();
    String damaged = whole.substring(0, lastRecord()) + "?????" + whole.substring(lastRecord());
    Transaction transaction = read(damaged);
    assertTrue(TransactionSamples.rules(transaction).contains("RP-STR-018"));
    assertEquals(List.of(1, 2, 14), types(transaction));
  }

  @Test
  void aCharacterOutsideTheDeclaredSetIsReported() {
    assertEquals(
        List.of("RP-STR-019"),
        TransactionSamples.rules(read(sample().replace("SPECIMEN", "SP\u00C9CIMEN"))));
  }

  @Test
  void utf8IsReadWhereItIsDeclared() {
    List<RecordDraft> records =
        List.of(
            TransactionSamples.header().with(15, List.of(List.of("003", "UTF-8", ""))),
            TransactionSamples.particulars().with(18, "SPECIMEN,AD\u00C9LE"));
    Transaction transaction =
        TransactionSamples.read(new TransactionWriter(CharacterEncoding.UTF_8).write(records));
    assertEquals(List.of(), TransactionSamples.rules(transaction));
    assertEquals("SPECIMEN,AD\u00C9LE", transaction.records().get(1).text(18).orElseThrow());
  }

  @Test
  void utf16IsNamedAndRefused() {
    Transaction transaction =
        TransactionSamples.read(
            TransactionSamples.write(
                List.of(
                    TransactionSamples.header().with(15, List.of(List.of("002", "UTF-16", ""))),
                    TransactionSamples.particulars())));
    Finding finding = only(transaction);
    assertEquals("RP-STR-020", finding.ruleId());
    assertTrue(finding.observed().text().contains("UTF-16"), finding.observed().text());
  }

  @Test
  void aRecordWithoutAnIdcIsReported() {
    Transaction transaction = read(sample().replace("14.002:01", "14.002:??"));
    assertTrue(TransactionSamples.rules(transaction).contains("RP-STR-028"));
  }

  @Test
  void oldTagsOfTwoDigitsAreReadAndWrittenBack() {
    String old = "1.01:45" + GS + "1.02:0200" + GS + "1.03:1\u001F0" + GS + "1.04:FAUF" + FS;
    Transaction transaction = read(old.replace("45", Integer.toString(old.length())));
    assertEquals(List.of(), TransactionSamples.rules(transaction));
    assertEquals(200, transaction.version());
    assertEquals("1.04", transaction.records().get(0).field(4).orElseThrow().tag());
    assertEquals(
        TransactionSamples.text(TransactionSamples.ascii(old))
            .replace("45", Integer.toString(old.length())),
        TransactionSamples.text(TransactionWriter.write(transaction)));
  }

  private static int lastRecord() {
    Transaction transaction = TransactionSamples.read(TransactionSamples.bytes());
    return transaction.records().get(2).range().offset();
  }

  private static String looksLike(int... first) {
    byte[] bytes = new byte[first.length];
    for (int i = 0; i < first.length; i++) {
      bytes[i] = (byte) first[i];
    }
    return TransactionSamples.read(bytes).findings().get(0).observed().text();
  }

  private static Finding only(Transaction transaction) {
    assertEquals(
        1, transaction.findings().size(), TransactionSamples.rules(transaction).toString());
    return transaction.findings().get(0);
  }

  private static List<Integer> types(Transaction transaction) {
    Accounting.everyByteIsAccountedFor(transaction);
    return transaction.records().stream().map(LogicalRecord::type).toList();
  }

  private static String sample() {
    return TransactionSamples.text(TransactionSamples.bytes());
  }

  private static Transaction read(String text) {
    return TransactionSamples.read(TransactionSamples.ascii(text));
  }
}
