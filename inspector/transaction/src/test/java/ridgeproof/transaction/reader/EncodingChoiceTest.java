package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.reader.RawTransaction.findings;
import static ridgeproof.transaction.reader.RawTransaction.header;
import static ridgeproof.transaction.reader.RawTransaction.source;
import static ridgeproof.transaction.reader.RawTransaction.tagged;
import static ridgeproof.transaction.reader.RawTransaction.types;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.record.Notation;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/** Which of the two encodings a file is read in. */
class EncodingChoiceTest {

  private static final String XML = xml();

  private static String xml() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      new XmlTransactionWriter(TransactionSamples.TABLES)
          .write(TransactionSamples.read(TransactionSamples.bytes()), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return TransactionSamples.text(out.toByteArray());
  }

  private static Transaction read(String file) {
    return read(file, ParseLimits.standard());
  }

  private static Transaction read(String file, ParseLimits limits) {
    return new TransactionReader(TransactionSamples.TABLES, limits).read(source(file));
  }

  @Test
  void aTransactionInXmlIsReadAsOne() {
    Transaction transaction = read(XML);
    assertEquals(Notation.XML, transaction.notation());
    assertEquals(List.of(1, 2, 14), types(transaction));
    assertEquals(List.of(), findings(transaction));
    assertEquals(500, transaction.version());
    assertEquals(CharacterEncoding.UTF_8, transaction.encoding());
  }

  @Test
  void whatItsHeaderSaysIsHeldAgainstItsRecords() {
    String more = XML.replace("Quantity>2<", "Quantity>3<");
    int start = more.indexOf("<ansi-nist:ContentFirst");
    String end = "14</ansi-nist:RecordCategoryCode>";
    int length = more.indexOf(end) + end.length() - start;
    assertEquals(
        List.of(
            "RP-STR-014 record 1 field 1.003 at "
                + (start + "+" + length)
                + ": CNT states 3 and lists 2; the file has 2"
                + " | one entry for each record after the first"),
        findings(read(more)));
  }

  @Test
  void itsVersionIsOneThatIsPublished() {
    Transaction transaction = read(XML.replace("VersionValue>05<", "VersionValue>07<"));
    assertEquals(List.of("RP-STR-023"), TransactionSamples.rules(transaction));
    assertEquals("\"0700\"", transaction.findings().get(0).observed().text());
    assertEquals(502, transaction.version());
  }

  @Test
  void aHeaderWithoutContentsIsReportedInXmlToo() {
    String without =
        XML.replaceFirst("(?s)<ansi-nist:TransactionContentS.*TransactionContentSummary>", "");
    assertEquals(List.of("RP-STR-017"), TransactionSamples.rules(read(without)));
  }

  @Test
  void whatTheReaderOfXmlFindsComesFirst() {
    String file = XML.replace("Quantity>2<", "Quantity>3<").replace("</itl:NIST", "</itl:LIST");
    List<String> rules = TransactionSamples.rules(read(file));
    assertEquals("RP-STR-014", rules.get(rules.size() - 1));
    assertEquals(2, rules.size());
  }

  @Test
  void xmlOfTheGreatestSizeIsReadAndLongerXmlIsNot() {
    int size = XML.length();
    assertEquals(List.of(1, 2, 14), types(read(XML, new ParseLimits(size, 10, 1000, 10))));
    assertEquals(
        List.of("RP-STR-025: " + size + " bytes | at most " + (size - 1) + " bytes"),
        findings(read(XML, new ParseLimits(size - 1, 10, 1000, 10))));
  }

  @Test
  void aTransactionThatCarriesAnotherInXmlIsReadItself() {
    String outer = header("2 00") + tagged(2, "2.002:00", "2.018:" + XML);
    for (String before : List.of("", "From the station: ")) {
      Transaction transaction = read(before + outer);
      assertEquals(Notation.TRADITIONAL, transaction.notation());
      assertEquals(List.of(1, 2), types(transaction));
    }
    assertEquals(List.of(), findings(read(outer)));
  }

  @Test
  void xmlBehindOtherTextIsReadWhereItComesFirst() {
    Transaction transaction = read("From the station: " + XML + header("2 00"));
    assertEquals(Notation.XML, transaction.notation());
    assertEquals(List.of(1, 2, 14), types(transaction));
  }

  @Test
  void xmlThatHoldsNoTransactionIsNone() {
    assertEquals(
        List.of("RP-STR-002: looks like an XML file | a file that begins with 1.001:"),
        findings(read("<?xml version='1.0'?><a/>")));
  }
}
