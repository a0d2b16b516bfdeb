package ridgeproof.transaction.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.xml.RawXml.element;
import static ridgeproof.transaction.xml.RawXml.fields;
import static ridgeproof.transaction.xml.RawXml.file;
import static ridgeproof.transaction.xml.RawXml.findings;
import static ridgeproof.transaction.xml.RawXml.header;
import static ridgeproof.transaction.xml.RawXml.headerOf;
import static ridgeproof.transaction.xml.RawXml.print;
import static ridgeproof.transaction.xml.RawXml.read;
import static ridgeproof.transaction.xml.RawXml.types;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.transaction.record.LogicalRecord;

/** Up to its limits a file is read; past one there is a finding, and what was read counts. */
class XmlReadingLimitsTest {

  private static final int MANY = 1_000;

  private static XmlReading withItems(int items, String... records) {
    return read(file(records), new XmlLimits(MANY, items, MANY));
  }

  @Test
  void asManyRecordsAreReadAsMayBe() {
    String file = file(header(), print(1), print(2));
    XmlReading all = read(file, new XmlLimits(4, MANY, MANY));
    assertEquals(List.of(1, 14, 14), types(all));
    assertEquals(List.of(), findings(all));
    for (int most : new int[] {1, 2}) {
      XmlReading some = read(file, new XmlLimits(most, MANY, MANY));
      assertEquals(List.of(1, 14).subList(0, most), types(some));
      assertEquals(
          List.of("RP-STR-026: more records | at most " + most + " records"), findings(some));
      assertEquals(List.of(), some.unread());
    }
  }

  /** The package, the record and its category with its value are 4. */
  @Test
  void elementsAndItemsCountTogether() {
    assertEquals(List.of(), findings(withItems(4, header())));
    XmlReading three = withItems(3, header());
    assertEquals(List.of("RP-STR-026: more information items | at most 3 items"), findings(three));
    assertEquals(List.of(), fields(three.records().get(0)));
    XmlReading two = withItems(2, header());
    assertEquals(List.of("RP-STR-026: more information items | at most 2 items"), findings(two));
    assertEquals(List.of(1), types(two));
  }

  @Test
  void aRecordInWhichTheLimitIsReachedEndsWhereReadingDid() {
    XmlReading reading = withItems(6, headerOf("FAUF"), print(1));
    LogicalRecord record = reading.records().get(0);
    assertEquals(List.of("1.001 = 1"), fields(record));
    String file = file(headerOf("FAUF"));
    String value = "<ebts:TransactionCategoryCode>FAUF</ebts:TransactionCategoryCode>";
    assertEquals(file.indexOf(value) + value.length(), record.range().end());
    assertEquals(List.of(1), types(reading));
  }

  @Test
  void anElementThatIsTooManyBeginsNoRecord() {
    XmlReading reading = withItems(4, header(), print(1));
    assertEquals(List.of(1), types(reading));
    assertEquals(
        List.of("RP-STR-026: more information items | at most 4 items"), findings(reading));
  }

  @Test
  void asManyFindingsAreKeptAsMayBe() {
    String unknown = element("a", "") + element("b", "") + element("c", "");
    assertEquals(2, read(file(header(unknown)), new XmlLimits(MANY, MANY, 2)).findings().size());
    assertEquals(3, read(file(header(unknown))).findings().size());
  }

  @Test
  void nothingMoreIsReadOfABrokenFileOnceALimitIsReached() {
    String file = file(header(), print(1), "</x>", print(2));
    XmlReading reading = read(file, new XmlLimits(2, MANY, MANY));
    assertEquals(List.of(1, 14), types(reading));
    assertEquals(List.of("RP-STR-026: more records | at most 2 records"), findings(reading));
  }
}
