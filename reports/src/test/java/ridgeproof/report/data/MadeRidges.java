package ridgeproof.report.data;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.map.EdgeContact;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Reason;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.pattern.PatternMeasure;
import ridgeproof.ridges.pattern.PatternMeasure.PatternClass;
import ridgeproof.ridges.pattern.SingularPoint;
import ridgeproof.ridges.quality.ClarityMeasure;
import ridgeproof.ridges.quality.ExtentMeasure;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.quality.FlowMeasure;
import ridgeproof.ridges.quality.GapMeasure;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.ridges.quality.QualityScore.Aspect;
import ridgeproof.ridges.quality.QualityScore.Part;
import ridgeproof.ridges.quality.RotationMeasure;
import ridgeproof.ridges.quality.SmearMeasure;
import ridgeproof.ridges.quality.ToneMeasure;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/** What could be seen of ridges, by made-up numbers. */
final class MadeRidges {

  private static final int SIDE = 16;
  private static final SingularPoint CORE =
      new SingularPoint(SingularPoint.Kind.CORE, 100, 100, 90);
  private static final SingularPoint DELTA =
      new SingularPoint(SingularPoint.Kind.DELTA, 50, 150, 0);

  private MadeRidges() {}

  /** Two fingers: of one everything was measured, of the other no print was found. */
  static RidgeAnalysis slap() {
    Segment found =
        new Segment(
            FingerPosition.RIGHT_INDEX,
            Optional.of(new RotatedBox(400.5004, 700.25, 300.1236, 450, -12.3456)),
            0.98765,
            210,
            List.of());
    Segment lost =
        new Segment(
            FingerPosition.RIGHT_MIDDLE,
            Optional.empty(),
            0,
            0,
            List.of(Segment.Doubt.FEWER_PRINTS_THAN_FINGERS, Segment.Doubt.PLACE_AMBIGUOUS));
    return new RidgeAnalysis(
        Impression.PLAIN,
        Map.of(
            FingerPosition.RIGHT_INDEX, finger(),
            FingerPosition.RIGHT_MIDDLE, without()),
        Optional.of(new Slap(List.of(found, lost), 7.65432, Optional.empty())));
  }

  /** A finger of which no print was found. */
  private static FingerAnalysis without() {
    return new FingerAnalysis(
        List.of(FingerAnalysis.Doubt.NO_RIDGES), Optional.empty(), QualityScore.NONE);
  }

  /** A finger of which everything was measured. */
  static FingerAnalysis finger() {
    PatternMeasure pattern =
        new PatternMeasure(
            PatternClass.TENTED_ARCH, 0.6125, List.of(CORE, DELTA), Optional.of(CORE), 8.0625);
    return analysis(pattern, 250.5, 0.8125);
  }

  /** A finger in the middle of its image, with neither paper around it nor a core. */
  static FingerAnalysis corelessWithoutSurround() {
    PatternMeasure pattern =
        new PatternMeasure(PatternClass.UNKNOWN, 0.9, List.of(), Optional.empty(), 0);
    return analysis(pattern, -1, 0);
  }

  private static FingerAnalysis analysis(
      PatternMeasure pattern, double surround, double modulation) {
    FingerMeasures measures =
        new FingerMeasures(
            new ExtentMeasure(400, 380.5, 19.25, 24.5, null, new EdgeContact(1, 2.5, 3, 4.75)),
            new FlowMeasure(0.90625, 5.5, 9, 0.4603, 0.125),
            new ToneMeasure(
                200,
                101,
                90,
                220,
                surround,
                0.5,
                0.03125,
                0.0625,
                0.05,
                0.015625,
                modulation,
                ToneMeasure.Polarity.DARK_RIDGES),
            new ClarityMeasure(0.8, 0.7, 0.3, 2.25, 0.1, 0.2),
            new SmearMeasure(11.5, 0.02, 30, 0.4),
            new GapMeasure(1.5, 0.04),
            pattern,
            new RotationMeasure(-13.5, 0.95),
            Minutiae.of(new byte[SIDE * SIDE], SIDE, SIDE, 500),
            null);
    return new FingerAnalysis(
        List.of(FingerAnalysis.Doubt.CUT_BY_EDGE, FingerAnalysis.Doubt.OTHER_PRINTS),
        Optional.of(measures),
        new QualityScore(
            71,
            List.of(
                new Part(Aspect.RIDGE_DISTANCE, 88, 0.5, 0.46035),
                new Part(Aspect.CORE, 60, 1.25, Double.NaN))));
  }

  static SequenceResult comparison() {
    return new SequenceResult(
        List.of(
            new FingerMatchResult(
                FingerPosition.RIGHT_INDEX,
                Verdict.CONTRADICTED,
                Reason.MATCHES_ANOTHER_ROLL,
                3.14159,
                Optional.of(FingerPosition.LEFT_INDEX),
                77.7777,
                12.3456),
            new FingerMatchResult(
                FingerPosition.RIGHT_MIDDLE,
                Verdict.INCONCLUSIVE,
                Reason.NO_ROLL,
                0,
                Optional.empty(),
                0)),
        List.of(
            new SequenceError(
                SequenceError.Kind.HANDS_EXCHANGED,
                List.of(FingerPosition.RIGHT_INDEX, FingerPosition.LEFT_INDEX),
                true,
                40.1236,
                9.8765),
            new SequenceError(
                SequenceError.Kind.ROLLED_TWICE, List.of(FingerPosition.LEFT_LITTLE), false, 50)),
        36.5004);
  }
}
