package ridgeproof.examination.cause.card;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Reason;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.spec.layout.FingerPosition;

class StrangersPrintsCauseTest {

  /** The causes where so many clear prints match nothing and one more gives this answer. */
  private static List<Finding> causes(int unmatched, Verdict verdict, Reason reason) {
    List<FingerMatchResult> answers = new ArrayList<>();
    FindingLog log = new FindingLog(SampleCard.TABLES, 100);
    for (FingerPosition finger : FingerPosition.values()) {
      boolean no = answers.size() < unmatched;
      answers.add(
          new FingerMatchResult(
              finger,
              no ? Verdict.INCONCLUSIVE : verdict,
              no ? Reason.MATCHES_NO_ROLL : reason,
              no ? 5 : 60,
              Optional.empty(),
              0));
      if (no) {
        log.add(
            "RP-SEQ-008",
            Location.file().withPosition(OptionalInt.of(finger.code())),
            Observed.of("the plain print matches none of the rolled prints"),
            "a match");
      }
      if (answers.size() > unmatched) {
        break;
      }
    }
    FindingsReport card = SampleCard.rolled().examine();
    ExaminationInput examinee =
        new ExaminationInput(
            card.transaction(),
            SampleCard.TABLES,
            Depth.RIDGES,
            card.images(),
            Optional.empty(),
            false,
            ExaminationOptions.standard(),
            Optional.of(
                new SequenceComparison(
                    new SequenceResult(answers, List.of(), 40), Map.of(), Map.of())));
    CauseLog causes = new CauseLog(SampleCard.TABLES);
    new StrangersPrintsCause().establish(examinee, log.findings(), causes);
    return causes.causes().stream().map(cause -> cause.finding()).toList();
  }

  @Test
  void aCardOfWhichNoClearPairMatchesIsOfTwoPeople() {
    List<Finding> found = causes(9, Verdict.INCONCLUSIVE, Reason.TOO_FEW_MINUTIAE);
    assertEquals(List.of("RP-SEQ-028"), found.stream().map(Finding::ruleId).toList());
    assertEquals("9 clear plain prints match no rolled print", found.get(0).observed().text());
  }

  @Test
  void oneThatIsOnlyMoreAlikeThanAllOthersMayBeChance() {
    assertEquals(1, causes(9, Verdict.CONFIRMED, Reason.MOST_LIKE_OWN_ROLL).size());
  }

  @Test
  void oneMatchClearsTheCard() {
    assertEquals(List.of(), causes(9, Verdict.CONFIRMED, Reason.MATCHES_OWN_ROLL));
  }

  @Test
  void fewPairsThatDoNotMatchMayNotOverlap() {
    assertEquals(List.of(), causes(3, Verdict.INCONCLUSIVE, Reason.TOO_FEW_MINUTIAE));
  }
}
