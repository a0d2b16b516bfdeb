package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.LogicalRecord;

/** Whatever happens to a file, there is a report. */
@Tag("slow")
class DamageTest {

  private static final String SMALL = "type-8-sig-fax.an2";
  private static final int[] HARD_BYTES = {0x1C, 0x1D, 0x1E, 0x1F, 0x00, 0xFF};
  private static final int MUTATIONS = 150;

  @Test
  void aFileCutAtAnyByteIsReportedAndNeverReady() {
    byte[] whole = ReferenceFiles.read(SMALL);
    IntStream.range(0, whole.length)
        .parallel()
        .forEach(
            length -> {
              FindingsReport report = reportOn(Arrays.copyOf(whole, length), Depth.IMAGES);
              assertNotEquals(Verdict.READY, report.verdict(), "cut at " + length);
            });
  }

  @Test
  void anyByteChangedToASeparatorOrAnExtremeIsReported() {
    byte[] whole = ReferenceFiles.read(SMALL);
    IntStream.range(0, whole.length)
        .parallel()
        .forEach(
            place -> {
              byte[] damaged = whole.clone();
              for (int value : HARD_BYTES) {
                damaged[place] = (byte) value;
                reportOn(damaged, Depth.IMAGES);
              }
            });
  }

  @Test
  void everyChangedDigitOfALengthIsFoundAndTheOtherRecordsAreStillRead() {
    byte[] whole = ReferenceFiles.read(SMALL);
    Transaction sound = Reports.examine(whole, Depth.STRUCTURE).transaction();
    for (LogicalRecord record : sound.records()) {
      ByteRange length = record.fields().get(0).value();
      boolean binary = record.fields().get(0).tag().isEmpty();
      for (int place = length.offset(); place < length.end(); place++) {
        for (int value = binary ? 0 : '0'; value <= (binary ? 255 : '9'); value++) {
          if (value != (whole[place] & 0xFF)) {
            byte[] damaged = whole.clone();
            damaged[place] = (byte) value;
            FindingsReport report = reportOn(damaged, Depth.STRUCTURE);
            String where = "byte " + place + " to " + value;
            assertTrue(has(report, "RP-STR-004") || has(report, "RP-STR-012"), where);
            assertEquals(types(sound), types(report.transaction()), where);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {SMALL, "type-4-slaps.an2", "type-13-tip-eji-wsq.an2"})
  void recordsSwappedDoubledOrDroppedAreFound(String name) {
    byte[] whole = ReferenceFiles.read(name);
    List<LogicalRecord> records = Reports.examine(whole, Depth.STRUCTURE).transaction().records();
    for (int i = 1; i < records.size(); i++) {
      List<ByteRange> dropped = ranges(records);
      dropped.remove(i);
      assertTrue(disagrees(reportOn(joined(whole, dropped), Depth.STRUCTURE)), "dropped " + i);

      List<ByteRange> doubled = ranges(records);
      doubled.add(i, doubled.get(i));
      assertTrue(disagrees(reportOn(joined(whole, doubled), Depth.STRUCTURE)), "doubled " + i);

      for (int j = i + 1; j < records.size(); j++) {
        List<ByteRange> swapped = ranges(records);
        Collections.swap(swapped, i, j);
        assertTrue(disagrees(reportOn(joined(whole, swapped), Depth.STRUCTURE)), i + " with " + j);
      }
    }
  }

  @TestFactory
  Stream<DynamicTest> seededMutationsOfEveryFileAreReported() {
    return ReferenceFiles.all().stream()
        .map(file -> file.getFileName().toString())
        .map(name -> DynamicTest.dynamicTest(name, () -> mutate(name)));
  }

  private static void mutate(String name) {
    byte[] whole = ReferenceFiles.read(name);
    IntStream.range(0, MUTATIONS)
        .parallel()
        .mapToObj(i -> new Random(name.hashCode() * 31L + i))
        .forEach(random -> reportOn(mutation(whole, random), Depth.STRUCTURE));
  }

  /**
   * One to four bytes changed, half of them in the first kilobyte where most of the structure is;
   * or a run cut out.
   */
  private static byte[] mutation(byte[] whole, Random random) {
    byte[] damaged = whole.clone();
    if (random.nextInt(4) == 0) {
      int from = random.nextInt(whole.length);
      int count = 1 + random.nextInt(Math.min(2000, whole.length - from));
      byte[] shorter = Arrays.copyOf(whole, whole.length - count);
      System.arraycopy(whole, from + count, shorter, from, whole.length - from - count);
      return shorter;
    }
    for (int n = 1 + random.nextInt(4); n > 0; n--) {
      int reach = random.nextBoolean() ? Math.min(1024, whole.length) : whole.length;
      boolean hard = random.nextBoolean();
      damaged[random.nextInt(reach)] =
          (byte) (hard ? HARD_BYTES[random.nextInt(HARD_BYTES.length)] : random.nextInt(256));
    }
    return damaged;
  }

  private static FindingsReport reportOn(byte[] bytes, Depth depth) {
    FindingsReport report = Reports.examine(bytes, depth);
    assertFalse(Reports.text(bytes, report).isBlank());
    String json = Reports.json(bytes, report);
    assertTrue(json.contains("\"verdict\" : \"" + report.verdict().name() + "\""));
    return report;
  }

  private static boolean disagrees(FindingsReport report) {
    return report.everyFinding().stream()
        .map(Finding::ruleId)
        .anyMatch(Set.of("RP-STR-014", "RP-STR-015", "RP-STR-016")::contains);
  }

  /** Listed, or explained by a cause that is. */
  private static boolean has(FindingsReport report, String rule) {
    return report.everyFinding().stream().anyMatch(finding -> finding.ruleId().equals(rule));
  }

  private static List<Integer> types(Transaction transaction) {
    return transaction.records().stream().map(LogicalRecord::type).toList();
  }

  private static List<ByteRange> ranges(List<LogicalRecord> records) {
    return new ArrayList<>(records.stream().map(LogicalRecord::range).toList());
  }

  private static byte[] joined(byte[] whole, List<ByteRange> parts) {
    byte[] joined = new byte[parts.stream().mapToInt(ByteRange::length).sum()];
    int position = 0;
    for (ByteRange part : parts) {
      System.arraycopy(whole, part.offset(), joined, position, part.length());
      position += part.length();
    }
    return joined;
  }
}
