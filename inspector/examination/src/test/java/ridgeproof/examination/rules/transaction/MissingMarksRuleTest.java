package ridgeproof.examination.rules.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.SampleCard;

class MissingMarksRuleTest {

  private static final String NOT_ANNOTATED = "RP-TXN-052";
  private static final String NO_MARK = "RP-TXN-053";

  private static SampleCard marked(SampleCard card, String... marks) {
    return card.with(2, draft -> draft.with(26, Arrays.stream(marks).map(List::of).toList()));
  }

  /** A card without the roll of a finger, which is annotated so. */
  private static SampleCard without(int finger, String reason) {
    return SampleCard.rolled()
        .without(finger + 2)
        .with(2, draft -> draft.with(84, List.of(List.of(Integer.toString(finger), reason))));
  }

  private static List<String> told(SampleCard card) {
    return found(card, NOT_ANNOTATED, NO_MARK);
  }

  @ParameterizedTest
  @CsvSource({
    "MISS L FGR, an annotation of the missing finger",
    "MISS FGR, an annotation of the missing finger",
    "MISS R HND, no prints of the missing hand",
    "ART L ARM, no prints of the missing hand"
  })
  void aMarkThatThePrintsContradictIsTold(String mark, String required) {
    assertEquals(
        List.of("RP-TXN-052 record 2 field 2.026 subfield 2: personal " + mark + "; " + required),
        told(marked(SampleCard.rolled(), "TAT L ARM", mark)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"MISS L FJT", "MISS HAND", "TAT L ARM"})
  void aMarkThatLeavesPrintsPossibleIsNot(String mark) {
    assertEquals(List.of(), told(marked(SampleCard.rolled(), mark)));
  }

  @Test
  void aHandIsContradictedByOneFingerAndAFingerByAllOfTheHand() {
    SampleCard card = without(7, "XX");
    assertEquals(List.of(), told(marked(card, "MISS L FGR")));
    assertEquals(
        List.of(
            "RP-TXN-052 record 2 field 2.026 subfield 1: personal MISS L HND;"
                + " no prints of the missing hand"),
        told(marked(card, "MISS L HND")));
  }

  @Test
  void anAmputatedFingerIsLookedForWhereMarksAreListed() {
    String gap =
        "RP-TXN-053 record 2 field 2.026: finger 7 annotated XX; a mark for the missing finger";
    assertEquals(List.of(gap), told(marked(without(7, "XX"), "TAT L ARM")));
    assertEquals(List.of(gap), told(marked(without(7, "xx"), "TAT L ARM")));
    assertEquals(List.of(), told(marked(without(7, "UP"), "TAT L ARM")));
    assertEquals(List.of(), told(without(7, "XX")));
    assertEquals(List.of(), told(marked(without(7, "XX"), "TAT L ARM", "MISS L FJT")));
  }

  @Test
  void severalAmputatedFingersWithoutMarkAreToldOnce() {
    SampleCard card =
        SampleCard.rolled()
            .with(2, draft -> draft.with(84, List.of(List.of("7", "XX"), List.of("8", "XX"))));
    assertEquals(
        List.of(
            "RP-TXN-053 record 2 field 2.026: finger 7 annotated XX; a mark for the missing finger"),
        told(marked(card, "TAT L ARM")));
  }
}
