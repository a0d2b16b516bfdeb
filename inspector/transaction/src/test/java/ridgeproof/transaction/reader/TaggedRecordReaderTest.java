package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.reader.RawTransaction.FS;
import static ridgeproof.transaction.reader.RawTransaction.GS;
import static ridgeproof.transaction.reader.RawTransaction.fields;
import static ridgeproof.transaction.reader.RawTransaction.findings;
import static ridgeproof.transaction.reader.RawTransaction.header;
import static ridgeproof.transaction.reader.RawTransaction.read;
import static ridgeproof.transaction.reader.RawTransaction.tagged;
import static ridgeproof.transaction.reader.RawTransaction.types;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.LogicalRecord;

class TaggedRecordReaderTest {

  private static final String HEADER = header("2 00");
  private static final int SECOND = HEADER.length();

  private static LogicalRecord second(String file) {
    return read(file).records().get(1);
  }

  private static String text(String file, int field) {
    return second(file).text(field).orElse("");
  }

  @Test
  void aFieldReachesToItsSeparatorAndItsValueToJustBeforeIt() {
    String file = HEADER + tagged(2, "2.002:00", "2.018:SPECIMEN,ADA");
    LogicalRecord record = second(file);
    assertEquals(
        List.of(
            "2.001 = 37 at " + (SECOND + 6) + "+2",
            "2.002 = 00 at " + (SECOND + 15) + "+2",
            "2.018 = SPECIMEN,ADA at " + (SECOND + 24) + "+12"),
        fields(record));
    assertEquals(new ByteRange(SECOND + 9, 9), record.fields().get(1).range());
    assertEquals(new ByteRange(SECOND + 18, 19), record.fields().get(2).range());
    assertEquals(OptionalInt.of(0), record.idc());
    assertEquals(OptionalInt.empty(), read(file).records().get(0).idc());
    assertEquals(List.of(), findings(file));
  }

  @Test
  void theFirstOfTwoIdcsCounts() {
    String file = HEADER + tagged(2, "2.002:00", "2.002:07");
    assertEquals(OptionalInt.of(0), second(file).idc());
    assertEquals(
        List.of(
            "RP-STR-010 record 2 field 2.002 at " + (SECOND + 18) + "+8: 2.002 again | one field"),
        findings(file));
  }

  @Test
  void aLengthOfTenDigitsIsNone() {
    String file = HEADER + tagged("0000000026", 2, "2.002:00");
    assertEquals(
        List.of("RP-STR-005 record 2 at " + SECOND + "+26: no readable LEN | LEN 26"),
        findings(file));
  }

  @Test
  void aLengthOfNineDigitsIsRead() {
    assertEquals(List.of(), findings(HEADER + tagged("000000025", 2, "2.002:00")));
  }

  @Test
  void aWrongLengthIsReportedAtItsDigits() {
    String file = HEADER + tagged("25", 2, "2.002:00");
    assertEquals(
        List.of("RP-STR-004 record 2 field 2.001 at " + (SECOND + 6) + "+2: LEN 25 | LEN 18"),
        findings(file));
  }

  @Test
  void aLengthThatLeadsIntoItsOwnTagIsWrong() {
    String head = header("19 01", "9 02");
    String file =
        head
            + tagged("1", 19, "19.002:01", "19.003:1")
            + tagged(9, "9.002:02", "9.003:1", "9.004:S");
    Transaction transaction = read(file);
    assertEquals(List.of(1, 19, 9), types(transaction));
    assertEquals(
        List.of(
            "RP-STR-004 record 2 field 19.001 at " + (head.length() + 7) + "+1: LEN 1 | LEN 28"),
        findings(transaction));
  }

  @Test
  void aFileThatEndsWithinALengthIsCutOff() {
    String file = HEADER + "2.001:9";
    assertEquals(
        "RP-STR-012 record 2 at " + SECOND + "+7: 7 bytes, then the end of the file | 9 bytes",
        findings(file).get(0));
    assertEquals(List.of("2.001 = 9 at " + (SECOND + 6) + "+1"), fields(second(file)));
  }

  @Test
  void aFileThatEndsWithinATextIsCutOff() {
    String record = tagged(2, "2.002:00", "2.018:SPECIMEN,ADA");
    String file = HEADER + record.substring(0, record.length() - 5);
    assertEquals(
        List.of(
            "RP-STR-012 record 2 at "
                + SECOND
                + "+32: 32 bytes, then the end of the file | 37 bytes"),
        findings(file));
    assertEquals("SPECIMEN", text(file, 18));
  }

  @Test
  void aFileThatEndsWithinARecordOfNoLengthIsCutOff() {
    String record = tagged("", 2, "2.002:00", "2.018:SPECIMEN,ADA");
    String file = HEADER + record.substring(0, record.length() - 5);
    assertEquals(
        List.of(
            "RP-STR-012 record 2 at "
                + SECOND
                + "+30: 30 bytes, then the end of the file | a complete record"),
        findings(file));
  }

  @Test
  void aLastRecordThatIsAsLongAsItSaysIsNotCutOff() {
    String record = tagged(2, "2.002:00", "2.018:SPECIMEN,ADA");
    String file = HEADER + record.substring(0, record.length() - 1) + GS;
    assertEquals(
        List.of("RP-STR-006 record 2 at " + (file.length() - 1) + "+1: GS (0x1D) | FS (0x1C)"),
        findings(file));
  }

  @Test
  void aMissingEndIsReportedAtTheLastByte() {
    String head = header("2 00", "9 01");
    String record = tagged(2, "2.002:00", "2.018:SPECIMEN,ADA");
    String file = head + record.replace(FS, "") + tagged(9, "9.002:01", "9.003:1");
    assertEquals(
        List.of(
            "RP-STR-006 record 2 at "
                + (head.length() + record.length() - 2)
                + "+1: 0x41 | FS (0x1C)"),
        findings(file));
    assertEquals("SPECIMEN,ADA", text(file, 18));
  }

  @Test
  void aRecordOfAWrongLengthEndsWhereTheNextOneIsOpened() {
    String head = header("2 00", "9 01");
    String record = tagged("99", 2, "2.002:00", "2.018:SPECIMEN,ADA").replace(FS, GS);
    String file = head + record + tagged(9, "9.002:01", "9.003:1");
    assertEquals(List.of(1, 2, 9), types(read(file)));
    int end = head.length() + record.length();
    assertEquals(
        List.of(
            "RP-STR-006 record 2 at " + (end - 1) + "+1: GS (0x1D) | FS (0x1C)",
            "RP-STR-004 record 2 field 2.001 at " + (head.length() + 6) + "+2: LEN 99 | LEN 37"),
        findings(file));
  }

  @Test
  void aRecordSeparatorInAValueBelongsToItWhereTheLengthSaysSo() {
    String file = HEADER + tagged(2, "2.002:00", "2.018:SPECIMEN" + FS + "ADA", "2.019:X");
    assertEquals("SPECIMEN" + FS + "ADA", text(file, 18));
    assertEquals("X", text(file, 19));
    assertEquals(
        "RP-STR-007 record 2 at "
            + file.indexOf(FS + "ADA")
            + "+1: FS (0x1C) inside the record | a character of the value",
        findings(file).get(0));
  }

  @Test
  void aRecordSeparatorBeforeAnotherFieldIsReportedOnce() {
    String file =
        HEADER + tagged(2, "2.002:00", "2.018:SPECIMEN,ADA").replace(GS + "2.018", FS + "2.018");
    assertEquals(
        List.of(
            "RP-STR-007 record 2 at "
                + (SECOND + 17)
                + "+1: FS (0x1C) inside the record | GS (0x1D)"),
        findings(file));
    assertEquals("SPECIMEN,ADA", text(file, 18));
  }

  @Test
  void aFieldWithoutASeparatorBeforeItIsReadFromItsTagOn() {
    String file = HEADER + tagged(2, "2.002:00", "2.018:SPECIMEN,ADA2.019:X");
    assertEquals(
        List.of(
            "RP-STR-007 record 2 field 2.019 at "
                + file.indexOf("2.019")
                + "+1: no separator before 2.019 | GS (0x1D)"),
        findings(file));
    assertEquals("SPECIMEN,ADA", text(file, 18));
    assertEquals("X", text(file, 19));
  }

  @Test
  void aTagRightBehindATagLeavesTheFirstFieldEmpty() {
    String file = HEADER + tagged(2, "2.002:00", "2.018:2.019:X");
    assertEquals(
        List.of("2.018 =  at " + (SECOND + 24) + "+0"), fields(second(file)).subList(2, 3));
    assertEquals("X", text(file, 19));
    assertEquals(1, findings(file).size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"SEE 2.018: X", "SEE 2.017: X", "SEE 9.019: X", "SEE 2.19: X", ".5", "A.B", "2."})
  void whatCannotBeALaterFieldBelongsToTheValue(String value) {
    String file = HEADER + tagged(2, "2.002:00", "2.018:" + value);
    assertEquals(List.of(), findings(file));
    assertEquals(value, text(file, 18));
  }

  @Test
  void aPointNearTheBeginningOfAValueIsNoTag() {
    String file = header("14 01") + tagged(14, "14.002:01", "14.020:1.5", "14.021:.5");
    assertEquals(List.of(), findings(file));
    assertEquals("1.5", text(file, 20));
    assertEquals(".5", text(file, 21));
  }

  @Test
  void aTagOfAnotherTypeIsReportedWithItsField() {
    String file = HEADER + tagged(2, "2.002:00", "9.018:X");
    assertEquals(
        List.of(
            "RP-STR-008 record 2 field 9.018 at "
                + (SECOND + 18)
                + "+7: 9.018 | a tag that begins with 2."),
        findings(file));
  }

  @Test
  void bytesWithoutATagReachToTheNextSeparator() {
    String file = HEADER + tagged(2, "2.002:00", "NAME", "2.018:X");
    assertEquals(
        List.of(
            "RP-STR-009 record 2 at "
                + (SECOND + 18)
                + "+5: 5 bytes without a field number | a tag such as 2.003:"),
        findings(file));
    assertEquals(List.of(new ByteRange(SECOND + 18, 5)), second(file).unread());
    assertEquals("X", text(file, 18));
  }

  @Test
  void aFieldSeparatorTooManyIsOneByteWithoutATag() {
    String file = HEADER + tagged(2, "2.002:00", "", "2.018:X");
    assertEquals(
        List.of(
            "RP-STR-009 record 2 at "
                + (SECOND + 18)
                + "+1: 1 byte without a field number | a tag such as 2.003:"),
        findings(file));
    assertEquals("X", text(file, 18));
  }

  @Test
  void bytesWithoutATagEndARecordOfAWrongLengthWithIt() {
    String file = HEADER + tagged("77", 2, "2.002:00", "NAME") + "2 ?";
    assertEquals(
        List.of(
            "RP-STR-009 record 2 at "
                + (SECOND + 18)
                + "+5: 5 bytes without a field number | a tag such as 2.003:",
            "RP-STR-004 record 2 field 2.001 at " + (SECOND + 6) + "+2: LEN 77 | LEN 23",
            "RP-STR-013 at " + (SECOND + 23) + "+3: 3 bytes | the file ends with the last record"),
        findings(file));
  }

  @Test
  void bytesWithoutATagBeforeAStrayRecordSeparatorDoNotEndTheRecord() {
    String file = HEADER + tagged("77", 2, "2.002:00", "NAME" + FS + "2.018:X");
    assertEquals("X", text(file, 18));
    assertEquals(
        "RP-STR-007 record 2 at " + (SECOND + 22) + "+1: FS (0x1C) inside the record | GS (0x1D)",
        findings(file).get(1));
  }

  @Test
  void bytesWithoutATagToTheEndOfTheFileAreReported() {
    String file = HEADER + tagged("77", 2, "2.002:00").replace(FS, GS) + "NAME";
    assertEquals(
        List.of(
            "RP-STR-009 record 2 at "
                + (SECOND + 18)
                + "+4: 4 bytes without a field number | a tag such as 2.003:",
            "RP-STR-012 record 2 at "
                + SECOND
                + "+22: 22 bytes, then the end of the file | 77 bytes"),
        findings(file));
  }

  @Test
  void anImageReachesToTheStatedEndWhereOnlyJunkFollows() {
    String head = header("14 01");
    String record = tagged(14, "14.002:01", "14.999:image");
    String file = head + record + "junk";
    assertEquals(record.length(), second(file).range().length());
    assertEquals(
        List.of(
            "RP-STR-013 at "
                + (head.length() + record.length())
                + "+4: 4 bytes | the file ends with the last record"),
        findings(file));
  }

  @Test
  void anImageWhoseStatedEndIsNoneReachesToTheEndOfTheFile() {
    String head = header("14 01");
    String file = head + tagged("32", 14, "14.002:01", "14.999:image");
    assertEquals("14.999 at " + (head.length() + 27) + "+5", fields(second(file)).get(2));
    assertEquals(
        List.of(
            "RP-STR-004 record 2 field 14.001 at " + (head.length() + 7) + "+2: LEN 32 | LEN 33"),
        findings(file));
  }

  @Test
  void anImageThatHoldsWhatLooksLikeARecordKeepsItsStatedLength() {
    String file = header("14 01") + tagged(14, "14.002:01", "14.999:im 2.001:20" + GS + "age");
    assertEquals(List.of(1, 14), types(read(file)));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void anImageMayBeEmpty() {
    String file = header("14 01") + tagged(14, "14.002:01", "14.999:");
    assertEquals("14.999 at " + (file.length() - 1) + "+0", fields(second(file)).get(2));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void fieldsOutOfOrderAreReportedOnceAtTheFirstThatComesTooLate() {
    String file = HEADER + tagged(2, "2.002:00", "2.019:X", "2.018:Y", "2.017:Z");
    assertEquals(
        List.of(
            "RP-STR-011 record 2 field 2.018 at "
                + (SECOND + 26)
                + "+8: 2.018 after 2.019 | ascending field numbers"),
        findings(file));
  }
}
