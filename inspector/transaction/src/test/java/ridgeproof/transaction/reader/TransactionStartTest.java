package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.reader.RawTransaction.FS;
import static ridgeproof.transaction.reader.RawTransaction.GS;
import static ridgeproof.transaction.reader.RawTransaction.RS;
import static ridgeproof.transaction.reader.RawTransaction.US;
import static ridgeproof.transaction.reader.RawTransaction.bytes;
import static ridgeproof.transaction.reader.RawTransaction.compressed;
import static ridgeproof.transaction.reader.RawTransaction.findings;
import static ridgeproof.transaction.reader.RawTransaction.header;
import static ridgeproof.transaction.reader.RawTransaction.number;
import static ridgeproof.transaction.reader.RawTransaction.read;
import static ridgeproof.transaction.reader.RawTransaction.tagged;
import static ridgeproof.transaction.reader.RawTransaction.types;
import static ridgeproof.transaction.reader.RawTransaction.withLength;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.CharacterEncoding;

class TransactionStartTest {

  private static final String FILE = header("2 00") + tagged(2, "2.002:00", "2.018:SPECIMEN,ADA");

  @Test
  void anEmptyFileHasOneFinding() {
    assertEquals(List.of("RP-STR-001: 0 bytes | a transaction"), findings(""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x",
        "1.002:5 ",
        "12.001:9 ",
        "11.001:9 ",
        "see 1.001: ",
        "1.001 ",
        "1.001",
        "2.001:9"
      })
  void whatStandsBeforeTheFirstTagAndLengthIsSkipped(String before) {
    int count = before.length();
    assertEquals(
        List.of(
            "RP-STR-003 at 0+"
                + count
                + (count == 1 ? ": 1 byte" : ": " + count + " bytes")
                + " | a file that begins with 1.001:"),
        findings(before + FILE));
    assertEquals(List.of(1, 2), types(read(before + FILE)));
  }

  @Test
  void theEndOfAnotherRecordsTagIsNoHeader() {
    String voice = tagged(11, "11.002:00", "11.003:3");
    assertEquals(
        List.of("RP-STR-002: looks like unknown binary data | a file that begins with 1.001:"),
        findings(voice));
    assertEquals(List.of(1, 2), types(read(voice + FILE)));
  }

  @Test
  void aTagAtTheFirstByteNeedsNoLength() {
    String file = FILE.replaceFirst("1.001:\\d+", "1.001:x");
    assertEquals(List.of("RP-STR-005 record 1 at 0+45: no readable LEN | LEN 45"), findings(file));
  }

  @Test
  void theFirstTagIsLookedForInTheFirst64KiB() {
    String last = "x".repeat(64 * 1024 - 6);
    assertEquals(List.of(1, 2), types(read(last + FILE)));
    assertEquals(
        List.of("RP-STR-002: looks like text | a file that begins with 1.001:"),
        findings(last + "x" + FILE));
  }

  @Test
  void whatTheHeaderItselfHasWrongIsReportedOnce() {
    String file = FILE.replace("1.004:FAUF", "9.004:FAUF");
    assertEquals(
        List.of("RP-STR-008 record 1 field 9.004 at 35+10: 9.004 | a tag that begins with 1."),
        findings(file));
  }

  @Test
  void aVersionThatIsNotPublishedIsReportedAtItsFieldAndTheNewestTaken() {
    for (String version : List.of("0777", "0999", "V5.0")) {
      String file = tagged(1, "1.002:" + version, "1.003:1" + US + "0");
      assertEquals(
          List.of(
              "RP-STR-023 record 1 field 1.002 at 9+"
                  + (version.length() + 7)
                  + ": \""
                  + version
                  + "\" | one of the published versions, 0200 to 0502"),
          findings(file));
      assertEquals(502, read(file).version());
    }
  }

  @Test
  void aVersionThatIsEmptyOrMissingIsNoFindingOfTheReader() {
    String contents = "1.003:1" + US + "0";
    for (String file : List.of(tagged(1, "1.002:", contents), tagged(1, contents))) {
      assertEquals(List.of(), findings(file));
      assertEquals(502, read(file).version());
    }
  }

  @Test
  void aCharacterSetIsTakenByItsNumber() {
    for (String set : List.of("3", "003")) {
      String file = tagged(1, "1.002:0500", "1.003:1" + US + "0", "1.015:" + set);
      assertEquals(CharacterEncoding.UTF_8, read(file).encoding());
      assertEquals(List.of(), findings(file));
    }
  }

  @Test
  void aCharacterSetThatIsNotReadIsReportedAtItsField() {
    String file = tagged(1, "1.002:0500", "1.003:1" + US + "0", "1.015:002");
    assertEquals(
        List.of(
            "RP-STR-020 record 1 field 1.015 at 30+10: 002, UTF-16"
                + " | 000, 001 (ISO-8859-1) or 003 (UTF-8)"),
        findings(file));
    assertEquals(CharacterEncoding.ASCII, read(file).encoding());
    assertEquals(
        List.of(
            "RP-STR-021 record 1 field 1.015 at 30+10: 077 | 000, 001 (ISO-8859-1) or 003 (UTF-8)"),
        findings(file.replace("1.015:002", "1.015:077")));
  }

  @Test
  void aTypeThatTheStandardDoesNotHaveIsReportedAtItsRecord() {
    String head = header("66 01");
    assertEquals(
        List.of(
            "RP-STR-024 record 2 at "
                + head.length()
                + "+20: Type-66 | a record type of the standard"),
        findings(head + tagged(66, "66.002:01")));
  }

  @Test
  void binaryRecordsInAnotherOrderThanListedAreReadByTheirOwnLayout() {
    String signature = number(4, 14) + bytes(2, 0, 0, 0) + number(2, 3) + number(2, 2) + "ab";
    String head = header("4 01", "8 02");
    Transaction transaction = read(head + signature + compressed(1, "pixels"));
    assertEquals(List.of(1, 8, 4), types(transaction));
    assertEquals(
        List.of(
            "RP-STR-015 record 1 field 1.003 at 20+20: record 2 is Type-8 IDC 02 | Type-4 IDC 01"),
        findings(transaction));
  }

  @Test
  void aRecordBehindAPixelThatIsADigitIsReadEvenIfItIsNotListed() {
    for (int type : List.of(9, 14)) {
      String head = header("4 01");
      String file = head + compressed(1, "pixel7") + tagged(type, type + ".002:02");
      assertEquals(List.of(1, 4, type), types(read(file)));
      assertEquals(
          List.of(
              "RP-STR-014 record 1 field 1.003 at 20+15: CNT states 1 and lists 1; the file has 2"
                  + " | one entry for each record after the first"),
          findings(file));
    }
  }

  @Test
  void aBinaryRecordThatFitsSeveralTypesIsOfTheOneListed() {
    String file = header("6 01", "4 02") + compressed(1, "ab") + compressed(2, "pixels");
    assertEquals(List.of(1, 6, 4), types(read(file)));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void aBinaryRecordWithAValueOutOfRangeIsReadIfItsLengthLeadsOn() {
    String odd = compressed(1, "an image").replace(bytes(2, 255, 255), bytes(77, 255, 255));
    String last = header("4 01") + odd;
    assertEquals(List.of(), findings(last));
    assertEquals(List.of(1, 4), types(read(last)));
    String first = header("4 01", "4 02") + odd + compressed(2, "pixels");
    assertEquals(List.of(), findings(first));
    assertEquals(List.of(1, 4, 4), types(read(first)));
  }

  @Test
  void aBinaryRecordOfWrongValuesAndAWrongLengthIsNone() {
    String odd = compressed(1, "an image").replace(bytes(2, 255, 255), bytes(77, 255, 255));
    String head = header("4 01", "4 02");
    String file = head + withLength(25, odd) + compressed(2, "pixels");
    assertEquals(List.of(1, 4), types(read(file)));
    assertEquals(
        "RP-STR-018 at " + head.length() + "+26: 26 bytes | a record begins here",
        findings(file).get(0));
    String beyond = head + withLength(99, odd) + compressed(2, "pixels");
    assertEquals(
        "RP-STR-018 at " + head.length() + "+26: 26 bytes | a record begins here",
        findings(beyond).get(0));
  }

  @Test
  void fewBytesWhereABinaryRecordIsListedAreOneIfTheyBeginWithAZero() {
    String head = header("4 01");
    assertEquals(List.of(1, 4), types(read(head + bytes(0, 0, 0, 24, 1))));
    String file = head + bytes(1, 0, 0, 24, 1);
    assertEquals(List.of(1), types(read(file)));
    assertEquals(
        "RP-STR-018 at " + head.length() + "+5: 5 bytes | a record begins here",
        findings(file).get(0));
  }

  @Test
  void bytesBehindTheLastListedRecordAreNoRecord() {
    assertEquals(
        List.of(
            "RP-STR-013 at " + FILE.length() + "+1: 1 byte | the file ends with the last record"),
        findings(FILE + "x"));
    String head = header("2 00", "9 01");
    String record = tagged(2, "2.002:00");
    assertEquals(
        "RP-STR-018 at " + (head.length() + 18) + "+2: 2 bytes | a record begins here",
        findings(head + record + "xy").get(0));
  }

  @Test
  void bytesBetweenTwoRecordsEndWhereTheNextIsOpened() {
    String head = header("2 00", "9 01");
    String file = head + "2.02:1" + GS + FS + tagged(2, "2.002:00") + tagged(9, "9.002:01");
    assertEquals(
        List.of("RP-STR-018 at " + head.length() + "+8: 8 bytes | a record begins here"),
        findings(file));
    assertEquals(List.of(1, 2, 9), types(read(file)));
  }

  @Test
  void aTransactionMayHoldNothingButItsHeader() {
    String file = tagged(1, "1.002:0500", "1.003:1" + US + "0" + RS);
    assertEquals(List.of(), findings(file));
  }
}
