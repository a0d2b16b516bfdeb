package ridgeproof.transaction.xml.writer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.transaction.TransactionSamples.TABLES;
import static ridgeproof.transaction.xml.RawXml.binaryPrint;
import static ridgeproof.transaction.xml.RawXml.category;
import static ridgeproof.transaction.xml.RawXml.element;
import static ridgeproof.transaction.xml.RawXml.fields;
import static ridgeproof.transaction.xml.RawXml.file;
import static ridgeproof.transaction.xml.RawXml.header;
import static ridgeproof.transaction.xml.RawXml.idc;
import static ridgeproof.transaction.xml.RawXml.path;
import static ridgeproof.transaction.xml.RawXml.print;
import static ridgeproof.transaction.xml.RawXml.subject;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.TransactionSamples;

/** A transaction that was read from XML becomes a traditional file, with what it lacks named. */
class TraditionalDraftsTest {

  private static final String SIZE =
      "it is missing and becomes 0, since such a record has it in any case";

  /** The bytes as text, and what is not carried. */
  private record Written(String file, List<String> losses) {

    Transaction read() {
      return TransactionSamples.read(TransactionSamples.ascii(file));
    }
  }

  private static Written write(String... records) {
    Transaction transaction =
        TransactionSamples.read(file(records).getBytes(StandardCharsets.UTF_8));
    TraditionalDrafts drafts = new TraditionalDrafts(TABLES);
    String file = TransactionSamples.text(drafts.write(transaction));
    return new Written(file, drafts.losses().stream().map(Loss::toString).toList());
  }

  /** A Type-1 record that lists records after it, with a character set where one is named. */
  private static String listing(String set, String... entries) {
    String directory =
        set.isEmpty()
            ? ""
            : path(
                "ansi-nist:TransactionCharacterSetDirectory/ansi-nist:CharacterSetIndexCode", set);
    return header(
        element(
            "ansi-nist:TransactionContentSummary",
            element("ansi-nist:ContentFirstRecordCategoryCode", "1"),
            element("ansi-nist:ContentRecordQuantity", Integer.toString(entries.length)),
            String.join("", entries)),
        directory);
  }

  private static String entry(int type, int idc) {
    return element("ansi-nist:ContentRecordSummary", idc(idc), category(type));
  }

  private static String name(String surname) {
    return subject(path("ebts:PersonName/nc:PersonSurName", surname));
  }

  @Test
  void fieldsAreWrittenWithTheirTagsAndSeparators() {
    String image = element("nc:BinaryBase64Object", "aW1hZ2U=");
    String square = "itl:FingerprintImageSegmentPositionSquare";
    String one = element(square, element("ansi-nist:FingerPositionCode", "2"));
    Written written = write(listing("", entry(14, 1)), print(1, image, one, one));
    assertEquals(
        "1.001:24\u001D1.003:1\u001F1\u001E14\u001F1\u001C"
            + "14.001:43\u001D14.002:1\u001D14.021:2\u001E2\u001D14.999:image\u001C",
        written.file());
    assertEquals(List.of(), written.losses());
  }

  @Test
  void numbersOfABinaryRecordTakeTheirBytes() {
    String code = "ansi-nist:FingerPositionCode";
    String record =
        binaryPrint(
            9,
            element("nc:BinaryBase64Object", "aW1hZ2U="),
            path("ansi-nist:ImageCaptureDetail/ansi-nist:CaptureResolutionCode", "1"),
            element("ansi-nist:ImageCompressionAlgorithmCode", "0"),
            element("ansi-nist:ImageHorizontalLineLengthPixelQuantity", "800"),
            element("ansi-nist:ImageVerticalLineLengthPixelQuantity", "65535"),
            element("ansi-nist:FingerprintImagePosition", element(code, "2"), element(code, "7")),
            element("ansi-nist:FingerprintImageImpressionCaptureCategoryCode", "1"));
    Written written = write(listing("", entry(4, 9)), record);
    assertEquals(List.of(), written.losses());
    String binary = written.file().substring(written.file().indexOf('\u001C') + 1);
    assertEquals(
        "\0\0\0\u0017" + "\t\1\2\7\u00FF\u00FF\u00FF\u00FF\1\3\u0020\u00FF\u00FF\0" + "image",
        binary);
  }

  @Test
  void numbersThatABinaryRecordLacksBecomeZeroAndAreNamed() {
    Written written = write(listing("", entry(4, 9)), binaryPrint(9));
    String record = "record 2 (Type-4), field 4.";
    assertEquals(
        List.of(
            record + "003: " + SIZE,
            record + "004: " + SIZE,
            record + "005: " + SIZE,
            record + "006: " + SIZE,
            record + "007: " + SIZE,
            record + "008: " + SIZE),
        written.losses());
    String binary = written.file().substring(written.file().indexOf('\u001C') + 1);
    assertEquals("\0\0\0\u0012\t\0\0\0\0\0\0\0\0\0\0\0\0\0", binary);
  }

  @Test
  void aNumberThatIsTooLargeForItsBytesBecomesZeroAndIsNamed() {
    String size = "ansi-nist:ImageHorizontalLineLengthPixelQuantity";
    String lost = "record 2 (Type-4), field 4.006: a value that is no number of its size";
    for (String value : List.of("65536", "wide")) {
      Written written = write(listing("", entry(4, 9)), binaryPrint(9, element(size, value)));
      assertTrue(written.losses().contains(lost), written.losses().toString());
      assertEquals("0", written.read().records().get(1).field(6).orElseThrow().text());
    }
    Written most = write(listing("", entry(4, 9)), binaryPrint(9, element(size, "65535")));
    assertEquals(5, most.losses().size());
  }

  @Test
  void textOfOneByteACharacterKeepsTheSetThatTheHeaderNames() {
    Written written = write(listing("1", entry(2, 0)), name("\u00C7"));
    assertEquals(List.of(), written.losses());
    assertTrue(written.file().contains("1.015:001\u001C"), written.file());
    assertTrue(written.file().endsWith("2.018:\u00C7\u001C"), written.file());
  }

  @Test
  void textThatNeedsUtf8IsWrittenInItAndTheHeaderNamesIt() {
    String changed = "record 1 (Type-1), field 1.015: it names UTF-8 now, which the values need";
    for (String set : List.of("", "1", "0")) {
      Written written = write(listing(set, entry(2, 0)), name("\u0141"));
      assertEquals(List.of(changed), written.losses());
      assertTrue(written.file().contains("1.015:003\u001FUTF-8\u001C"), written.file());
      assertTrue(written.file().endsWith("2.018:\u00C5\u0081\u001C"), written.file());
    }
    Written named = write(listing("3", entry(2, 0)), name("\u0141"));
    assertEquals(List.of(), named.losses());
    assertTrue(named.file().contains("1.015:003\u001C"), named.file());
    Written unnamed = write(listing("", entry(2, 0)), name("\u00C7"));
    assertEquals(List.of(changed), unnamed.losses());
    assertTrue(unnamed.file().endsWith("2.018:\u00C3\u0087\u001C"), unnamed.file());
  }

  @Test
  void asciiNeedsNoSet() {
    Written written = write(listing("", entry(2, 0)), name("A\u007F"));
    assertEquals(List.of(), written.losses());
    assertEquals(List.of("1.001 = 23", "1.003 = 1,1;2,0"), fields(written.read().records().get(0)));
  }

  @Test
  void aListThatIsNotThatOfTheRecordsIsNamed() {
    String lost = "record 1 (Type-1), field 1.003: a list that is not that of the records";
    assertEquals(List.of(), write(listing("", entry(2, 0)), name("A")).losses());
    assertEquals(List.of(lost), write(listing("", entry(2, 1)), name("A")).losses());
    assertEquals(List.of(lost), write(listing("", entry(14, 0)), name("A")).losses());
    assertEquals(List.of(lost), write(listing(""), name("A")).losses());
    assertEquals(List.of(lost), write(header(), name("A")).losses());
  }

  @Test
  void whatNoFieldIsKnownForIsNamedOnceForItsRecord() {
    String text = "record 2 (Type-2): elements that no field is known for";
    String unknown = name("A").replace("<ebts:PersonName>", "<a/><b/><ebts:PersonName>");
    assertEquals(List.of(text), write(listing("", entry(2, 0)), unknown).losses());
    assertEquals(
        List.of("bytes that belong to no record"),
        write(listing("", entry(2, 0)), name("A"), "</x:y>more", "</itl:NIST").losses());
  }
}
