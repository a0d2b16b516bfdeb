package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.Finding;

/** The points of a segment's outline, field 14.025, repeat within one subfield. */
class RepeatedItemsTest {

  private static final int OUTLINES = 25;

  private static List<String> told(List<String> points) {
    List<String> items = new ArrayList<>(List.of("1", Integer.toString((points.size() + 1) / 2)));
    items.addAll(points);
    return SampleCard.rolledTagged()
        .with(3, record -> record.with(OUTLINES, List.of(items)))
        .examine()
        .findings()
        .stream()
        .filter(finding -> finding.ruleId().startsWith("RP-FLD-"))
        .map(RepeatedItemsTest::place)
        .toList();
  }

  private static String place(Finding finding) {
    String item =
        finding.location().item().isPresent()
            ? "item " + finding.location().item().getAsInt()
            : finding.observed().text();
    return finding.ruleId() + " " + finding.location().field().orElseThrow() + " " + item;
  }

  @Test
  void eachPointOfAnOutlineMayBeGiven() {
    assertEquals(List.of(), told(List.of("1", "1", "9", "1", "9", "9")));
  }

  @Test
  void aLaterPointIsHeldToTheSameRowsAsTheFirst() {
    assertEquals(List.of("RP-FLD-005 14.025 item 7"), told(List.of("1", "1", "9", "1", "A", "9")));
  }

  @Test
  void aPointWithOneCoordinateIsIncomplete() {
    assertEquals(
        List.of("RP-FLD-002 14.025 item 8 (Vertical point offset) empty"),
        told(List.of("1", "1", "9", "1", "9")));
  }

  @Test
  void noMorePointsThanTheRowAllows() {
    List<String> points = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      points.addAll(List.of(Integer.toString(i % 30), Integer.toString(i % 20)));
    }
    assertEquals(1, told(points).stream().filter(place -> place.startsWith("RP-FLD-012")).count());
    assertEquals(
        List.of(), told(points.subList(0, 198)).stream().filter(p -> p.contains("012")).toList());
  }
}
