package ridgeproof.examination.rules.ridges;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.facts.SequenceComparison.SeenFinger;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/** A print in record 4 of a card, the right index finger, against the limits of its ridges. */
class RidgeLimitsRuleTest {

  private static final FingerPosition INDEX = FingerPosition.RIGHT_INDEX;
  private static final FindingsReport CARD =
      SampleCard.examine(
          SampleCard.rolledTagged().bytes(),
          ExaminationOptions.standard().withDepth(Depth.STRUCTURE));
  private static final int INDEX_IMAGE = 1;
  private static final int SLAP_IMAGE = 12;

  private static RidgeAnalysis one(Impression impression, SpecimenPrints print) {
    return new RidgeAnalysis(impression, Map.of(INDEX, print.analysis()), Optional.empty());
  }

  private static List<Finding> findings(
      int image, RidgeAnalysis facts, Optional<SequenceComparison> sequence, FindingLog log) {
    ExaminedImage seen = CARD.images().get(image);
    seen =
        seen.opened(
            ImageHeaders.read(seen.data().orElseThrow()),
            seen.pixels(),
            List.of(),
            Optional.of(facts));
    new RidgeLimitsRule()
        .check(
            new ExaminationInput(
                CARD.transaction(),
                SampleCard.TABLES,
                Depth.RIDGES,
                List.of(seen),
                Optional.empty(),
                false,
                ExaminationOptions.standard(),
                sequence),
            log);
    return log.findings().stream().filter(f -> f.ruleId().startsWith("RP-RDG")).toList();
  }

  private static FindingLog log() {
    return new FindingLog(SampleCard.TABLES, 100);
  }

  private static List<Finding> findings(Impression impression, SpecimenPrints print) {
    return findings(INDEX_IMAGE, one(impression, print), Optional.empty(), log());
  }

  private static List<String> found(Impression impression, SpecimenPrints print) {
    return lines(findings(impression, print));
  }

  private static List<String> rolled(SpecimenPrints print) {
    return found(Impression.ROLLED, print);
  }

  private static List<String> lines(List<Finding> findings) {
    return findings.stream()
        .map(
            f ->
                f.ruleId()
                    + " position "
                    + f.location().position().getAsInt()
                    + " "
                    + f.observed().text()
                    + " | "
                    + f.required())
        .toList();
  }

  @Test
  void aPrintWithinEveryLimitIsNotTold() {
    assertEquals(List.of(), rolled(SpecimenPrints.sound()));
    assertEquals(List.of(), found(Impression.PLAIN, SpecimenPrints.sound()));
  }

  @Test
  void aMeasureBeyondItsLimitIsToldWithTheSideAndTheUnitOfTheLimit() {
    assertEquals(
        List.of(
            "RP-RDG-003 position 2 width of the print: 17 mm"
                + " | width of the print at least 18 mm"),
        rolled(SpecimenPrints.sound().width(17)));
    assertEquals(
        List.of(
            "RP-RDG-007 position 2 share of the print split by a gap: 60 %;"
                + " width of a gap in the print: 2.00 mm"
                + " | share of the print split by a gap at most 50 %;"
                + " width of a gap in the print at most 1.50 mm"),
        rolled(SpecimenPrints.sound().gap(2, 0.6)));
  }

  @Test
  void grayLevelsAreNamedOnce() {
    assertEquals(
        List.of(
            "RP-RDG-005 position 2 gray level of the ridges: 50; gray level of the valleys: 200"
                + " | gray level of the ridges at least 54; gray level of the valleys at least 208"),
        rolled(SpecimenPrints.sound().grays(50, 200)));
  }

  @Test
  void howSureAMeasureIsStandsInTheEvidenceAlone() {
    List<Finding> poor =
        findings(Impression.PLAIN, SpecimenPrints.sound().ridgeArea(100).score(60));
    assertEquals(
        List.of(
            "RP-RDG-002 position 2 area with clear ridges: 100 mm2"
                + " | area with clear ridges at least 110 mm2"),
        lines(poor));
    assertEquals(
        List.of(
            Measure.against("area with clear ridges", 100, "mm2", 110),
            Measure.against("overall score", 60, "points", 69.5)),
        poor.get(0).evidence());
    assertEquals(
        List.of("RP-RDG-008 position 2 cores: 0 | cores at least 1"),
        rolled(SpecimenPrints.sound().coreless()));
  }

  @Test
  void aTiltToEitherSideIsTold() {
    for (double degrees : List.of(40.0, -40.0)) {
      assertEquals(
          List.of("RP-RDG-009 position 2 tilt: 40 degrees | tilt at most 35 degrees"),
          rolled(SpecimenPrints.sound().tilted(degrees)));
    }
  }

  @Test
  void aPoorScoreIsToldOnlyWhereNothingElseIs() {
    assertEquals(
        List.of(
            "RP-RDG-017 position 2 overall score: 30 points | overall score at least 40 points"),
        rolled(SpecimenPrints.sound().score(30)));
    assertEquals(
        List.of("RP-RDG-003"),
        findings(Impression.ROLLED, SpecimenPrints.sound().width(17).score(30)).stream()
            .map(Finding::ruleId)
            .toList());
  }

  @Test
  void aRollIsWiderThanThePlainPrintOfItsFinger() {
    FingerAnalysis plain = SpecimenPrints.sound().width(18).analysis();
    SequenceComparison sequence =
        new SequenceComparison(
            new SequenceResult(List.of(), List.of(), 40),
            Map.of(),
            Map.of(INDEX, new SeenFinger(CARD.images().get(SLAP_IMAGE), plain)));
    RidgeAnalysis roll = one(Impression.ROLLED, SpecimenPrints.sound());
    assertEquals(
        List.of(
            "RP-RDG-003 position 2 width of the rolled print divided by that of the plain print:"
                + " 1.06; width of the print: 19 mm"
                + " | width of the rolled print divided by that of the plain print at least 1.10;"
                + " width of the print at least 20 mm"),
        lines(findings(INDEX_IMAGE, roll, Optional.of(sequence), log())));
    RidgeAnalysis flat = one(Impression.PLAIN, SpecimenPrints.sound());
    assertEquals(List.of(), findings(INDEX_IMAGE, flat, Optional.of(sequence), log()));
    SequenceComparison ofOthers =
        new SequenceComparison(
            sequence.answers(),
            Map.of(),
            Map.of(FingerPosition.LEFT_INDEX, sequence.plains().get(INDEX)));
    assertEquals(List.of(), findings(INDEX_IMAGE, roll, Optional.of(ofOthers), log()));
  }

  @Test
  void theRidgeDistanceIsToldOnceOfAnImage() {
    RidgeAnalysis coarse = one(Impression.ROLLED, SpecimenPrints.sound().period(0.7));
    String told = "RP-RDG-013 position 2 ridge distance: 0.70 mm | ridge distance at most 0.66 mm";
    assertEquals(List.of(told), lines(findings(INDEX_IMAGE, coarse, Optional.empty(), log())));
    assertEquals(List.of(), after("RP-IMG-039", CARD.images().get(INDEX_IMAGE).location(), coarse));
    assertEquals(List.of(), after("RP-IMG-040", Location.file(), coarse));
    assertEquals(
        List.of(told), after("RP-IMG-039", CARD.images().get(SLAP_IMAGE).location(), coarse));
    assertEquals(
        List.of(told), after("RP-IMG-008", CARD.images().get(INDEX_IMAGE).location(), coarse));
  }

  private static List<String> after(String rule, Location place, RidgeAnalysis facts) {
    FindingLog log = log();
    log.add(rule, place, Observed.of("ridges too far apart"), "ridges");
    return lines(findings(INDEX_IMAGE, facts, Optional.empty(), log));
  }

  /** A right slap of upright boxes whose fingers are all the same. */
  private static RidgeAnalysis slap(SpecimenPrints print) {
    List<Segment> segments =
        FingerPosition.shownBy(13).stream()
            .map(
                finger ->
                    new Segment(
                        finger,
                        Optional.of(new RotatedBox(5, 10, 8, 16, 0)),
                        1,
                        100,
                        List.<Segment.Doubt>of()))
            .toList();
    Map<FingerPosition, FingerAnalysis> fingers = new HashMap<>();
    FingerPosition.shownBy(13).forEach(finger -> fingers.put(finger, print.analysis()));
    return new RidgeAnalysis(
        Impression.PLAIN, fingers, Optional.of(new Slap(segments, 0, Optional.empty())));
  }

  private static Set<String> ofSlap(SpecimenPrints print) {
    return new TreeSet<>(lines(findings(SLAP_IMAGE, slap(print), Optional.empty(), log())));
  }

  @Test
  void aFingerOfASlapIsNamedByItself() {
    assertEquals(Set.of(), ofSlap(SpecimenPrints.sound()));
    String poor = " overall score: 30 points | overall score at least 40 points";
    assertEquals(
        Set.of(
            "RP-RDG-017 position 2" + poor,
            "RP-RDG-017 position 3" + poor,
            "RP-RDG-017 position 4" + poor,
            "RP-RDG-017 position 5" + poor),
        ofSlap(SpecimenPrints.sound().score(30)));
  }

  @Test
  void whatAllFingersOfASlapShareIsNotToldOfEach() {
    assertEquals(Set.of(), ofSlap(SpecimenPrints.sound().tilted(40)));
    SpecimenPrints coreless = SpecimenPrints.sound().coreless().score(70);
    assertEquals(
        List.of("RP-RDG-008 position 2 cores: 0 | cores at least 1"),
        found(Impression.PLAIN, coreless));
    assertEquals(Set.of(), ofSlap(coreless), "the hand lies at the border");
  }

  @Test
  void theRulesOfRidgesAreTheRowsOfTheCatalogueThatTheyReport() {
    Set<String> named = new TreeSet<>();
    for (Rule rule : RidgeRules.all()) {
      named.addAll(rule.ids());
    }
    Set<String> expected = new TreeSet<>(List.of("RP-RDG-017", "RP-RDG-020", "RP-RDG-021"));
    for (int i = 1; i <= 15; i++) {
      expected.add("RP-RDG-%03d".formatted(i));
    }
    for (int i = 1; i <= 12; i++) {
      expected.add("RP-SEQ-%03d".formatted(i));
    }
    assertEquals(expected, named);
  }
}
