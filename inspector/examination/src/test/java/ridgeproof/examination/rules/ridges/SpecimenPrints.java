package ridgeproof.examination.rules.ridges;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import ridgeproof.ridges.map.EdgeContact;
import ridgeproof.ridges.matching.Minutiae;
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
import ridgeproof.ridges.quality.RotationMeasure;
import ridgeproof.ridges.quality.SmearMeasure;
import ridgeproof.ridges.quality.ToneMeasure;

/** What would be measured of a print within every limit, with a few measures as a test wants. */
final class SpecimenPrints {

  private static final int CELL = 4;
  private static final Minutiae MANY = minutiae(480, true);
  private static final SingularPoint CORE =
      new SingularPoint(SingularPoint.Kind.CORE, 100, 100, 90);

  private final int score;
  private final FingerMeasures measures;

  private SpecimenPrints(int score, FingerMeasures measures) {
    this.score = score;
    this.measures = measures;
  }

  static SpecimenPrints sound() {
    return new SpecimenPrints(
        90,
        new FingerMeasures(
            extent(19, 24, new EdgeContact(0, 0, 0, 0)),
            new FlowMeasure(0.9, 5, 9, 0.46, 0.1),
            tone(90, 220),
            new ClarityMeasure(0.8, 0.8, 0.3, 2, 0.1, 0.3),
            new SmearMeasure(0, 0, 0, 0),
            new GapMeasure(0, 0),
            new PatternMeasure(PatternClass.LEFT_LOOP, 0.9, List.of(CORE), Optional.of(CORE), 8),
            new RotationMeasure(0, 0.9),
            MANY,
            null));
  }

  private static ExtentMeasure extent(double width, double length, EdgeContact edges) {
    return new ExtentMeasure(400, 380, width, length, null, edges);
  }

  private static ToneMeasure tone(double ridges, double valleys) {
    return new ToneMeasure(
        200, 100, ridges, valleys, 250, 0.5, 0, 0, 0.05, 0, 0.8, ToneMeasure.Polarity.DARK_RIDGES);
  }

  SpecimenPrints score(int points) {
    return new SpecimenPrints(points, measures);
  }

  SpecimenPrints width(double mm) {
    return with(extent(mm, 24, measures.extent().edges()));
  }

  SpecimenPrints ridgeArea(double mm2) {
    return with(new ExtentMeasure(400, mm2, 19, 24, null, measures.extent().edges()));
  }

  private SpecimenPrints with(ExtentMeasure extent) {
    return of(extent, measures.flow(), measures.tone(), measures.gap(), measures.pattern(), 0);
  }

  SpecimenPrints period(double mm) {
    FlowMeasure flow = new FlowMeasure(0.9, 5, mm * 500 / 25.4, mm, 0.1);
    return of(measures.extent(), flow, measures.tone(), measures.gap(), measures.pattern(), 0);
  }

  SpecimenPrints grays(double ridges, double valleys) {
    return of(
        measures.extent(),
        measures.flow(),
        tone(ridges, valleys),
        measures.gap(),
        measures.pattern(),
        0);
  }

  SpecimenPrints gap(double mm, double share) {
    GapMeasure gap = new GapMeasure(mm, share);
    return of(measures.extent(), measures.flow(), measures.tone(), gap, measures.pattern(), 0);
  }

  /** A print without its core, so that its pattern cannot be told. */
  SpecimenPrints coreless() {
    PatternMeasure pattern =
        new PatternMeasure(PatternClass.UNKNOWN, 0.9, List.of(), Optional.empty(), 0);
    return of(measures.extent(), measures.flow(), measures.tone(), measures.gap(), pattern, 0);
  }

  SpecimenPrints tilted(double degrees) {
    return of(
        measures.extent(),
        measures.flow(),
        measures.tone(),
        measures.gap(),
        measures.pattern(),
        degrees);
  }

  private SpecimenPrints of(
      ExtentMeasure extent,
      FlowMeasure flow,
      ToneMeasure tone,
      GapMeasure gap,
      PatternMeasure pattern,
      double degrees) {
    return new SpecimenPrints(
        score,
        new FingerMeasures(
            extent,
            flow,
            tone,
            measures.clarity(),
            measures.smear(),
            gap,
            pattern,
            new RotationMeasure(degrees, 0.9),
            measures.minutiae(),
            null));
  }

  FingerAnalysis analysis() {
    return new FingerAnalysis(List.of(), Optional.of(measures), new QualityScore(score, List.of()));
  }

  /** Of paper, or of ink without order, in which an extractor finds a minutia at every step. */
  static Minutiae minutiae(int size, boolean inked) {
    byte[] pixels = new byte[size * size];
    Random random = new Random(5);
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        boolean blot = x % CELL == 0 && y % CELL == 0 ? random.nextBoolean() : false;
        for (int i = 0; blot && i < CELL * CELL; i++) {
          int at = Math.min(size - 1, y + i / CELL) * size + Math.min(size - 1, x + i % CELL);
          pixels[at] = 1;
        }
      }
    }
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) (inked && pixels[i] == 1 ? 20 : 240);
    }
    return Minutiae.of(pixels, size, size, 500);
  }
}
