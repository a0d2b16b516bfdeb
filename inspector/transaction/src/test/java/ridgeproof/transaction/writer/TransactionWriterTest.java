package ridgeproof.transaction.writer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.CharacterEncoding;

class TransactionWriterTest {

  private static final String FS = "\u001C";
  private static final String GS = "\u001D";
  private static final String RS = "\u001E";
  private static final String US = "\u001F";

  private static FieldDraft text(int type, int field, String value) {
    return FieldDraft.text(new FieldNumber(type, field), value);
  }

  private static RecordDraft header() {
    return RecordDraft.tagged(1, List.of(text(1, 1, ""), text(1, 2, "0500"), text(1, 4, "FAUF")));
  }

  private static String write(RecordDraft... records) {
    return TransactionSamples.text(TransactionSamples.write(List.of(records)));
  }

  /** The record behind a header. */
  private static String second(RecordDraft record) {
    String file = write(header(), record);
    return file.substring(file.indexOf(FS) + 1);
  }

  @Test
  void theHeaderListsEachRecordBehindIt() {
    RecordDraft two = RecordDraft.tagged(2, List.of(text(2, 1, ""), text(2, 2, "00")));
    assertEquals(
        "1.001:51"
            + GS
            + "1.002:0500"
            + GS
            + "1.003:1"
            + US
            + "2"
            + RS
            + "2"
            + US
            + "00"
            + RS
            + "4"
            + US
            + "07"
            + GS
            + "1.004:FAUF"
            + FS,
        write(header(), two, TransactionSamples.binaryFingerprint(7, 1)).substring(0, 51));
  }

  @Test
  void aTransactionOfNothingButItsHeaderListsNothing() {
    assertEquals(
        "1.001:41" + GS + "1.002:0500" + GS + "1.003:1" + US + "0" + GS + "1.004:FAUF" + FS,
        write(header()));
  }

  @Test
  void itemsSubfieldsAndFieldsHaveTheirSeparators() {
    FieldDraft field =
        FieldDraft.text(new FieldNumber(9, 3), List.of(List.of("A", "B"), List.of("", "C")));
    assertEquals(
        "9.001:31" + GS + "9.002:01" + GS + "9.003:A" + US + "B" + RS + US + "C" + FS,
        second(RecordDraft.tagged(9, List.of(text(9, 1, "7"), text(9, 2, "01"), field))));
  }

  @ParameterizedTest
  @ValueSource(
      ints = {0, 76, 77, 78, 79, 80, 81, 82, 83, 84, 85, 975, 976, 977, 978, 979, 980, 981})
  void aLengthCountsItsOwnDigits(int characters) {
    String record =
        second(RecordDraft.tagged(2, List.of(text(2, 1, ""), text(2, 3, "x".repeat(characters)))));
    assertEquals("2.001:" + record.length(), record.substring(0, record.indexOf(GS)));
  }

  @Test
  void theLengthLeadsWhereverItStandsAndHasTheTagThatItHad() {
    FieldDraft length = new FieldDraft(new FieldNumber(2, 1), "2.01", List.of(), Optional.empty());
    assertEquals(
        "2.01:17" + GS + "2.002:00" + FS,
        second(RecordDraft.tagged(2, List.of(text(2, 2, "00"), length))));
    assertEquals(
        "2.001:18" + GS + "2.002:00" + FS,
        second(RecordDraft.tagged(2, List.of(text(2, 2, "00")))));
  }

  @Test
  void anImageIsWrittenByteForByte() {
    FieldDraft image =
        FieldDraft.data(
            new FieldNumber(14, 999), ByteSource.of(TransactionSamples.ascii(GS + "\u00FF" + FS)));
    assertEquals(
        "14.001:21" + GS + "14.999:" + GS + "\u00FF" + FS + FS,
        second(RecordDraft.tagged(14, List.of(text(14, 1, ""), image))));
  }

  @Test
  void aBinaryRecordHasItsLengthInFourBytes() {
    RecordDraft record =
        RecordDraft.binary(
            8,
            List.of(
                FieldDraft.binary(new FieldNumber(8, 1), 4, 0),
                FieldDraft.binary(new FieldNumber(8, 2), 1, 9),
                FieldDraft.binary(new FieldNumber(8, 6), 2, 0x0102, 0xFFFE),
                text(8, 7, "no bytes"),
                FieldDraft.binary(new FieldNumber(8, 8), ByteSource.of(new byte[70_000]))));
    String written = second(record);
    assertEquals(70_009, written.length());
    assertEquals(
        "\u0000\u0001\u0011\u0079\u0009\u0001\u0002\u00FF\u00FE\u0000", written.substring(0, 10));
  }

  @Test
  void aTextIsWrittenInTheEncodingOfTheTransaction() {
    RecordDraft record = RecordDraft.tagged(2, List.of(text(2, 1, ""), text(2, 3, "\u00C9")));
    byte[] bytes = new TransactionWriter(CharacterEncoding.UTF_8).write(List.of(header(), record));
    String file = TransactionSamples.text(bytes);
    assertEquals("2.001:18" + GS + "2.003:\u00C3\u0089" + FS, file.substring(file.indexOf(FS) + 1));
    assertEquals("2.001:17" + GS + "2.003:\u00C9" + FS, second(record));
  }

  @Test
  void whatWasReadIsWrittenAsItWas() {
    byte[] bytes =
        TransactionSamples.write(
            List.of(
                TransactionSamples.header(),
                TransactionSamples.particulars().with(20, List.of(List.of("A", ""), List.of("B"))),
                TransactionSamples.fingerprint(1, 1),
                TransactionSamples.binaryFingerprint(2, 2)));
    assertEquals(
        TransactionSamples.text(bytes),
        TransactionSamples.text(TransactionWriter.write(TransactionSamples.read(bytes))));
  }
}
