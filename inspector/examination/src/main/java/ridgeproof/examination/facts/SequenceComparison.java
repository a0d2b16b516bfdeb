package ridgeproof.examination.facts;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.matching.SequenceCheck;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Whether the prints of a file are of the fingers whose names they bear.
 *
 * @param answers for each finger, and what is out of order
 * @param rolls where the roll of each finger stands
 * @param plains where the plain print of each finger stands
 */
public record SequenceComparison(
    SequenceResult answers,
    Map<FingerPosition, SeenFinger> rolls,
    Map<FingerPosition, SeenFinger> plains) {

  /** A print and the image it is in. */
  public record SeenFinger(ExaminedImage image, FingerAnalysis analysis) {

    private Optional<Minutiae> minutiae() {
      return analysis.measures().map(FingerMeasures::minutiae);
    }
  }

  private static final int MIN_PRINTS = 2;

  public SequenceComparison {
    rolls = copy(rolls);
    plains = copy(plains);
  }

  /**
   * Compares the prints of all images, the better one where a finger is there twice.
   *
   * @param extraction decodes images again of which a second look is taken
   * @param limits what it is decided by
   */
  public static Optional<SequenceComparison> of(
      List<ExaminedImage> images, ImageExtraction extraction, SequenceLimits limits) {
    Map<FingerPosition, SeenFinger> rolls = prints(images, Impression.ROLLED);
    Map<FingerPosition, SeenFinger> plains = prints(images, Impression.PLAIN);
    if (rolls.size() + plains.size() < MIN_PRINTS) {
      return Optional.empty();
    }
    SequenceResult answers =
        SequenceCheck.check(
            minutiae(rolls),
            minutiae(plains),
            uncertain(plains),
            new SecondSight(extraction).of(rolls, plains),
            limits);
    return Optional.of(new SequenceComparison(answers, rolls, plains));
  }

  private static Map<FingerPosition, SeenFinger> prints(
      List<ExaminedImage> images, Impression impression) {
    Map<FingerPosition, SeenFinger> prints = new EnumMap<>(FingerPosition.class);
    for (ExaminedImage image : images) {
      image
          .ridges()
          .filter(facts -> facts.impression() == impression)
          .ifPresent(
              facts ->
                  facts
                      .fingers()
                      .forEach(
                          (finger, analysis) -> {
                            if (analysis.measures().isPresent()) {
                              prints.merge(
                                  finger,
                                  new SeenFinger(image, analysis),
                                  SequenceComparison::better);
                            }
                          }));
    }
    return prints;
  }

  private static Set<FingerPosition> uncertain(Map<FingerPosition, SeenFinger> plains) {
    return plains.entrySet().stream()
        .filter(plain -> lacksPrints(plain.getValue().image()))
        .map(Map.Entry::getKey)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static boolean lacksPrints(ExaminedImage image) {
    return image.ridges().flatMap(RidgeAnalysis::slap).filter(Slap::lacksPrints).isPresent();
  }

  private static SeenFinger better(SeenFinger one, SeenFinger other) {
    return other.analysis().score().value() > one.analysis().score().value() ? other : one;
  }

  /** The minutiae of those of which any were found. */
  public static Map<FingerPosition, Minutiae> minutiae(Map<FingerPosition, SeenFinger> prints) {
    Map<FingerPosition, Minutiae> minutiae = new EnumMap<>(FingerPosition.class);
    prints.forEach(
        (finger, print) -> print.minutiae().ifPresent(found -> minutiae.put(finger, found)));
    return minutiae;
  }

  private static Map<FingerPosition, SeenFinger> copy(Map<FingerPosition, SeenFinger> prints) {
    Map<FingerPosition, SeenFinger> copy = new EnumMap<>(FingerPosition.class);
    copy.putAll(prints);
    return Collections.unmodifiableMap(copy);
  }
}
