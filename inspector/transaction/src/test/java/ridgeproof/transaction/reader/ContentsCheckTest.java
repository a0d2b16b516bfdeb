package ridgeproof.transaction.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.transaction.reader.RawTransaction.RS;
import static ridgeproof.transaction.reader.RawTransaction.US;
import static ridgeproof.transaction.reader.RawTransaction.findings;
import static ridgeproof.transaction.reader.RawTransaction.header;
import static ridgeproof.transaction.reader.RawTransaction.read;
import static ridgeproof.transaction.reader.RawTransaction.tagged;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.transaction.record.ByteRange;

class ContentsCheckTest {

  private static final String AT_CNT = " record 1 field 1.003 at ";

  /** Records that say no more than their type and IDC, each as {@code "14 01"}. */
  private static String records(String... entries) {
    StringBuilder records = new StringBuilder();
    for (String entry : entries) {
      String[] parts = entry.split(" ");
      int type = Integer.parseInt(parts[0]);
      records.append(tagged(type, type + ".002:" + parts[1]));
    }
    return records.toString();
  }

  private static String atContents(String file) {
    ByteRange range = read(file).records().get(0).field(3).orElseThrow().range();
    return AT_CNT + range.offset() + "+" + range.length() + ": ";
  }

  @Test
  void recordsAsListedBringNoFinding() {
    String[] entries = {"2 00", "9 01", "9 02"};
    assertEquals(List.of(), findings(header(entries) + records(entries)));
  }

  @Test
  void aHeaderWithoutContentsIsReportedAsSuch() {
    String file = tagged(1, "1.002:0500", "1.004:FAUF") + records("2 00");
    assertEquals(
        List.of(
            "RP-STR-017 record 1 field 1.003 at 0+"
                + file.indexOf("2.001")
                + ": no CNT"
                + " | the number of records that follow, then the type and IDC of each"),
        findings(file));
  }

  @Test
  void contentsWithoutACountAreReportedAsSuch() {
    String file =
        tagged(1, "1.002:0500", "1.003:1" + US + "?" + RS + "2" + US + "00") + records("2 00");
    assertEquals(
        List.of(
            "RP-STR-017"
                + atContents(file)
                + "CNT without a count"
                + " | the number of records that follow, then the type and IDC of each"),
        findings(file));
  }

  @Test
  void eachOfTheThreeCountsMayDiffer() {
    String contents = RS + "2" + US + "00" + RS + "9" + US + "01";
    String stated =
        tagged(1, "1.002:0500", "1.003:1" + US + "3" + contents) + records("2 00", "9 01");
    assertEquals(
        List.of(
            "RP-STR-014"
                + atContents(stated)
                + "CNT states 3 and lists 2; the file has 2"
                + " | one entry for each record after the first"),
        findings(stated));
    String listed = tagged(1, "1.002:0500", "1.003:1" + US + "1" + contents) + records("2 00");
    assertEquals(
        List.of(
            "RP-STR-014"
                + atContents(listed)
                + "CNT states 1 and lists 2; the file has 1"
                + " | one entry for each record after the first"),
        findings(listed));
    String held = header("2 00", "9 01") + records("2 00", "9 01", "9 02");
    assertEquals(
        List.of(
            "RP-STR-014"
                + atContents(held)
                + "CNT states 2 and lists 2; the file has 3"
                + " | one entry for each record after the first"),
        findings(held));
  }

  @Test
  void anotherOrderIsReportedAtTheFirstRecordThatDiffers() {
    String file = header("2 00", "9 01", "9 02") + records("2 00", "9 02", "9 01");
    assertEquals(
        List.of("RP-STR-015" + atContents(file) + "record 3 is Type-9 IDC 02 | Type-9 IDC 01"),
        findings(file));
  }

  @Test
  void eachIdcThatDiffersIsReportedAtItsRecord() {
    String head = header("2 00", "9 01", "9 02");
    String file = head + records("2 00", "9 03", "9 02");
    assertEquals(
        List.of(
            "RP-STR-016 record 3 at "
                + (head.length() + 18)
                + "+18: Type-9 IDC 03 | Type-9 IDC 01"),
        findings(file));
  }

  @Test
  void recordsOfOtherTypesAreNamedUpToFour() {
    for (int count : List.of(1, 4, 5)) {
      List<String> listed = new ArrayList<>(List.of("2 00"));
      List<String> held = new ArrayList<>(List.of("2 00"));
      for (int i = 1; i <= count; i++) {
        listed.add("9 0" + i);
        held.add("12 0" + i);
      }
      String file = header(listed.toArray(String[]::new)) + records(held.toArray(String[]::new));
      assertEquals(
          List.of(
              "RP-STR-014"
                  + atContents(file)
                  + ("in the file: " + named("Type-12", count))
                  + (" | listed: " + named("Type-9", count))),
          findings(file));
    }
  }

  private static String named(String type, int count) {
    List<String> names = new ArrayList<>();
    for (int i = 1; i <= Math.min(count, 4); i++) {
      names.add(type + " IDC 0" + i);
    }
    return String.join(", ", names) + (count > 4 ? ", ..." : "");
  }

  @Test
  void entriesThatCannotBeReadAreLeftOut() {
    String entries = String.join(RS, "2" + US + "00", "9" + US, US + "01", "9", "");
    String file = tagged(1, "1.002:0500", "1.003:1" + US + "1" + RS + entries) + records("2 00");
    assertEquals(List.of(), findings(file));
    assertEquals(
        List.of(new TransactionContent.Entry(2, 0)),
        TransactionContent.of(read(file).records().get(0).field(3).orElseThrow()).entries());
  }

  @Test
  void aRecordWithoutAnIdcIsNotTheOneListed() {
    String head = header("2 00");
    String file = head + tagged(2, "2.003:X");
    assertEquals(
        List.of(
            "RP-STR-028 record 2 at " + head.length() + "+17: no readable IDC | IDC 00 to 99",
            "RP-STR-016 record 2 at "
                + head.length()
                + "+17: Type-2 without a readable IDC | Type-2 IDC 00"),
        findings(file));
  }

  @Test
  void aLongListIsReadToItsEnd() {
    List<String> entries = new ArrayList<>(Collections.nCopies(40, "9 01"));
    entries.add("9 02");
    String[] all = entries.toArray(String[]::new);
    assertEquals(List.of(), findings(header(all) + records(all)));
  }
}
