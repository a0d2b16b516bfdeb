package ridgeproof.transaction.xml.writer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.TransactionSamples.TABLES;
import static ridgeproof.transaction.xml.RawXml.binaryPrint;
import static ridgeproof.transaction.xml.RawXml.category;
import static ridgeproof.transaction.xml.RawXml.corner;
import static ridgeproof.transaction.xml.RawXml.descriptive;
import static ridgeproof.transaction.xml.RawXml.element;
import static ridgeproof.transaction.xml.RawXml.header;
import static ridgeproof.transaction.xml.RawXml.headerOf;
import static ridgeproof.transaction.xml.RawXml.idc;
import static ridgeproof.transaction.xml.RawXml.path;
import static ridgeproof.transaction.xml.RawXml.print;
import static ridgeproof.transaction.xml.RawXml.subject;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.xml.RawXml;

/** A transaction becomes the elements that say the same, in the order of the schema. */
class XmlTransactionWriterTest {

  private static final String SQUARE = "itl:FingerprintImageSegmentPositionSquare";
  private static final String FINGERS = "ebts:PersonFingerprintSet/ebts:FingerprintImageFinger";
  private static final String CODE = "ansi-nist:FingerPositionCode";

  /** What is written, and what is not. */
  private record Written(String xml, List<String> losses) {

    /** The records without the layout, the declaration and the package. */
    String records() {
      String flat = xml.replaceAll(">\n *<", "><");
      return flat.substring(flat.indexOf("<itl:Package"), flat.indexOf("</itl:NIST"));
    }
  }

  private static Written write(Transaction transaction) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      List<Loss> losses = new XmlTransactionWriter(TABLES).write(transaction, out);
      assertEquals(
          out.toString(StandardCharsets.UTF_8),
          new String(new XmlTransactionWriter(TABLES).write(transaction), StandardCharsets.UTF_8));
      return new Written(
          out.toString(StandardCharsets.UTF_8), losses.stream().map(Loss::toString).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Written write(String xml) {
    return write(TransactionSamples.read(RawXml.file(xml).getBytes(StandardCharsets.UTF_8)));
  }

  /** A traditional file of the header of the samples and a record of these fields. */
  private static Written write(int type, String... fields) {
    List<FieldDraft> drafts = new ArrayList<>();
    drafts.add(FieldDraft.text(new FieldNumber(type, 1), ""));
    drafts.add(FieldDraft.text(new FieldNumber(type, 2), "00"));
    for (String field : fields) {
      int equals = field.indexOf('=');
      List<List<String>> subfields = new ArrayList<>();
      for (String subfield : field.substring(equals + 1).split(";", -1)) {
        subfields.add(List.of(subfield.split("\\|", -1)));
      }
      drafts.add(FieldDraft.text(FieldNumber.parse(field.substring(0, equals)), subfields));
    }
    return write(
        TransactionSamples.read(
            TransactionSamples.write(
                List.of(TransactionSamples.header(), RecordDraft.tagged(type, drafts)))));
  }

  /** Of the second record, what stands behind its category and IDC. */
  private static String second(Written written) {
    String records = written.records();
    String behind = records.substring(records.indexOf("</itl:PackageInformationRecord>"));
    int from = behind.indexOf("</ansi-nist:ImageReferenceIdentification>");
    return behind.substring(
        from + "</ansi-nist:ImageReferenceIdentification>".length(), behind.lastIndexOf("</itl:"));
  }

  private static String described(String text) {
    return path("itl:UserDefinedDescriptiveDetail/ebts:DomainDefinedDescriptiveFields", text);
  }

  static List<String> recordsThatComeBack() {
    String vertex =
        element(
            "ansi-nist:PositionPolygonVertex",
            element("ansi-nist:PositionHorizontalCoordinateValue", "10"),
            element("ansi-nist:PositionVerticalCoordinateValue", "20"));
    String polygon =
        element(
            "ansi-nist:FingerprintImageSegmentPositionPolygon",
            element(CODE, "2"),
            element("ansi-nist:PositionPolygonVertexQuantity", "3"),
            vertex + vertex.replace("0<", "1<") + vertex.replace("0<", "2<"));
    String region =
        path(
            "ansi-nist:ExtendedFeatureSetMinutiae/ansi-nist:FrictionRidgeImageRegionOfInterest"
                + "/ansi-nist:ImageSegmentPolygon",
            corner(10, 20),
            corner(30, 20));
    String left = element("ansi-nist:SegmentLeftHorizontalCoordinateValue", "10");
    String pattern = path("ebts:RidgeCoreDelta/ebts:FingerprintPatternClassificationCode", "LS");
    String date = path("nc:PersonBirthDate/nc:Date", "1990-03-31");
    String unsolved =
        path("ebts:RecordTransactionData/ebts:TransactionUnsolvedLatentFileIndicator", "false");
    return List.of(
        headerOf("BDEC") + descriptive(unsolved),
        headerOf("FAUF") + descriptive(unsolved),
        header()
            + subject(
                element(
                    "ebts:PersonName",
                    element("nc:PersonGivenName", "ADA"),
                    element("nc:PersonMiddleName", "MAE"),
                    element("nc:PersonSurName", "SPECIMEN"))),
        header() + subject(element("ebts:PersonName", element("nc:PersonSurName", "SPECIMEN"))),
        header() + subject(date, date.replace("1990", "1991")),
        header() + subject(path("nc:PersonBirthDate/nc:YearMonth", "1990-03")),
        header() + subject(path(FINGERS, element(CODE, "2"), pattern)),
        header() + print(1, element(SQUARE, element(CODE, "2"), left), element(SQUARE, left)),
        header() + print(1, polygon, polygon),
        header() + print(1, element("nc:BinaryBase64Object", "aW1hZ2U=")),
        header() + print(1, element("ansi-nist:FingerprintImageStitchedIndicator", "true")),
        header() + print(1, element("ansi-nist:ImageCommentText", "a &amp; &lt;b&gt; \u00C7")),
        header() + element("itl:PackageMinutiaeRecord", category(9), idc(1), region),
        header() + picture("itl:FaceImage", "FACE"),
        header() + picture("ansi-nist:PhysicalFeatureImage", "TATTOO"),
        header() + descriptive(element("nc:CaveatText", " \uD7FF\uE000\uFFFD\uD800\uDC00~")));
  }

  private static String picture(String image, String category) {
    return element(
        "itl:PackageFacialAndSMTImageRecord",
        category(10),
        idc(1),
        element(
            image,
            element("ansi-nist:ImageHorizontalLineLengthPixelQuantity", "480"),
            element("ansi-nist:ImageCategoryCode", category)));
  }

  private static String finger(int position, String... delta) {
    return element(
        "ebts:FingerprintImageFinger",
        element(CODE, Integer.toString(position)),
        element("ebts:RidgeCoreDelta", delta));
  }

  @Test
  void whatSeveralFieldsSayOfAFingerIsSaidByOneElement() {
    String pattern = element("ebts:FingerprintPatternClassificationCode", "LS");
    String count = element("ansi-nist:RidgeCountValue", "12");
    String two = element("ansi-nist:RidgeCountValue", "14");
    String set = "ebts:RecordSubject/ebts:PersonFingerprintSet";
    assertEquals(
        described(path(set, finger(2, pattern, count, two))),
        second(write(2, "2.034=2|LS", "2.091=2|12", "2.092=2|14")));
    assertEquals(
        described(path(set, finger(2, pattern), finger(3, count))),
        second(write(2, "2.034=2|LS", "2.091=3|12")));
    assertEquals(
        described(path(set, finger(2, pattern), finger(3, pattern, count))),
        second(write(2, "2.034=2|LS;3|LS", "2.091=3|12")));
    assertEquals(
        described(path(set, finger(2, pattern), finger(2, pattern))),
        second(write(2, "2.034=2|LS;2|LS")));
  }

  @Test
  void whatIsEmptyIsAnElementOnlyWhereNothingElseTellsIt() {
    String detail = "ebts:RecordImageCaptureDetail";
    String make = element("ansi-nist:CaptureDeviceMakeText", "A");
    String model = "ansi-nist:CaptureDeviceModelText";
    assertEquals(described(element("nc:CaveatText", "")), second(write(2, "2.006=")));
    assertEquals(
        described(element(detail, make, element(model, ""))), second(write(2, "2.067=A|")));
    assertEquals(described(element(detail, element(model, "B"))), second(write(2, "2.067=|B")));
    assertEquals("", second(write(2, "2.067=|")));
    assertEquals(
        described(path("ebts:RecordSubject/ebts:PersonName/nc:PersonSurName", "")),
        second(write(2, "2.018=")));
  }

  @ParameterizedTest
  @MethodSource("recordsThatComeBack")
  void whatWasReadIsWrittenAsItWas(String records) {
    Written written = write(records);
    assertEquals(records, written.records());
    assertEquals(List.of(), written.losses());
  }

  @Test
  void aPrintOfABinaryRecordHasItsPositionsWithoutTheFillers() {
    String positions =
        element("ansi-nist:FingerprintImagePosition", element(CODE, "2"), element(CODE, "7"));
    String compression = element("ansi-nist:ImageCompressionAlgorithmCode", "1");
    String expected = header() + binaryPrint(9, compression, positions).replace(">9<", ">09<");
    assertEquals(expected, write(expected).records());
    String unknown =
        positions.replaceFirst("2", "255").replaceFirst("<ansi-nist:FingerPositionCode>7<.*?>", "");
    String alone = header() + binaryPrint(9, unknown).replace(">9<", ">09<");
    assertEquals(alone, write(alone).records());
  }

  @Test
  void eachElementIsOnALineOfItsOwn() {
    String namespaces =
        " xmlns:ansi-nist=\"http://niem.gov/niem/biometrics/1.0\""
            + " xmlns:itl=\"http://biometrics.nist.gov/standard/2011\""
            + " xmlns:nc=\"http://niem.gov/niem/niem-core/2.0\""
            + " xmlns:j=\"http://niem.gov/niem/domains/jxdm/4.1\""
            + " xmlns:ebts=\"http://cjis.fbi.gov/fbi_ebts/10.0\"";
    assertEquals(
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <itl:NISTBiometricInformationExchangePackage%s>
          <itl:PackageInformationRecord>
            <ansi-nist:RecordCategoryCode>01</ansi-nist:RecordCategoryCode>
            <ansi-nist:Transaction>
              <ebts:TransactionCategoryCode>FAUF</ebts:TransactionCategoryCode>
            </ansi-nist:Transaction>
          </itl:PackageInformationRecord>
        </itl:NISTBiometricInformationExchangePackage>
        """
            .replace("%s", namespaces),
        write(headerOf("FAUF")).xml());
  }

  @Test
  void anImageOfAnySizeIsItsBase64() {
    byte[] image = new byte[2 * 48 * 1024 + 1];
    new Random(7).nextBytes(image);
    RecordDraft print =
        RecordDraft.tagged(
            14,
            List.of(
                FieldDraft.text(new FieldNumber(14, 1), ""),
                FieldDraft.text(new FieldNumber(14, 2), "01"),
                FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(image))));
    Written written =
        write(
            TransactionSamples.read(
                TransactionSamples.write(List.of(TransactionSamples.header(), print))));
    String text = written.xml();
    String tag = "\n      <nc:BinaryBase64Object>";
    int from = text.indexOf(tag) + tag.length();
    assertEquals(
        Base64.getEncoder().encodeToString(image),
        text.substring(from, text.indexOf("</nc:BinaryBase64Object>\n")));
  }

  @Test
  void aHeightHasItsUnitBesideIt() {
    assertEquals(
        described(
            path(
                "ebts:RecordSubject/nc:PersonHeightMeasure",
                element("nc:MeasurePointValue", "510"),
                element("nc:MeasureUnitText", "FeetInches"))),
        second(write(2, "2.027=510")));
  }

  @Test
  void charactersThatXmlCannotHoldAreLeftOutAndNamed() {
    Written written = write(2, "2.006=a\u0001b\tc");
    assertEquals(described(element("nc:CaveatText", "ab\tc")), second(written));
    assertEquals(List.of("record 2 (Type-2): characters that XML cannot hold"), written.losses());
    Written lines = write(2, "2.006=a\nb\rc");
    assertEquals(described(element("nc:CaveatText", "a&#10;b&#13;c")), second(lines));
    assertEquals(List.of(), lines.losses());
  }

  @Test
  void aFieldWithoutAnElementIsNamed() {
    Written written = write(2, "2.9102=a;b");
    assertEquals("", second(written));
    assertEquals(
        List.of("record 2 (Type-2), field 2.9102: no element of the XML encoding is known for it"),
        written.losses());
  }

  @Test
  void aValueWithoutTheFormOfItsElementIsKeptAndNamed() {
    Written written = write(2, "2.038=noon");
    assertEquals(
        described(
            path(
                "ebts:RecordSubject/ebts:PersonFingerprintSet/nc:BiometricCaptureDate/nc:Date",
                "noon")),
        second(written));
    assertEquals(
        List.of(
            "record 2 (Type-2), field 2.038: item 1 is kept as it is and does not have the form of"
                + " its element"),
        written.losses());
  }

  @Test
  void anItemWithoutAnElementIsNamed() {
    Written written = write(2, "2.006=a|b");
    assertEquals(described(element("nc:CaveatText", "a")), second(written));
    assertEquals(
        List.of(
            "record 2 (Type-2), field 2.006: no element of the XML encoding is known for item 2"),
        written.losses());
  }

  @Test
  void aSubfieldForWhichThereIsNoRoomIsNamedOnce() {
    Written written = write(2, "2.006=a;b;c");
    assertEquals(described(element("nc:CaveatText", "a")), second(written));
    assertEquals(
        List.of(
            "record 2 (Type-2), field 2.006: the XML encoding has no room for one more subfield"),
        written.losses());
  }

  @Test
  void aRecordWithoutAnElementIsNamed() {
    Written written =
        write(
            TransactionSamples.read(
                TransactionSamples.write(
                    List.of(
                        TransactionSamples.header(),
                        RecordDraft.tagged(
                            22,
                            List.of(
                                FieldDraft.text(new FieldNumber(22, 1), ""),
                                FieldDraft.text(new FieldNumber(22, 2), "00")))))));
    assertEquals(
        List.of("record 2 (Type-22): the XML encoding has no such record"), written.losses());
  }

  @Test
  void whatWasNotReadAndALengthThatIsWrongAreNamed() {
    String sound = TransactionSamples.text(TransactionSamples.bytes());
    Written behind = write(TransactionSamples.read(TransactionSamples.ascii(sound + "more")));
    assertEquals(List.of("bytes that belong to no record"), behind.losses());
    Written length =
        write(
            TransactionSamples.read(
                TransactionSamples.ascii(sound.replaceFirst("2\\.001:\\d+", "2.001:99"))));
    assertEquals(
        List.of("record 2 (Type-2), field 2.001: a length that is not that of the record"),
        length.losses());
    Written unknown = write(header() + descriptive("<a>b</a>", "<c>d</c>"));
    assertEquals(
        List.of("record 2 (Type-2): elements that no field is known for"), unknown.losses());
  }
}
