package ridgeproof.examination.rules.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Measure;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

class DeclaredMissingRuleTest {

  private static final String IMAGED = "RP-TXN-005";
  private static final String MISSING = "RP-TXN-006";
  private static final String IN_SLAP = "RP-TXN-054";
  private static final String BOTH = "either the annotation or the image";

  private static SampleCard declaring(SampleCard card, String... fingers) {
    List<List<String>> declared = new ArrayList<>();
    for (String finger : fingers) {
      declared.add(List.of(finger, "XX"));
    }
    return card.with(2, draft -> draft.with(84, declared));
  }

  private static List<String> told(SampleCard card) {
    return found(card, IMAGED, MISSING);
  }

  @Test
  void eachFingerIsToldForItself() {
    SampleCard card = declaring(SampleCard.rolledTagged().without(4), "02", "07");
    assertEquals(
        List.of(
            "RP-TXN-005 record 2 field 2.084 subfield 2 position 7:"
                + " annotated as missing, but imaged; "
                + BOTH,
            "RP-TXN-006 record 2 field 2.084 subfield 1 position 2: finger 2, XX; no image"),
        told(card));
  }

  @Test
  void aSlapOrALatentIsNoImageOfTheFingerAlone() {
    SampleCard card = declaring(SampleCard.rolledTagged().without(4), "02");
    String missing =
        "RP-TXN-006 record 2 field 2.084 subfield 1 position 2: finger 2, XX; no image";
    assertEquals(List.of(missing), told(card));
    assertEquals(List.of(missing), told(card.plus(SampleCard.taggedPrint(15, 2, 4))));
    assertEquals(List.of(missing), told(card.plus(SampleCard.taggedPrint(15, 0, 1))));
  }

  @Test
  void aRecordWithoutImageOrWithAnEmptyOneShowsNothing() {
    String missing =
        "RP-TXN-006 record 2 field 2.084 subfield 1 position 2: finger 2, XX; no image";
    SampleCard card = declaring(SampleCard.rolledTagged(), "02");
    assertEquals(List.of(missing), told(card.with(4, draft -> draft.without(999))));
    assertEquals(
        List.of(missing),
        told(card.with(4, draft -> RidgeImage.record(2, RidgeImage.constant(255)))));
    assertEquals(
        List.of(
            "RP-TXN-005 record 2 field 2.084 subfield 1 position 2:"
                + " annotated as missing, but imaged; "
                + BOTH),
        told(card.with(4, draft -> RidgeImage.record(2, RidgeImage.usual()))));
  }

  @Test
  void aPlainThumbShowsTheThumbToo() {
    SampleCard card = declaring(SampleCard.rolledTagged().without(3), "01");
    assertEquals(
        List.of(
            "RP-TXN-005 record 2 field 2.084 subfield 1 position 1:"
                + " annotated as missing, but imaged; "
                + BOTH),
        told(card));
    assertEquals(
        List.of("RP-TXN-006 record 2 field 2.084 subfield 1 position 1: finger 1, XX; no image"),
        told(card.without(12)));
  }

  @Test
  void anImageThatCannotBeDecodedMayShowTheFinger() {
    SampleCard card = declaring(SampleCard.rolledTagged(), "02");
    assertEquals(
        List.of(
            "RP-TXN-005 record 2 field 2.084 subfield 1 position 2:"
                + " annotated as missing, but imaged; "
                + BOTH),
        told(card.with(4, draft -> draft.with(11, "WSQ20"))));
  }

  @Test
  void printsInASlapBeyondThoseOfItsFingersAreCounted() {
    SampleCard card = declaring(SampleCard.rolledTagged().without(4), "02");
    List<Finding> findings = inSlap(card, 3, 1);
    assertEquals(
        List.of("4 prints; 3, one for each finger that is not annotated as missing"),
        findings.stream().map(f -> f.observed().text() + "; " + f.required()).toList());
    assertEquals(
        List.of(Measure.against("prints found", 4, "prints", 3)), findings.get(0).evidence());
    assertEquals(List.of(), inSlap(card, 3, 0));
  }

  @Test
  void theOnlyPrintOfAHandWithoutFingersIsOne() {
    SampleCard card = declaring(SampleCard.rolledTagged().without(4), "02");
    assertEquals(
        List.of("1 print; 0, one for each finger that is not annotated as missing"),
        inSlap(card, 0, 1).stream().map(f -> f.observed().text() + "; " + f.required()).toList());
  }

  @Test
  void aFingerThatAnImageOfItsOwnShowsIsNoNewsInTheSlap() {
    assertEquals(List.of(), inSlap(declaring(SampleCard.rolledTagged(), "02"), 3, 1));
    // A missing finger of the other hand does not excuse this slap.
    assertEquals(1, inSlap(declaring(SampleCard.rolledTagged(), "07"), 3, 1).size());
  }

  /** What is found in a right slap of which so many fingers are due, and so many more are there. */
  private static List<Finding> inSlap(SampleCard card, int due, int surplus) {
    List<Segment> segments =
        IntStream.range(0, due)
            .mapToObj(
                i ->
                    new Segment(
                        FingerPosition.shownBy(13).get(i), Optional.empty(), 1, 100, List.of()))
            .toList();
    RidgeAnalysis ridges =
        new RidgeAnalysis(
            RidgeAnalysis.Impression.PLAIN,
            Map.of(),
            Optional.of(new Slap(segments, 0, Optional.empty())),
            surplus);
    FindingsReport report = card.examine();
    FindingLog log = new FindingLog(SampleCard.TABLES, 10);
    new DeclaredMissingRule()
        .check(
            new ExaminationInput(
                report.transaction(),
                SampleCard.TABLES,
                Depth.RIDGES,
                report.images().stream().map(image -> seen(image, ridges)).toList(),
                Optional.empty(),
                false,
                ExaminationOptions.standard(),
                Optional.empty()),
            log);
    return log.findings().stream().filter(f -> f.ruleId().equals(IN_SLAP)).toList();
  }

  private static ExaminedImage seen(ExaminedImage image, RidgeAnalysis ridges) {
    return image.position().equals(OptionalInt.of(13))
        ? image.opened(
            ImageHeaders.read(image.data().orElseThrow()),
            image.pixels(),
            List.of(),
            Optional.of(ridges))
        : image;
  }
}
