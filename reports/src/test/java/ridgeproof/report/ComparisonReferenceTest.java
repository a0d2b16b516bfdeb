package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.ImageLevel;
import ridgeproof.examination.comparison.PrintComparison;
import ridgeproof.examination.comparison.PrintComparison.Reason;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.comparison.ComparisonJson;
import ridgeproof.report.comparison.ComparisonText;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.record.LogicalRecord;

@Tag("slow")
class ComparisonReferenceTest {

  private static final String CARD = "type-4-tpcard.an2";

  /** In a Type-4 record: the length takes four bytes, the IDC one, the impression type one. */
  private static final int IDC = 4;

  private static final int POSITION = 6;

  private static List<Reference> files;

  /** A reference file, examined once for all tests. */
  private record Reference(
      String name, byte[] bytes, FindingsReport images, FindingsReport ridges) {

    static Reference of(Path path) {
      String name = path.getFileName().toString();
      byte[] bytes = ReferenceFiles.read(name);
      return new Reference(
          name, bytes, Reports.examine(bytes, Depth.IMAGES), Reports.examine(bytes, Depth.RIDGES));
    }
  }

  @BeforeAll
  static void examineThem() {
    files = ReferenceFiles.all().stream().map(Reference::of).toList();
  }

  private static Reference card() {
    return files.stream().filter(file -> file.name().equals(CARD)).findFirst().orElseThrow();
  }

  @Test
  void everyComparisonSatisfiesThePublishedSchema() {
    for (Reference other : files) {
      FileFacts facts = Reports.facts(other.bytes());
      for (TransactionComparison comparison :
          List.of(
              Renderings.compare(card().images(), other.images()),
              Renderings.compare(other.ridges(), other.ridges()))) {
        String json = ComparisonJson.render(facts, facts, comparison, RenderOptions.standard());
        assertEquals(Set.of(), Reports.objectionsToComparison(json), other.name());
      }
    }
  }

  @Test
  void aFileIsTheSameAsItself() {
    for (Reference file : files) {
      TransactionComparison comparison = Renderings.compare(file.ridges(), file.ridges());
      assertTrue(comparison.same(), file.name());
      assertTrue(comparison.pairs().stream().noneMatch(RecordPair::differs), file.name());
    }
  }

  @Test
  void aTextComparisonKeepsWithinEightyColumns() {
    for (Reference other : files) {
      ComparisonText.render(
              Reports.facts(card().bytes()),
              Reports.facts(other.bytes()),
              Renderings.compare(card().images(), other.images()),
              RenderOptions.standard())
          .lines()
          .forEach(line -> assertTrue(line.length() <= 80, line));
    }
  }

  @Test
  void twoRollsUnderEachOthersNameAreDifferentFingers() {
    byte[] card = card().bytes();
    byte[] exchanged = exchanged(card, 2, 8);
    TransactionComparison comparison =
        Renderings.compare(card().ridges(), Reports.examine(exchanged, Depth.RIDGES));
    assertFalse(comparison.same());
    Map<Integer, ImageLevel> levels =
        comparison.pairs().stream()
            .filter(pair -> pair.level().isPresent())
            .collect(
                Collectors.toMap(pair -> pair.first().ordinal() - 2, p -> p.level().orElseThrow()));
    assertEquals(14, levels.size());
    levels.forEach(
        (position, level) ->
            assertEquals(
                position == 2 || position == 8
                    ? ImageLevel.DIFFERENT_FINGER
                    : ImageLevel.SAME_BYTES,
                level,
                "position " + position));
    PrintComparison index = print(comparison, 2);
    assertEquals(Reason.SECOND_MATCHES_ANOTHER, index.reason());
    assertEquals(Optional.of(FingerPosition.LEFT_MIDDLE), index.other());
    assertTrue(index.similarity() < 40 && index.otherSimilarity() > 40, index.toString());
    String json =
        ComparisonJson.render(
            Reports.facts(card), Reports.facts(exchanged), comparison, RenderOptions.standard());
    assertEquals(Set.of(), Reports.objectionsToComparison(json));
  }

  @Test
  void aFingerUnderTheNameOfOneThatIsNotThereCannotBeTold() {
    byte[] card = card().bytes();
    FindingsReport whole = Reports.examine(card, Depth.STRUCTURE);
    byte[] first = part(card, whole, List.of(1, 2, 4));
    byte[] second = renamed(part(card, whole, List.of(1, 2, 10)), 8, 2);
    TransactionComparison comparison = Renderings.compare(first, second);
    PrintComparison print = print(comparison, 2);
    assertEquals(PrintComparison.Answer.CANNOT_BE_TOLD, print.answer());
    assertEquals(Reason.NOT_ALIKE, print.reason());
  }

  private static PrintComparison print(TransactionComparison comparison, int position) {
    return comparison.pairs().stream()
        .flatMap(pair -> pair.fingers().stream())
        .flatMap(fingers -> fingers.prints().stream())
        .filter(print -> print.finger().code() == position)
        .findFirst()
        .orElseThrow();
  }

  /** The card with the IDC and position of two of its records exchanged. */
  private static byte[] exchanged(byte[] card, int one, int other) {
    FindingsReport report = Reports.examine(card, Depth.STRUCTURE);
    byte[] bytes = card.clone();
    int left = record(report, one).range().offset();
    int right = record(report, other).range().offset();
    for (int at : new int[] {IDC, POSITION}) {
      bytes[left + at] = card[right + at];
      bytes[right + at] = card[left + at];
    }
    return bytes;
  }

  private static LogicalRecord record(FindingsReport report, int position) {
    return report.images().stream()
        .filter(image -> image.positions().equals(List.of(position)))
        .findFirst()
        .orElseThrow()
        .record();
  }

  /** Some records of a file; what its header says of the others is left as it is. */
  private static byte[] part(byte[] card, FindingsReport report, List<Integer> ordinals) {
    ByteArrayOutputStream part = new ByteArrayOutputStream();
    for (int ordinal : ordinals) {
      LogicalRecord record = report.transaction().records().get(ordinal - 1);
      part.write(card, record.range().offset(), record.range().length());
    }
    return part.toByteArray();
  }

  private static byte[] renamed(byte[] file, int position, int other) {
    FindingsReport report = Reports.examine(file, Depth.STRUCTURE);
    byte[] bytes = file.clone();
    bytes[record(report, position).range().offset() + POSITION] = (byte) other;
    return bytes;
  }
}
