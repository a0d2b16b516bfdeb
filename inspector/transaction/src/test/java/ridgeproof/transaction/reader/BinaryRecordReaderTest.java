package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.reader.RawTransaction.HEADER;
import static ridgeproof.transaction.reader.RawTransaction.bytes;
import static ridgeproof.transaction.reader.RawTransaction.compressed;
import static ridgeproof.transaction.reader.RawTransaction.fields;
import static ridgeproof.transaction.reader.RawTransaction.findings;
import static ridgeproof.transaction.reader.RawTransaction.header;
import static ridgeproof.transaction.reader.RawTransaction.number;
import static ridgeproof.transaction.reader.RawTransaction.print;
import static ridgeproof.transaction.reader.RawTransaction.read;
import static ridgeproof.transaction.reader.RawTransaction.types;
import static ridgeproof.transaction.reader.RawTransaction.withLength;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.LogicalRecord;

class BinaryRecordReaderTest {

  private static final String WSQ_END = bytes(0xFF, 0xA1);
  private static final String JPEG_END = bytes(0xFF, 0xD9);

  /** Where the second record begins. */
  private static final int SECOND = header("4 01").length();

  private static LogicalRecord second(String file) {
    return read(file).records().get(1);
  }

  @Test
  void eachNumberIsReadFromItsOwnBytes() {
    String file = header("4 01") + print(1, 300, 2, "x".repeat(600));
    assertEquals(
        List.of(
            "4.001 = 618 at " + SECOND + "+4",
            "4.002 = 1 at " + (SECOND + 4) + "+1",
            "4.003 = 1 at " + (SECOND + 5) + "+1",
            "4.004 = 2 at " + (SECOND + 6) + "+6",
            "4.005 = 0 at " + (SECOND + 12) + "+1",
            "4.006 = 300 at " + (SECOND + 13) + "+2",
            "4.007 = 2 at " + (SECOND + 15) + "+2",
            "4.008 = 0 at " + (SECOND + 17) + "+1",
            "4.009 at " + (SECOND + 18) + "+600"),
        fields(second(file)));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void theDataOfASignatureAreFieldEight() {
    String signature = number(4, 14) + bytes(1, 0, 0, 0) + number(2, 3) + number(2, 2) + "ab";
    String file = header("8 01") + signature;
    assertEquals("8.008 at " + (SECOND + 12) + "+2", fields(second(file)).get(7));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void aRecordWithoutAnImageHasNoFieldForIt() {
    String file = header("4 01", "4 02") + print(1, 3, 2, "") + print(2, 3, 2, "pixels");
    assertEquals(8, second(file).fields().size());
    assertEquals(List.of(), findings(file));
  }

  @Test
  void theNumbersOfAUserDefinedImageAreReadWhereTheyMakeSense() {
    String file = header("7 01") + print(1, 3, 2, "pixels");
    assertEquals("7.006 = 3 at " + (SECOND + 13) + "+2", fields(second(file)).get(5));
    assertEquals("7.009 at " + (SECOND + HEADER) + "+6", fields(second(file)).get(8));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void aUserDefinedImageOfAnotherLayoutIsDataAfterItsIdc() {
    String file = header("7 01") + number(4, 33) + bytes(1) + "layout of the vendor itself.";
    assertEquals(
        List.of(
            "7.001 = 33 at " + SECOND + "+4",
            "7.002 = 1 at " + (SECOND + 4) + "+1",
            "7.009 at " + (SECOND + 5) + "+28"),
        fields(second(file)));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void aNumberThatIsNotAllowedIsStillReadAsOneInAPrint() {
    String file = header("4 01") + print(1, 0, 2, "pixels");
    assertEquals("4.006 = 0 at " + (SECOND + 13) + "+2", fields(second(file)).get(5));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void aFileThatEndsWithinALengthIsCutOff() {
    String file = header("4 01") + bytes(0, 0);
    assertEquals(
        "RP-STR-012 record 2 at "
            + SECOND
            + "+0: 2 bytes, then the end of the file | a complete record",
        findings(file).get(0));
    assertEquals(OptionalInt.empty(), second(file).idc());
    assertEquals(List.of("4.009 at " + SECOND + "+2"), fields(second(file)));
  }

  @Test
  void anImageThatHoldsWhatLooksLikeARecordKeepsItsStatedLength() {
    String file = header("4 01") + compressed(1, "an 2.001:20\u001D image");
    assertEquals(List.of(1, 4), types(read(file)));
    assertEquals(List.of(), findings(file));
  }

  @Test
  void aFileThatEndsBehindOneByteOfALengthIsCutOff() {
    String file = header("4 01") + bytes(0);
    assertEquals(
        "RP-STR-012 record 2 at "
            + SECOND
            + "+0: 1 byte, then the end of the file | a complete record",
        findings(file).get(0));
  }

  @Test
  void aFileThatEndsBehindALengthIsCutOffWithoutAnIdc() {
    String file = header("4 01") + number(4, 24);
    assertEquals(
        "RP-STR-012 record 2 at " + SECOND + "+4: 4 bytes, then the end of the file | 24 bytes",
        findings(file).get(0));
    assertEquals(OptionalInt.empty(), second(file).idc());
    assertEquals(List.of("4.001 = 24 at " + SECOND + "+4"), fields(second(file)));
  }

  @Test
  void aFileThatEndsBehindAnIdcStillHasIt() {
    String file = header("4 01") + number(4, 24) + bytes(1);
    assertEquals(
        List.of(
            "RP-STR-012 record 2 at "
                + SECOND
                + "+5: 5 bytes, then the end of the file | 24 bytes"),
        findings(file));
    assertEquals(OptionalInt.of(1), second(file).idc());
  }

  @Test
  void aFileThatEndsWithinAnImageIsCutOff() {
    String file = header("4 01") + withLength(100, compressed(1, "image"));
    assertEquals(
        List.of(
            "RP-STR-012 record 2 at "
                + SECOND
                + "+18: 23 bytes, then the end of the file | 100 bytes"),
        findings(file));
    assertEquals(23, second(file).range().length());
  }

  @Test
  void theGreatestLengthIsToldAsItIs() {
    String file = header("4 01") + withLength(0xFFFFFFFFL, compressed(1, "image"));
    assertEquals(
        List.of(
            "RP-STR-012 record 2 at "
                + SECOND
                + "+18: 23 bytes, then the end of the file | 4294967295 bytes"),
        findings(file));
  }

  @Test
  void aCompleteImageAtTheEndOfTheFileShowsThatTheLengthIsWrong() {
    for (String end : List.of(WSQ_END, JPEG_END)) {
      String file = header("4 01") + withLength(100, compressed(1, "image" + end));
      assertEquals(
          List.of("RP-STR-004 record 2 at " + SECOND + "+18: LEN 100 | LEN 25"), findings(file));
    }
  }

  @Test
  void theFirstByteOfAnEndOfAnImageIsNoneInTheHeader() {
    String file = header("7 255") + number(4, 100) + bytes(0xFF, 0xA1);
    int start = header("7 255").length();
    assertEquals(
        "RP-STR-012 record 2 at " + start + "+5: 6 bytes, then the end of the file | 100 bytes",
        findings(file).get(0));
  }

  @Test
  void anImageOfNothingButItsEndIsComplete() {
    String file = header("4 01") + withLength(100, compressed(1, WSQ_END));
    assertEquals(
        List.of("RP-STR-004 record 2 at " + SECOND + "+18: LEN 100 | LEN 20"), findings(file));
  }

  @Test
  void aLengthHoldsWhereTheImageEndsThereThoughOtherBytesFollow() {
    // 3 x 2 pixels of 8 bits, and of 1 bit; the ends of WSQ and JPEG.
    for (String image : List.of("pixels", "ab", "image" + WSQ_END, "image" + JPEG_END)) {
      String first = compressed(1, image);
      String file = header("4 01", "4 02") + first + "???" + compressed(2, "pixels");
      int junk = header("4 01", "4 02").length() + first.length();
      assertEquals(
          List.of("RP-STR-018 at " + junk + "+3: 3 bytes | a record begins here"), findings(file));
      assertEquals(first.length(), second(file).range().length());
    }
  }

  @Test
  void pixelsOfOneBitFillWholeBytesOfEachLine() {
    String first = print(1, 9, 2, "abcd");
    String file = header("4 01", "4 02") + first + "???" + compressed(2, "pixels");
    assertEquals(first.length(), second(file).range().length());
  }

  @Test
  void aLengthThatNothingConfirmsGivesWayToTheNextRecord() {
    int start = header("4 01", "4 02").length();
    for (String image :
        List.of("pixel", "image", "x" + bytes(0xFF, 0xA2), "x" + bytes(0xFE, 0xD9))) {
      String first = compressed(1, image);
      String file = header("4 01", "4 02") + first + "???" + compressed(2, "pixels");
      int length = first.length();
      assertEquals(
          List.of(
              "RP-STR-004 record 2 at " + start + "+18: LEN " + length + " | LEN " + (length + 3)),
          findings(file));
      assertEquals(length + 3, second(file).range().length());
    }
  }

  @Test
  void anImageOfNoBytesConfirmsNoLength() {
    String signature = number(4, 12) + bytes(1, 0, 0, 0) + number(2, 0) + number(2, 0);
    String file = header("8 01", "4 02") + signature + "???" + compressed(2, "pixels");
    assertEquals(
        List.of(
            "RP-STR-004 record 2 at " + header("8 01", "4 02").length() + "+12: LEN 12 | LEN 15"),
        findings(file));
  }

  @Test
  void anotherPrintBehindItConfirmsALength() {
    String file = header("4 01", "4 02") + compressed(1, "an image") + compressed(2, "another");
    assertEquals(List.of(), findings(file));
  }

  @ParameterizedTest
  @ValueSource(strings = {" ", "\t", "\r", "\n", "\u001A", "\r\n\u001A"})
  void whatMailProgramsAppendDoesNotBelongToTheLastImage(String appended) {
    for (String image : List.of("an image", "")) {
      String first = compressed(1, image);
      Transaction transaction = read(header("4 01") + first + appended);
      int count = appended.length();
      assertEquals(
          List.of(
              "RP-STR-013 at "
                  + (SECOND + first.length())
                  + "+"
                  + count
                  + (count == 1 ? ": 1 byte" : ": 3 bytes")
                  + " | the file ends with the last record"),
          findings(transaction));
      assertEquals(first.length(), transaction.records().get(1).range().length());
    }
  }

  @Test
  void zerosAndOtherBytesBehindAnImageBelongToIt() {
    for (String appended : List.of("\0\0\0", "\r\nx", "x  ")) {
      String file = header("4 01") + compressed(1, "an image") + appended;
      assertEquals(
          List.of("RP-STR-004 record 2 at " + SECOND + "+18: LEN 26 | LEN 29"), findings(file));
      assertEquals(29, second(file).range().length());
    }
  }

  @Test
  void aLengthShorterThanTheHeaderIsWrongEvenBeforeBlanks() {
    String file = header("4 01") + withLength(17, compressed(1, "   "));
    assertEquals(
        List.of("RP-STR-004 record 2 at " + SECOND + "+18: LEN 17 | LEN 21"), findings(file));
  }

  @Test
  void bytesTooFewForARecordBehindAStatedLengthDoNotConfirmIt() {
    String file = header("4 01") + withLength(23, compressed(1, "an image"));
    assertEquals(
        List.of("RP-STR-004 record 2 at " + SECOND + "+18: LEN 23 | LEN 26"), findings(file));
    assertEquals(List.of(1, 4), types(read(file)));
  }
}
