package ridgeproof.calibration.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.calibration.print.LabelledPrints;
import ridgeproof.corpus.finger.TruePatternClass;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.pattern.PatternMeasure;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.spec.layout.FingerPosition;

/**
 * One finger in one image, for statistics.
 *
 * @param truth what is known because it was drawn; nothing for a real print
 * @param sight what the ridges code sees; nothing where it finds no print
 */
record ObservedPrint(
    FingerPosition finger, Impression kind, Optional<Truth> truth, Optional<Sight> sight) {

  /** The extractor keeps no more. */
  private static final int KEPT = 100;

  /**
   * What a drawn print shows.
   *
   * @param periodMm mean distance from ridge to ridge of the finger
   */
  record Truth(TruePatternClass pattern, double periodMm, MinutiaCount minutiae) {}

  /**
   * What is seen of it.
   *
   * @param periodMm median distance from ridge to ridge in the print
   * @param minutiae before the extractor keeps its hundred, where the image shows one finger
   * @param capped whether {@code minutiae} may have been more
   */
  record Sight(
      PatternMeasure.PatternClass pattern,
      double periodMm,
      MinutiaCount minutiae,
      boolean capped) {}

  /**
   * A print with what comparisons need of it, which is large.
   *
   * @param template nothing where no print was found
   */
  record Comparand(ObservedPrint print, Optional<Minutiae> template) {}

  /**
   * What is seen of each finger that a position code is for.
   *
   * @param truths what is known of them
   */
  static List<Comparand> look(
      GrayImage image, double ppi, int box, Impression kind, Map<FingerPosition, Truth> truths) {
    Map<FingerPosition, FingerAnalysis> analyses;
    List<ExtractorTrace.Seen> traced;
    try (ExtractorTrace trace = new ExtractorTrace()) {
      analyses = LabelledPrints.analyse(image, ppi, box);
      traced = trace.seen();
    }
    Optional<ExtractorTrace.Seen> all =
        analyses.size() == 1 && traced.size() == 1 ? Optional.of(traced.get(0)) : Optional.empty();
    List<Comparand> prints = new ArrayList<>();
    analyses.forEach(
        (finger, analysis) ->
            prints.add(
                new Comparand(
                    new ObservedPrint(
                        finger,
                        kind,
                        Optional.ofNullable(truths.get(finger)),
                        analysis.measures().map(measures -> sight(measures, all))),
                    analysis.measures().map(FingerMeasures::minutiae))));
    return prints;
  }

  private static Sight sight(FingerMeasures measures, Optional<ExtractorTrace.Seen> all) {
    double area = measures.extent().areaMm2();
    MinutiaCount count =
        all.map(seen -> new MinutiaCount(seen.endings(), seen.bifurcations(), area))
            .orElseGet(() -> MinutiaCount.of(measures.minutiae().list(), area));
    return new Sight(
        measures.pattern().pattern(),
        measures.flow().periodMm(),
        count,
        all.isEmpty() && measures.minutiae().count() >= KEPT);
  }
}
