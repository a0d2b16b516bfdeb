package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.rule.Severity;

/** What is most pressing comes first, and among equals what helps most. */
class RecommendedActionTest {

  private static final List<ExaminedImage> IMAGES = SampleCard.rolled().examine().images();
  private static final String DRY = "RP-RDG-002";

  /** The image of a finger whose ridges have this score. */
  private static ExaminedImage image(int finger, int score) {
    ExaminedImage image = IMAGES.get(finger - 1);
    FingerAnalysis analysis =
        new FingerAnalysis(List.of(), Optional.empty(), new QualityScore(score, List.of()));
    RidgeAnalysis ridges =
        new RidgeAnalysis(
            Impression.ROLLED,
            Map.of(FingerPosition.ofCode(finger).orElseThrow(), analysis),
            Optional.empty());
    return image.opened(
        image.header().orElseThrow(), image.pixels(), List.of(), Optional.of(ridges));
  }

  private static Finding finding(String rule, Location place, Severity severity) {
    FindingLog log = new FindingLog(SampleCard.TABLES, 10);
    log.add(rule, place, Observed.of("found"), "required");
    return log.findings().get(0).withSeverity(severity);
  }

  private static Finding dry(ExaminedImage image, Severity severity) {
    return finding(DRY, image.location(), severity);
  }

  /** The findings that each action answers: rule, and record where it is of one. */
  private static List<String> order(List<Finding> findings, List<ExaminedImage> images) {
    List<String> order = new ArrayList<>();
    for (RecommendedAction action : RecommendedAction.of(findings, images, SampleCard.TABLES)) {
      order.add(
          action.severity()
              + " "
              + action.findings().get(0).ruleId()
              + " "
              + action.findings().get(0).location().record().orElse(0)
              + " x"
              + action.findings().size());
    }
    return order;
  }

  @Test
  void theWorstSeverityComesFirstWhateverTheOrderOfTheFile() {
    Finding note = finding("RP-STR-013", Location.file(), Severity.NOTE);
    Finding advice = finding("RP-FLD-011", Location.file(), Severity.ADVICE);
    Finding likely = finding("RP-FLD-005", Location.file(), Severity.LIKELY);
    Finding blocking = finding("RP-TXN-004", Location.file(), Severity.BLOCKING);
    List<String> expected =
        List.of("BLOCKING RP-TXN-004 0 x1", "LIKELY RP-FLD-005 0 x1", "ADVICE RP-FLD-011 0 x1");
    assertEquals(expected, order(List.of(note, advice, likely, blocking), List.of()));
    assertEquals(expected, order(List.of(blocking, likely, advice, note), List.of()));
  }

  @Test
  void amongEqualsTheOneThatAnswersMostComesFirst() {
    Finding one = finding("RP-FLD-005", Location.file(), Severity.LIKELY);
    Finding three =
        finding("RP-STR-013", Location.file(), Severity.LIKELY).repeatedAt(List.of(one, one));
    Finding cause = finding("RP-TXN-003", Location.file(), Severity.LIKELY).explaining(3);
    List<String> expected =
        List.of("LIKELY RP-TXN-003 0 x1", "LIKELY RP-STR-013 0 x1", "LIKELY RP-FLD-005 0 x1");
    assertEquals(expected, order(List.of(one, three, cause), List.of()));
    assertEquals(expected, order(List.of(cause, three, one), List.of()));
  }

  @Test
  void amongPrintsTheOneWithTheLowestScoreComesFirst() {
    ExaminedImage good = image(1, 60);
    ExaminedImage poor = image(2, 20);
    ExaminedImage fair = image(3, 40);
    List<ExaminedImage> images = List.of(good, poor, fair);
    List<Finding> findings =
        List.of(dry(good, Severity.LIKELY), dry(poor, Severity.LIKELY), dry(fair, Severity.LIKELY));
    assertEquals(
        List.of("LIKELY RP-RDG-002 4 x1", "LIKELY RP-RDG-002 5 x1", "LIKELY RP-RDG-002 3 x1"),
        order(findings, images));
  }

  /** One answer each: a print with any fault at all comes before a field. */
  @Test
  void aRecaptureComesBeforeAnotherStepThatAnswersAsMuch() {
    ExaminedImage good = image(1, 99);
    Finding field = finding("RP-FLD-005", Location.file(), Severity.LIKELY);
    assertEquals(
        List.of("LIKELY RP-RDG-002 3 x1", "LIKELY RP-FLD-005 0 x1"),
        order(List.of(field, dry(good, Severity.LIKELY)), List.of(good)));
  }

  @Test
  void aStepSaysWhatToDoWithThePrint() {
    ExaminedImage print = image(1, 20);
    String repeated = " If repeated attempts give the same result, follow your agency's policy.";
    String recapture = remedy(print, dry(print, Severity.LIKELY));
    assertTrue(recapture.startsWith("Recapture the right thumb (rolled, record 3). "), recapture);
    assertTrue(recapture.endsWith(repeated), recapture);
    String consider = remedy(print, dry(print, Severity.ADVICE));
    assertTrue(
        consider.startsWith("Consider recapturing the right thumb (rolled, record 3). "), consider);
    assertFalse(consider.contains("follow your agency's policy"), consider);
    String both =
        RecommendedAction.of(
                List.of(
                    dry(print, Severity.ADVICE),
                    finding("RP-RDG-003", print.location(), Severity.LIKELY)),
                List.of(print),
                SampleCard.TABLES)
            .get(0)
            .remedy();
    assertTrue(both.startsWith("Recapture the right thumb (rolled, record 3). "), both);
  }

  private static String remedy(ExaminedImage image, Finding finding) {
    return RecommendedAction.of(List.of(finding), List.of(image), SampleCard.TABLES)
        .get(0)
        .remedy();
  }

  @Test
  void aPrintIsRecapturedOnceForAllThatIsWrongWithIt() {
    ExaminedImage poor = image(1, 20);
    ExaminedImage worse = image(2, 60);
    List<Finding> findings =
        List.of(
            dry(poor, Severity.LIKELY),
            dry(worse, Severity.ADVICE),
            finding("RP-RDG-003", worse.location(), Severity.LIKELY));
    assertEquals(
        List.of("LIKELY RP-RDG-002 4 x2", "LIKELY RP-RDG-002 3 x1"),
        order(findings, List.of(poor, worse)));
  }

  @Test
  void aSegmentThatTheRecordMarksWronglyIsNoMatterOfCapture() {
    ExaminedImage print = image(1, 20);
    Finding marked = finding("RP-RDG-021", print.location(), Severity.LIKELY);
    RecommendedAction action =
        RecommendedAction.of(List.of(marked), List.of(print), SampleCard.TABLES).get(0);
    assertEquals(marked.remedy(), action.remedy());
    assertEquals(OptionalInt.of(3), action.findings().get(0).location().record());
  }
}
