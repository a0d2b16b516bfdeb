package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;
import static ridgeproof.examination.cause.MeasuredCard.inRecord;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.Established;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.finding.Finding;
import ridgeproof.ridges.quality.ExtentMeasure;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.spec.layout.FingerPosition;

/** Wrong impression types: which prints they are told of, and what they explain. */
class ImpressionTypesEvidenceTest {

  private static final String ROLL =
      "RP-TXN-081 record 4 14.003 finger 2: impression type 0 (plain);"
          + " the impression type of a rolled print";

  private static SampleCard coded(SampleCard card, int record, int impression) {
    return card.with(record, draft -> draft.with(3, Integer.toString(impression)));
  }

  private static MeasuredCard rollCodedAsPlain() {
    return MeasuredCard.of(coded(SampleCard.rolledTagged(), 4, 0));
  }

  private static RidgeAnalysis width(FingerPosition finger, double mm) {
    FingerMeasures measures =
        new FingerMeasures(
            new ExtentMeasure(300, 300, mm, 20, null, null),
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null);
    return new RidgeAnalysis(
        Impression.PLAIN,
        Map.of(
            finger,
            new FingerAnalysis(List.of(), Optional.of(measures), new QualityScore(60, List.of()))),
        Optional.empty());
  }

  @Test
  void oneRollExplainsWhatFollowsOfItsRecordItsFingerAndTheCard() {
    Finding[] found =
        MeasuredCard.all(
            inRecord(4, 2, "RP-TXN-009", "RP-RDG-002", "RP-RDG-003", "RP-RDG-005", "RP-SEQ-001"),
            inRecord(5, 3, "RP-TXN-009", "RP-RDG-003", "RP-SEQ-001"),
            new Finding[] {
              at("RP-SEQ-001", 15, 2),
              Established.finding("RP-TXN-010"),
              Established.finding("RP-TXN-042"),
              Established.finding("RP-TXN-046"),
              Established.finding("RP-TXN-016")
            });
    assertEquals(
        List.of(
            ROLL
                + " -> RP-TXN-009 record 4 finger 2, RP-RDG-002 record 4 finger 2,"
                + " RP-RDG-003 record 4 finger 2, RP-SEQ-001 record 4 finger 2,"
                + " RP-SEQ-001 record 15 finger 2, RP-TXN-010, RP-TXN-042, RP-TXN-046"),
        rollCodedAsPlain().told(new ImpressionTypesCause(), found));
    assertEquals(Set.of("RP-TXN-081", "RP-TXN-082"), new ImpressionTypesCause().ids());
  }

  @Test
  void aPrintAsWideAsItsPlainOneMayBeASecondPlainPrint() {
    FingerPosition index = FingerPosition.RIGHT_INDEX;
    MeasuredCard card = rollCodedAsPlain().ridges(15, width(index, 10));
    assertEquals(List.of(), card.ridges(4, width(index, 10.9)).told(new ImpressionTypesCause()));
    assertEquals(List.of(ROLL), card.ridges(4, width(index, 11)).told(new ImpressionTypesCause()));
    assertEquals(
        List.of(ROLL),
        card.ridges(4, width(FingerPosition.RIGHT_MIDDLE, 9)).told(new ImpressionTypesCause()));
  }

  @Test
  void aSinglePrintOfWhichNoPlainImageShowsTheFingerIsAPlainPrint() {
    assertEquals(
        List.of(),
        MeasuredCard.of(coded(SampleCard.rolledTagged(), 4, 0).without(15))
            .told(new ImpressionTypesCause()));
    // A slap without an image shows no finger.
    assertEquals(
        List.of(),
        MeasuredCard.of(
                coded(SampleCard.rolledTagged(), 4, 0).with(15, draft -> draft.without(999)))
            .told(new ImpressionTypesCause()));
    // One that is coded as rolled is none of plain prints.
    assertEquals(
        List.of(),
        MeasuredCard.of(coded(coded(SampleCard.rolledTagged(), 4, 0), 15, 1))
            .told(new ImpressionTypesCause()));
  }

  @Test
  void severalPlainImagesCodedAsRolledAreOneFinding() {
    SampleCard card = coded(coded(SampleCard.rolledTagged(), 13, 1), 15, 1);
    Finding[] found =
        MeasuredCard.all(
            inRecord(13, 11, "RP-TXN-009", "RP-SEQ-001"),
            inRecord(15, 13, "RP-TXN-009", "RP-RDG-003"),
            inRecord(14, 12, "RP-TXN-009"),
            inRecord(4, 2, "RP-SEQ-001", "RP-RDG-003"),
            inRecord(10, 8, "RP-SEQ-001"));
    assertEquals(
        List.of(
            "RP-TXN-082: 2 of 4 plain prints coded as rolled;"
                + " the impression type of a plain print"
                + " -> RP-TXN-009 record 13 finger 11, RP-TXN-009 record 15 finger 13,"
                + " RP-RDG-003 record 15 finger 13, RP-SEQ-001 record 4 finger 2"),
        MeasuredCard.of(card).told(new ImpressionTypesCause(), found));
  }

  @Test
  void aPlainImageOfWhichTheRecordDoesNotComplainIsNotCounted() {
    SampleCard card = coded(coded(SampleCard.rolledTagged(), 13, 1), 15, 1);
    assertEquals(
        List.of(),
        MeasuredCard.of(card)
            .told(
                new ImpressionTypesCause(),
                at("RP-TXN-009", 13, 11),
                at("RP-TXN-010", 15, 13),
                Established.finding("RP-TXN-009")));
  }
}
