package ridgeproof.corpus.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.Expected;
import ridgeproof.corpus.scenario.Scenario;

class SubjectPlanTest {

  @Test
  void skinByAgeChangesNothingElseOfASubject() {
    Scenario young = new SubjectPlan(7, 0.5, 0).scenario(3);
    Scenario aged = new SubjectPlan(7, 0.5, 0, true).scenario(3);
    assertEquals(young.defects(), aged.defects());
    assertEquals(young.prints(), aged.prints());
    assertEquals(young.subject(), aged.subject());
    assertNotEquals(young.skin(), aged.skin());
    assertTrue(aged.skin().age() >= 18 && aged.skin().age() <= 85);
  }

  @Test
  void aBatchHasCardsOfPaperOnlyWhereAsked() {
    SubjectPlan aged = new SubjectPlan(7, 0, 0, true);
    SubjectPlan young = new SubjectPlan(7, 0, 0);
    assertTrue(subjects().stream().anyMatch(subject -> !aged.scenario(subject).paper().isBare()));
    assertTrue(subjects().stream().allMatch(subject -> young.scenario(subject).paper().isBare()));
  }

  private static List<Integer> subjects() {
    return List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
  }

  /**
   * Four touches of a few square millimeters, whose order looked like that of a hand on its head.
   */
  @Test
  void touchesThatAreTooSmallAreNotCalledUpsideDown() {
    Scenario touched = new SubjectPlan(1_300_001, 0.5, 0).scenario(32);
    List<String> rules =
        Expected.rules(
            Expected.examine(new TransactionComposer(new SubjectCache()).compose(touched))
                .findings());
    assertFalse(rules.contains("RP-SEQ-021"), rules.toString());
    assertTrue(rules.contains("RP-RDG-020"), rules.toString());
  }
}
