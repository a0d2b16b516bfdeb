package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;

/** A capture that was left in the file beside a better one of the same finger is no fault more. */
class KeptRetakeCauseTest {

  private static final String OBSERVED = "RP-TXN-003 record 17 finger 2: observed; required";

  /** The right index finger is in records 4 and 17. */
  private static List<String> told(Finding... found) {
    SampleCard card = SampleCard.rolledTagged().plus(SampleCard.taggedPrint(15, 2, 1));
    return MeasuredCard.of(card).told(new KeptRetakeCause(), found);
  }

  @Test
  void itsFaultsFollowFromThatItWasKept() {
    assertEquals(
        List.of(OBSERVED + " -> RP-RDG-005 record 4 finger 2, RP-RDG-010 record 4 finger 2"),
        told(
            at("RP-TXN-003", 17, 2),
            at("RP-RDG-005", 4, 2),
            at("RP-RDG-010", 4, 2),
            at("RP-IMG-016", 4, 2),
            at("RP-RDG-010", 17, 2),
            at("RP-RDG-005", 5, 3)));
  }

  @Test
  void whereBothArePoorTheFingerHasToBeTakenAgain() {
    assertEquals(
        List.of(), told(at("RP-TXN-003", 17, 2), at("RP-RDG-005", 4, 2), at("RP-RDG-005", 17, 2)));
  }

  @Test
  void adviceAndFaultsOfOtherKindsMakeNoPoorCapture() {
    assertEquals(
        List.of(),
        told(
            at("RP-TXN-003", 17, 2),
            at("RP-RDG-005", 4, 2).withSeverity(Severity.ADVICE),
            at("RP-IMG-016", 4, 2)));
  }

  @Test
  void withoutADuplicateNothingIsExcused() {
    assertEquals(List.of(), told(at("RP-TXN-004", 17, 2), at("RP-RDG-005", 4, 2)));
    assertEquals(Set.of(), new KeptRetakeCause().ids());
  }
}
