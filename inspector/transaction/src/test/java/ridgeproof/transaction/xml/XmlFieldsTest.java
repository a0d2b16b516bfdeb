package ridgeproof.transaction.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.xml.RawXml.binaryPrint;
import static ridgeproof.transaction.xml.RawXml.category;
import static ridgeproof.transaction.xml.RawXml.corner;
import static ridgeproof.transaction.xml.RawXml.descriptive;
import static ridgeproof.transaction.xml.RawXml.element;
import static ridgeproof.transaction.xml.RawXml.fields;
import static ridgeproof.transaction.xml.RawXml.file;
import static ridgeproof.transaction.xml.RawXml.findings;
import static ridgeproof.transaction.xml.RawXml.header;
import static ridgeproof.transaction.xml.RawXml.headerOf;
import static ridgeproof.transaction.xml.RawXml.idc;
import static ridgeproof.transaction.xml.RawXml.path;
import static ridgeproof.transaction.xml.RawXml.places;
import static ridgeproof.transaction.xml.RawXml.print;
import static ridgeproof.transaction.xml.RawXml.read;
import static ridgeproof.transaction.xml.RawXml.said;
import static ridgeproof.transaction.xml.RawXml.subject;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Notation;

/** Elements become the fields, subfields and items that the mapping names, each at its place. */
class XmlFieldsTest {

  private static final String SQUARE = "itl:FingerprintImageSegmentPositionSquare";
  private static final String FINGERS = "ebts:PersonFingerprintSet/ebts:FingerprintImageFinger";

  private static LogicalRecord record(int index, String... records) {
    return read(file(records)).records().get(index);
  }

  /** What a field of the second record says. */
  private static String second(int field, String record) {
    return said(record(1, header(), record), field);
  }

  private static String finger(int position, String... elements) {
    return path(
        FINGERS,
        element("ansi-nist:FingerPositionCode", Integer.toString(position)),
        String.join("", elements));
  }

  @Test
  void eachRecordHasItsTypeItsIdcAndItsFields() {
    XmlReading reading =
        read(
            file(
                headerOf("FAUF"),
                subject(),
                print(7, element("ansi-nist:ImageScaleUnitsCode", "1"))));
    assertEquals(List.of(), findings(reading));
    LogicalRecord first = reading.records().get(0);
    assertEquals(List.of("1.001 = 1", "1.004 = FAUF"), fields(first));
    assertEquals(OptionalInt.empty(), first.idc());
    LogicalRecord third = reading.records().get(2);
    assertEquals(List.of("14.001 = 14", "14.002 = 7", "14.008 = 1"), fields(third));
    assertEquals(OptionalInt.of(7), third.idc());
    assertEquals(3, third.ordinal());
    assertEquals(Encoding.TAGGED, third.encoding());
    assertEquals(Notation.XML, third.notation());
    assertEquals("14.008", third.field(8).orElseThrow().tag());
  }

  @Test
  void aFieldIsItsWholeElementAndItsValueTheTextOfIt() {
    XmlReading reading = read(file(headerOf("FAUF")));
    Field field = reading.records().get(0).field(4).orElseThrow();
    assertEquals(
        List.of(
            "field <ebts:TransactionCategoryCode>FAUF</ebts:TransactionCategoryCode>",
            "value FAUF",
            "subfield FAUF",
            "item FAUF"),
        places(reading, field));
  }

  @Test
  void anElementWithoutTextIsAFieldThatSaysNothing() {
    String empty = "<ebts:TransactionCategoryCode/>";
    XmlReading reading = read(file(header(empty + "<!-- ends here -->")));
    assertEquals(List.of(), findings(reading));
    LogicalRecord record = reading.records().get(0);
    assertEquals(List.of("1.001 = 1", "1.004 = "), fields(record));
    String behind =
        "<!-- ends here --></ansi-nist:Transaction></itl:PackageInformationRecord>" + RawXml.END;
    String there = "nothing, " + behind.length() + " before the end";
    assertEquals(
        List.of("field " + empty, "value " + there, "subfield " + there, "item " + there),
        places(reading, record.field(4).orElseThrow()));
  }

  @Test
  void itemsTakeTheirOrderFromTheFieldWhateverTheOrderOfTheElements() {
    String domain = "ansi-nist:TransactionDomain";
    String name = element("ansi-nist:TransactionDomainName", "NORAM");
    String version = path("ansi-nist:DomainVersionNumberIdentification/nc:IdentificationID", "4.2");
    XmlReading reading = read(file(header(element(domain, version, name))));
    LogicalRecord record = reading.records().get(0);
    assertEquals("NORAM,4.2", said(record, 13));
    assertEquals(
        List.of(
            "field <nc:IdentificationID>4.2</nc:IdentificationID></ansi-nist:DomainVersionNumberIdentification>"
                + "<ansi-nist:TransactionDomainName>NORAM</ansi-nist:TransactionDomainName>",
            "value 4.2</nc:IdentificationID></ansi-nist:DomainVersionNumberIdentification>"
                + "<ansi-nist:TransactionDomainName>NORAM",
            "subfield 4.2</nc:IdentificationID></ansi-nist:DomainVersionNumberIdentification>"
                + "<ansi-nist:TransactionDomainName>NORAM",
            "item NORAM",
            "item 4.2"),
        places(reading, record.field(13).orElseThrow()));
  }

  @Test
  void itemsThatAreLeftOutBeforeOthersAreThereAndEmpty() {
    String segment = element(SQUARE, element("ansi-nist:SegmentTopVerticalCoordinateValue", "40"));
    XmlReading reading = read(file(header(), print(1, segment)));
    LogicalRecord record = reading.records().get(1);
    assertEquals(",,,40", said(record, 21));
    Field field = record.field(21).orElseThrow();
    assertEquals("40", RawXml.shown(reading, field.subfields().get(0).range()));
    int at = field.value().offset();
    assertEquals(
        List.of(
            new ByteRange(at, 0), new ByteRange(at, 0), new ByteRange(at, 0), new ByteRange(at, 2)),
        field.subfields().get(0).items().stream().map(Item::range).toList());
  }

  @Test
  void eachElementThatRepeatsIsASubfield() {
    String one =
        element(
            SQUARE,
            element("ansi-nist:FingerPositionCode", "2"),
            element("ansi-nist:SegmentLeftHorizontalCoordinateValue", "10"));
    XmlReading reading = read(file(header(), print(1, one, one.replace(">2<", ">3<"), one)));
    assertEquals(List.of(), findings(reading));
    LogicalRecord record = reading.records().get(1);
    assertEquals("2,10;3,10;2,10", said(record, 21));
    assertEquals(
        "subfield 3</ansi-nist:FingerPositionCode>"
            + "<ansi-nist:SegmentLeftHorizontalCoordinateValue>10",
        places(reading, record.field(21).orElseThrow()).get(5));
  }

  @Test
  void whatOneSubfieldLeavesOutIsNotTakenFromTheNext() {
    String position = element(SQUARE, element("ansi-nist:FingerPositionCode", "2"));
    String left = element(SQUARE, element("ansi-nist:SegmentLeftHorizontalCoordinateValue", "10"));
    assertEquals("2;,10;2", second(21, print(1, position, left, position)));
    String entry = "ansi-nist:ContentRecordSummary";
    String contents =
        element(
            "ansi-nist:TransactionContentSummary",
            element("ansi-nist:ContentRecordQuantity", "2"),
            element(entry, category(2)),
            element(entry, idc(1)));
    assertEquals(",2;2;,1", said(record(0, header(contents)), 3));
  }

  @Test
  void elementsThatRepeatWithinASubfieldAreMoreItemsOfIt() {
    String polygon = "ansi-nist:FingerprintImageSegmentPositionPolygon";
    String vertex =
        element(
            "ansi-nist:PositionPolygonVertex",
            element("ansi-nist:PositionHorizontalCoordinateValue", "10"),
            element("ansi-nist:PositionVerticalCoordinateValue", "20"));
    String whole =
        element(
            polygon,
            element("ansi-nist:FingerPositionCode", "2"),
            element("ansi-nist:PositionPolygonVertexQuantity", "3"),
            vertex + vertex.replace("0<", "1<") + vertex.replace("0<", "2<"));
    LogicalRecord record = record(1, header(), print(1, whole, whole));
    assertEquals("2,3,10,20,11,21,12,22;2,3,10,20,11,21,12,22", said(record, 25));
  }

  @Test
  void partsAreJoinedToOneItemInTheOrderOfTheField() {
    String sur = element("nc:PersonSurName", "SPECIMEN");
    String given = element("nc:PersonGivenName", "ADA");
    String middle = element("nc:PersonMiddleName", "MAE");
    String name = "ebts:PersonName";
    assertEquals("SPECIMEN,ADA MAE", second(18, subject(element(name, given, middle, sur))));
    assertEquals("SPECIMEN MAE", second(18, subject(element(name, middle, sur))));
    assertEquals("ADA", second(18, subject(element(name, given))));
    assertEquals(
        "ADA MAE", second(18, subject(element(name, given, middle, "<nc:PersonSurName/>"))));
    assertEquals("SPECIMEN", second(18, subject(element(name, "<nc:PersonGivenName/>", sur))));
    XmlReading reading = read(file(header(), subject(element(name, given, middle, sur))));
    assertEquals(List.of(), findings(reading));
    assertEquals(
        "item ADA</nc:PersonGivenName>" + middle + "<nc:PersonSurName>SPECIMEN",
        places(reading, reading.records().get(1).field(18).orElseThrow()).get(3));
  }

  @Test
  void partsOfElementsThatRepeatAreJoinedOneElementAfterTheOther() {
    String region =
        path(
            "ansi-nist:ExtendedFeatureSetMinutiae/ansi-nist:FrictionRidgeImageRegionOfInterest"
                + "/ansi-nist:ImageSegmentPolygon",
            corner(10, 20),
            corner(30, 20),
            corner(10, 40));
    String record = element("itl:PackageMinutiaeRecord", category(9), idc(1), region);
    assertEquals(",,,,10,20-30,20-10,40", second(300, record));
  }

  @Test
  void aListIsOneItemWithCommas() {
    String list =
        path(
            "ebts:RecordTransactionData/ebts:TransactionResponseData/ebts:TransactionCandidateList"
                + "/ebts:Candidate",
            element("ebts:BiometricImageAvailableCode", "1"),
            element("ebts:BiometricImageAvailableCode", "4"),
            element("ebts:BiometricImageAvailableCode", "7"),
            element("ebts:RecordFBIRepositoryCode", "CRIM"));
    XmlReading reading = read(file(header(), descriptive(list)));
    assertEquals(List.of(), findings(reading));
    LogicalRecord record = reading.records().get(1);
    assertEquals(",,,,,,,1,4,7,CRIM", said(record, 2033));
    Field field = record.field(2033).orElseThrow();
    assertEquals("1,4,7", field.subfields().get(0).text(8));
    assertEquals("CRIM", field.subfields().get(0).text(9));
    assertEquals(
        "1</ebts:BiometricImageAvailableCode>"
            + "<ebts:BiometricImageAvailableCode>4</ebts:BiometricImageAvailableCode>"
            + "<ebts:BiometricImageAvailableCode>7",
        RawXml.shown(reading, field.subfields().get(0).items().get(7).range()));
  }

  @Test
  void theFirstSubfieldOfContentsIsUnlikeTheOthers() {
    String entry = "ansi-nist:ContentRecordSummary";
    LogicalRecord record =
        record(
            0,
            header(
                element(
                    "ansi-nist:TransactionContentSummary",
                    element("ansi-nist:ContentFirstRecordCategoryCode", "1"),
                    element("ansi-nist:ContentRecordQuantity", "2"),
                    element(entry, idc(0), category(2)),
                    element(entry, idc(1), category(14)))));
    assertEquals("1,2;2,0;14,1", said(record, 3));
  }

  @Test
  void aPositionAloneIsARequestAndBesideAPatternItsFinger() {
    String pattern = path("ebts:RidgeCoreDelta/ebts:FingerprintPatternClassificationCode", "LS");
    String counts =
        element(
            "ebts:RidgeCoreDelta",
            element("ansi-nist:RidgeCountValue", "12"),
            element("ansi-nist:RidgeCountValue", "15"));
    LogicalRecord alone = record(1, header(), subject(finger(2)));
    assertEquals(List.of("2.001 = 2", "2.002 = 0", "2.074 = 2"), fields(alone));
    LogicalRecord both =
        record(1, header(), subject(finger(2, pattern), finger(3), finger(4, counts)));
    assertEquals(
        List.of(
            "2.001 = 2",
            "2.002 = 0",
            "2.034 = 2,LS",
            "2.074 = 2;3;4",
            "2.091 = 4,12",
            "2.092 = 4,15"),
        fields(both));
  }

  @ParameterizedTest
  @CsvSource({"BDEC, 2.2034", "FAUF, 2.083", ", 2.083"})
  void whatAnElementMeansMayDependOnTheTypeOfTransaction(String type, String field) {
    String unsolved =
        path("ebts:RecordTransactionData/ebts:TransactionUnsolvedLatentFileIndicator", "true");
    String first = type == null ? header() : headerOf(type);
    LogicalRecord record = record(1, first, descriptive(unsolved));
    assertEquals(List.of("2.001 = 2", "2.002 = 0", field + " = Y"), fields(record));
  }

  @Test
  void aFaceIsReadWithoutTheCodeThatCallsItOne() {
    String pose = element("ansi-nist:FaceImageAcquisitionProfileCode", "20");
    String record =
        element(
            "itl:PackageFacialAndSMTImageRecord",
            category(10),
            idc(3),
            element("itl:FaceImage", pose));
    assertEquals(
        List.of("10.001 = 10", "10.002 = 3", "10.013 = 20"), fields(record(1, header(), record)));
  }

  @Test
  void whatAFieldSaysByNotBeingThereIsNoFieldAndNoFinding() {
    String stitched = "ansi-nist:FingerprintImageStitchedIndicator";
    assertEquals("Y", second(27, print(1, element(stitched, "true"))));
    XmlReading no = read(file(header(), print(1, element(stitched, "false"))));
    assertEquals(List.of("14.001 = 14", "14.002 = 1"), fields(no.records().get(1)));
    assertEquals(List.of(), findings(no));
  }

  @Test
  void aPrintOfABinaryRecordHasSixPositionsAndNoTags() {
    String positions = "ansi-nist:FingerprintImagePosition";
    String code = "ansi-nist:FingerPositionCode";
    XmlReading reading =
        read(
            file(
                header(),
                binaryPrint(
                    9,
                    element("ansi-nist:ImageHorizontalLineLengthPixelQuantity", "800"),
                    element(positions, element(code, "2"), element(code, "7")))));
    assertEquals(List.of(), findings(reading));
    LogicalRecord record = reading.records().get(1);
    assertEquals(Encoding.BINARY, record.encoding());
    assertEquals(
        List.of("4.001 = 4", "4.002 = 9", "4.004 = 2;7;255;255;255;255", "4.006 = 800"),
        fields(record));
    Field field = record.field(4).orElseThrow();
    assertEquals("", field.tag());
    assertEquals(field.value().end(), field.subfields().get(5).range().offset());
    assertEquals(0, field.subfields().get(5).range().length());
  }

  @Test
  void anImageIsTheBytesOfItsBase64() {
    XmlReading reading =
        read(file(header(), print(1, element("nc:BinaryBase64Object", "\n aW1h\n Z2U=\n"))));
    assertEquals(List.of(), findings(reading));
    LogicalRecord record = reading.records().get(1);
    assertEquals("image", said(record, 999));
    Field image = record.field(999).orElseThrow();
    assertEquals("14.999", image.tag());
    assertEquals(OptionalInt.of(5), image.decodedLength());
    assertEquals(
        List.of(
            "field <nc:BinaryBase64Object>\n aW1h\n Z2U=\n</nc:BinaryBase64Object>",
            "value \n aW1h\n Z2U=\n"),
        places(reading, image));
    String binary = binaryPrint(1, element("nc:BinaryBase64Object", "aW1hZ2U="));
    assertEquals("image", second(9, binary));
    assertEquals("", record(1, header(), binary).field(9).orElseThrow().tag());
  }
}
