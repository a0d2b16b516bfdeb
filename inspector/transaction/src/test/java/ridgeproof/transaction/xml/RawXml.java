package ridgeproof.transaction.xml;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/**
 * Transactions in XML put together element by element, and what reading them finds. A place is
 * shown by what is there, with the number of the occurrence where the same is earlier in the file
 * too.
 */
public final class RawXml {

  static final String NAMESPACES =
      " xmlns:itl='http://biometrics.nist.gov/standard/2011'"
          + " xmlns:ansi-nist='http://niem.gov/niem/biometrics/1.0'"
          + " xmlns:nc='http://niem.gov/niem/niem-core/2.0'"
          + " xmlns:ebts='http://cjis.fbi.gov/fbi_ebts/10.0'";
  static final String NAME = "itl:NISTBiometricInformationExchangePackage";
  public static final String START = "<" + NAME + NAMESPACES + ">";
  public static final String END = "</" + NAME + ">";
  static final XmlLimits LIMITS = new XmlLimits(100, 1_000, 100);

  private static final int SHOWN = 200;

  private RawXml() {}

  /** A package of records. */
  public static String file(String... records) {
    return START + String.join("", records) + END;
  }

  /** An element with its content. */
  public static String element(String name, String... content) {
    return "<" + name + ">" + String.join("", content) + "</" + name + ">";
  }

  /** Elements within each other, as {@code "nc:StartDate/nc:Date"}. */
  public static String path(String names, String... content) {
    String[] each = names.split("/");
    String text = String.join("", content);
    for (int i = each.length - 1; i >= 0; i--) {
      text = element(each[i], text);
    }
    return text;
  }

  /** A corner of a region of interest. */
  public static String corner(int x, int y) {
    return element(
        "ansi-nist:ImageSegmentVertex",
        element("ansi-nist:ImageLocationHorizontalCoordinateMeasure", Integer.toString(x)),
        element("ansi-nist:ImageLocationVerticalCoordinateMeasure", Integer.toString(y)));
  }

  public static String category(int type) {
    return element(
        "ansi-nist:RecordCategoryCode", String.format(java.util.Locale.ROOT, "%02d", type));
  }

  public static String idc(int idc) {
    return path(
        "ansi-nist:ImageReferenceIdentification/nc:IdentificationID", Integer.toString(idc));
  }

  /** A Type-1 record with these elements in its transaction. */
  public static String header(String... inTransaction) {
    return element(
        "itl:PackageInformationRecord",
        category(1),
        inTransaction.length == 0 ? "" : element("ansi-nist:Transaction", inTransaction));
  }

  /** A Type-1 record that names a type of transaction. */
  public static String headerOf(String typeOfTransaction) {
    return header(element("ebts:TransactionCategoryCode", typeOfTransaction));
  }

  /** A Type-2 record of IDC 0 with these elements among those that a domain defines. */
  public static String descriptive(String... fields) {
    return element(
        "itl:PackageDescriptiveTextRecord",
        category(2),
        idc(0),
        path("itl:UserDefinedDescriptiveDetail/ebts:DomainDefinedDescriptiveFields", fields));
  }

  /** A Type-2 record with these elements of the subject. */
  public static String subject(String... elements) {
    return descriptive(element("ebts:RecordSubject", elements));
  }

  /** A Type-14 record with these elements of the image. */
  public static String print(int idc, String... inImage) {
    return element(
        "itl:PackageFingerprintImageRecord",
        category(14),
        idc(idc),
        element("itl:FingerprintImage", inImage));
  }

  /** A Type-4 record with these elements of the image. */
  public static String binaryPrint(int idc, String... inImage) {
    return element(
        "itl:PackageHighResolutionGrayscaleImageRecord",
        category(4),
        idc(idc),
        element("ansi-nist:FingerprintImage", inImage));
  }

  public static ByteSource source(String file) {
    return ByteSource.of(file.getBytes(StandardCharsets.UTF_8));
  }

  static XmlReading read(String file) {
    return read(file, LIMITS);
  }

  static XmlReading read(String file, XmlLimits limits) {
    return read(source(file), limits);
  }

  static XmlReading read(ByteSource source, XmlLimits limits) {
    return new XmlTransactionReader(TransactionSamples.TABLES, limits).read(source);
  }

  static List<Integer> types(XmlReading reading) {
    return reading.records().stream().map(LogicalRecord::type).toList();
  }

  static List<String> findings(String file) {
    return findings(read(file));
  }

  /** Each as {@code RP-XML-010 record 1 at <nc:Date> #2: a second nc:Date | one nc:Date}. */
  static List<String> findings(XmlReading reading) {
    return reading.findings().stream().map(finding -> line(reading, finding)).toList();
  }

  private static String line(XmlReading reading, Finding finding) {
    Location place = finding.location();
    StringBuilder line = new StringBuilder(finding.ruleId());
    place.record().ifPresent(record -> line.append(" record ").append(record));
    place.idc().ifPresent(idc -> line.append(" idc ").append(idc));
    place.field().ifPresent(field -> line.append(" field ").append(field));
    place.bytes().ifPresent(range -> line.append(" at ").append(shown(reading, range)));
    String observed = finding.observed().text();
    return line.append(": ")
        .append(finding.observed().personal() ? "[personal] " + observed : observed)
        .append(" | ")
        .append(finding.required())
        .toString();
  }

  /** What is at a place; of nothing the offset, of much its two ends and its length. */
  static String shown(XmlReading reading, ByteRange range) {
    ByteSource source = reading.source();
    int from = range.offset() - source.origin();
    if (range.length() == 0) {
      return "nothing, " + (source.length() - from) + " before the end";
    }
    String file = source.latin1(0, source.length());
    String text = file.substring(from, from + range.length());
    int nth = 1;
    for (int at = file.indexOf(text); at < from; at = file.indexOf(text, at + 1)) {
      nth++;
    }
    String brief =
        text.length() <= SHOWN
            ? text
            : text.substring(0, 30) + "..." + text.substring(text.length() - 30);
    return brief + (nth == 1 ? "" : " #" + nth);
  }

  static List<String> unread(XmlReading reading) {
    return reading.unread().stream().map(range -> shown(reading, range)).toList();
  }

  /** The fields of a record as {@code 14.021 = 2,10,20;3,30,40}; of data the bytes as text. */
  public static List<String> fields(LogicalRecord record) {
    return record.fields().stream()
        .map(field -> field.number() + " = " + said(record, field))
        .toList();
  }

  /** What a field says; empty without it. */
  public static String said(LogicalRecord record, int field) {
    return record.field(field).map(found -> said(record, found)).orElse("");
  }

  private static String said(LogicalRecord record, Field field) {
    return field.isData()
        ? TransactionSamples.text(record.dataOf(field).toArray())
        : field.subfields().stream().map(RawXml::items).collect(Collectors.joining(";"));
  }

  private static String items(Subfield subfield) {
    return subfield.items().stream().map(item -> item.text()).collect(Collectors.joining(","));
  }

  /** Where a field, its value, its subfields and their items are. */
  static List<String> places(XmlReading reading, Field field) {
    List<String> places = new ArrayList<>();
    places.add("field " + shown(reading, field.range()));
    places.add("value " + shown(reading, field.value()));
    for (Subfield subfield : field.subfields()) {
      places.add("subfield " + shown(reading, subfield.range()));
      subfield.items().forEach(item -> places.add("item " + shown(reading, item.range())));
    }
    return places;
  }
}
