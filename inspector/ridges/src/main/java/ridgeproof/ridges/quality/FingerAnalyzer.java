package ridgeproof.ridges.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.EdgeContact;
import ridgeproof.ridges.map.FlexionCrease;
import ridgeproof.ridges.map.PrintSegmentation;
import ridgeproof.ridges.map.PrintShape;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.map.WorkingResolution;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.pattern.PatternClassifier;
import ridgeproof.ridges.quality.FingerAnalysis.Doubt;

/** Measures the print in an image of one finger, rolled or plain. */
public final class FingerAnalyzer {

  /** Square millimetres. */
  private static final double LITTLE = 60;

  /**
   * Least and greatest usual ridge period, mm; the mean of adults is about 0.46 (common practice).
   */
  private static final double MIN_PERIOD_MM = 0.3;

  private static final double MAX_PERIOD_MM = 0.75;
  private static final double SURE = 0.35;

  private FingerAnalyzer() {}

  /**
   * Measures the largest print of an image.
   *
   * @param ppi pixels per inch, 240 to 4800
   */
  public static FingerAnalysis analyse(GrayImage image, double ppi) {
    if (!RidgeMaps.canBeMade(image, ppi)) {
      return FingerAnalysis.without(Doubt.UNUSABLE_RESOLUTION);
    }
    RidgeMaps maps = RidgeMaps.of(image, ppi);
    List<RidgeRegion> parts = PrintSegmentation.of(maps);
    Optional<RidgeRegion> main = PrintSegmentation.main(parts);
    if (main.isEmpty()) {
      return FingerAnalysis.without(Doubt.NO_RIDGES);
    }
    boolean others =
        parts.stream().anyMatch(part -> part.areaMm2() >= LITTLE && isOutside(part, main.get()));
    RidgeRegion distal = FlexionCrease.distal(maps, main.get());
    return analyse(maps, distal, parts, new GrayLevels(maps), others);
  }

  private static boolean isOutside(RidgeRegion part, RidgeRegion main) {
    boolean[] mask = main.mask();
    return !mask[part.blocks()[0]];
  }

  /**
   * Measures one print of an image whose maps are there already.
   *
   * @param parts all prints of the image when they are of one finger, else none
   */
  public static FingerAnalysis analyse(
      RidgeMaps maps,
      RidgeRegion region,
      List<RidgeRegion> parts,
      GrayLevels levels,
      boolean others) {
    BlockMeasures blocks = new BlockMeasures(maps, region);
    EdgeContact edges = EdgeContact.of(maps, region);
    RotationMeasure rotation = FingerRotation.of(maps, region, edges);
    RotatedBox box = PrintShape.of(region).box(rotation.degrees(), maps.scale());
    double mm = WorkingResolution.MM_PER_PIXEL * maps.scale();
    FingerMeasures measures =
        new FingerMeasures(
            new ExtentMeasure(
                region.areaMm2(),
                blocks.ridgeAreaMm2(),
                box.width() * mm,
                box.height() * mm,
                box,
                edges),
            blocks.flow(region),
            levels.tone(region, blocks),
            blocks.clarity(),
            SmearFinder.find(maps, region, levels, blocks.level()),
            GapFinder.find(maps, region, parts),
            PatternClassifier.classify(maps, region, rotation.degrees()),
            rotation,
            Minutiae.of(maps, region),
            new BlockMap(maps, region));
    return new FingerAnalysis(
        doubts(measures, others), Optional.of(measures), QualityScorer.of(measures));
  }

  private static List<Doubt> doubts(FingerMeasures m, boolean others) {
    List<Doubt> doubts = new ArrayList<>();
    addIf(m.extent().ridgeAreaMm2() < LITTLE, Doubt.LITTLE_RIDGE_AREA, doubts);
    addIf(m.tone().polarity() == ToneMeasure.Polarity.LIGHT_RIDGES, Doubt.INVERTED_TONES, doubts);
    EdgeContact edges = m.extent().edges();
    addIf(
        edges.isCutAtTop() || edges.isCutAtSide() || edges.isCutAtBottom(),
        Doubt.CUT_BY_EDGE,
        doubts);
    addIf(m.pattern().core().isEmpty(), Doubt.NO_CORE, doubts);
    double period = m.flow().periodMm();
    addIf(period < MIN_PERIOD_MM || period > MAX_PERIOD_MM, Doubt.UNUSUAL_PERIOD, doubts);
    addIf(m.rotation().confidence() < SURE, Doubt.ROTATION_UNCERTAIN, doubts);
    addIf(others, Doubt.OTHER_PRINTS, doubts);
    return doubts;
  }

  private static void addIf(boolean holds, Doubt doubt, List<Doubt> doubts) {
    if (holds) {
      doubts.add(doubt);
    }
  }
}
