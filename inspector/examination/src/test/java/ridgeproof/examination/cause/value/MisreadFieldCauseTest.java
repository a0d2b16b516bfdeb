package ridgeproof.examination.cause.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;

class MisreadFieldCauseTest {

  private static List<String> shown(SampleCard card) {
    return card.examine().findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .map(Finding::ruleId)
        .toList();
  }

  @Test
  void aPositionThatDoesNotExistExplainsThePrintThatIsMissing() {
    SampleCard card = SampleCard.rolledTagged().with(7, draft -> draft.with(13, "61"));
    assertEquals(List.of("RP-COD-001"), shown(card));
  }

  @Test
  void morePrintsMissingThanPositionsMisreadAreStillReported() {
    SampleCard card = SampleCard.rolledTagged().with(7, draft -> draft.with(13, "61")).without(10);
    assertEquals(2, shown(card).stream().filter("RP-TXN-004"::equals).count());
  }

  @Test
  void aResolutionWithoutItsPointExplainsWhatUsesIt() {
    SampleCard card = SampleCard.rolled().with(1, draft -> draft.with(12, "01969"));
    assertTrue(
        shown(card).stream().allMatch(rule -> rule.startsWith("RP-FLD")), shown(card)::toString);
  }

  @Test
  void anIdcThatIsNoNumberIsOneFinding() {
    SampleCard card = SampleCard.rolledTagged().with(7, draft -> draft.with(2, "A1"));
    assertEquals(List.of("RP-STR-028"), shown(card));
  }

  @Test
  void noFindingIsShownTwice() {
    SampleCard card =
        SampleCard.rolledTagged()
            .with(7, draft -> draft.with(2, "A1"))
            .with(1, draft -> draft.with(2, "0600"));
    assertEquals(shown(card).stream().distinct().toList(), shown(card));
  }

  @Test
  void anImageOfAnotherFormatThanStatedIsOneFinding() {
    SampleCard card = SampleCard.rolledTagged().with(7, draft -> draft.with(11, "WSQ20"));
    assertEquals(List.of("RP-IMG-005"), shown(card));
  }
}
