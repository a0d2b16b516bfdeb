package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.reader.RawTransaction.findings;
import static ridgeproof.transaction.reader.RawTransaction.header;
import static ridgeproof.transaction.reader.RawTransaction.read;
import static ridgeproof.transaction.reader.RawTransaction.tagged;
import static ridgeproof.transaction.reader.RawTransaction.types;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;

class ReadingLimitsTest {

  private static final String HEADER = header("2 00", "9 01");
  private static final String SECOND = tagged(2, "2.002:00", "2.018:SPECIMEN,ADA");
  private static final String FILE = HEADER + SECOND + tagged(9, "9.002:01");

  /** LEN, VER, six of CNT, TOT; then three. */
  private static final int ITEMS_OF_TWO = 1 + 1 + 6 + 1 + 3;

  private static final int ITEMS = ITEMS_OF_TWO + 2;

  @Test
  void aFileOfTheGreatestSizeIsReadAndALongerOneIsNot() {
    int size = FILE.length();
    assertEquals(List.of(), findings(read(FILE, new ParseLimits(size, 10, 100, 10))));
    Transaction longer = read(FILE, new ParseLimits(size - 1, 10, 100, 10));
    assertEquals(
        List.of("RP-STR-025: " + size + " bytes | at most " + (size - 1) + " bytes"),
        findings(longer));
    assertEquals(List.of(), longer.records());
  }

  @Test
  void asManyRecordsAsAllowedAreReadAndTheRestIsToldOf() {
    assertEquals(List.of(), findings(read(FILE, new ParseLimits(1000, 3, 100, 10))));
    Transaction fewer = read(FILE, new ParseLimits(1000, 2, 100, 10));
    int read = HEADER.length() + SECOND.length();
    assertEquals(
        "RP-STR-026 at " + read + "+18: more records | at most 2 records", findings(fewer).get(0));
    assertEquals(List.of(1, 2), types(fewer));
    assertEquals(List.of(new ByteRange(read, 18)), fewer.unread());
  }

  @Test
  void asManyItemsAsAllowedAreReadAndTheRestIsToldOf() {
    assertEquals(List.of(), findings(read(FILE, new ParseLimits(1000, 10, ITEMS, 10))));
    Transaction fewer = read(FILE, new ParseLimits(1000, 10, ITEMS_OF_TWO - 1, 10));
    int read = HEADER.length() + SECOND.length();
    assertEquals(
        List.of(
            "RP-STR-026 at " + read + "+18: more information items | at most 11 items",
            "RP-STR-014 record 1 field 1.003 at 20+20: CNT states 2 and lists 2; the file has 1"
                + " | one entry for each record after the first"),
        findings(fewer));
    assertEquals(List.of(1, 2), types(fewer));
  }

  @Test
  void aRecordThatPassesTheLimitOfItemsIsLeftWithinItself() {
    Transaction fewer = read(FILE, new ParseLimits(1000, 10, ITEMS_OF_TWO - 2, 10));
    assertEquals(List.of(1, 2), types(fewer));
    assertEquals(2, fewer.records().get(1).fields().size());
    int read = HEADER.length() + 18;
    assertEquals(List.of(new ByteRange(read, 19)), fewer.records().get(1).unread());
  }

  @Test
  void theLastRecordThatPassesTheLimitOfItemsIsToldOf() {
    int last = HEADER.length() + SECOND.length();
    for (int items : List.of(ITEMS_OF_TWO, ITEMS - 1)) {
      Transaction fewer = read(FILE, new ParseLimits(1000, 10, items, 10));
      assertEquals(
          "RP-STR-026 record 3 at "
              + last
              + "+18: more information items | at most "
              + items
              + " items",
          findings(fewer).get(1));
    }
  }

  @Test
  void noMoreFindingsThanAllowedAreKept() {
    String junk = HEADER + "?" + SECOND + "??" + tagged(9, "9.002:01");
    assertEquals(2, findings(junk).size());
    assertEquals(1, findings(read(junk, new ParseLimits(1000, 10, 100, 1))).size());
  }

  @Test
  void aTransactionWithinALargerFileHasThePlacesOfThatFile() {
    String damaged = HEADER.replace("FAUF", "FA\u0001F") + "??" + FILE.substring(HEADER.length());
    ByteSource part = ByteSource.of(TransactionSamples.ascii(damaged), 1000);
    Transaction transaction = read(part, ParseLimits.standard());
    assertEquals(
        List.of(
            "RP-STR-019 record 1 field 1.004 at "
                + (1000 + damaged.indexOf('\u0001'))
                + "+1: byte 0x01 | 7-bit ASCII characters",
            "RP-STR-018 at " + (1000 + HEADER.length()) + "+2: 2 bytes | a record begins here"),
        findings(transaction));
    assertEquals(List.of(1, 2, 9), types(transaction));
  }

  @Test
  void aPrintWithinALargerFileHasThePlacesOfThatFile() {
    String head = header("4 01");
    String file = head + RawTransaction.compressed(1, "an image");
    ByteSource part = ByteSource.of(TransactionSamples.ascii(file), 1000);
    Transaction transaction = read(part, ParseLimits.standard());
    assertEquals(List.of(), findings(transaction));
    assertEquals(
        "4.009 at " + (1000 + head.length() + RawTransaction.HEADER) + "+8",
        RawTransaction.fields(transaction.records().get(1)).get(8));
  }
}
