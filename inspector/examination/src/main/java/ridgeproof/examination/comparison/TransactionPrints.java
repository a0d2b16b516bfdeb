package ridgeproof.examination.comparison;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.ridges.PrintAnalyzer;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.spec.layout.FingerPosition;

/** The prints that a transaction has of the ten fingers, each image measured once and on demand. */
final class TransactionPrints {

  /** Pixels must be square within this share for ridges to be measured. */
  private static final double SQUARE = 0.01;

  private final FindingsReport report;
  private final ImageExtraction extraction;
  private final Set<Integer> missing;
  private final ConcurrentMap<Integer, Map<FingerPosition, Minutiae>> measured =
      new ConcurrentHashMap<>();

  TransactionPrints(FindingsReport report, ImageExtraction extraction) {
    this.report = report;
    this.extraction = extraction;
    this.missing = report.missingFingers();
  }

  /** The fingers that an image shows by its one position, from left to right. */
  static List<FingerPosition> named(ExaminedImage image) {
    return image.layout().frictionRidge() && image.positions().size() == 1
        ? FingerPosition.shownBy(image.positions().get(0))
        : List.of();
  }

  boolean isMissing(FingerPosition finger) {
    return missing.contains(finger.code());
  }

  /** Whether ridges can be measured at the resolution that is stated. */
  static Optional<Double> ppi(ExaminedImage image) {
    return image
        .density()
        .filter(d -> Math.abs(d.horizontalPpi() / d.verticalPpi() - 1) <= SQUARE)
        .map(PixelDensity::horizontalPpi);
  }

  /** Measures several images beside each other, to be asked for later. */
  void measure(List<ExaminedImage> images) {
    images.parallelStream().forEach(this::of);
  }

  /** The prints found in an image, by the fingers whose names they bear. */
  Map<FingerPosition, Minutiae> of(ExaminedImage image) {
    Map<FingerPosition, Minutiae> known = measured.get(image.record().ordinal());
    if (known != null) {
      return known;
    }
    Map<FingerPosition, Minutiae> found = measure(image);
    measured.put(image.record().ordinal(), found);
    return found;
  }

  /**
   * All prints of the transaction, one of each finger.
   *
   * @param like whose own prints come first, then those taken as it was, then the others
   */
  Map<FingerPosition, Minutiae> all(ExaminedImage like) {
    List<ExaminedImage> images =
        report.images().stream().filter(image -> !named(image).isEmpty()).toList();
    measure(images);
    Map<FingerPosition, Minutiae> all = new EnumMap<>(of(like));
    images.stream()
        .filter(image -> isRolled(image) == isRolled(like))
        .forEach(image -> of(image).forEach(all::putIfAbsent));
    images.forEach(image -> of(image).forEach(all::putIfAbsent));
    return all;
  }

  private static boolean isRolled(ExaminedImage image) {
    return FingerPosition.isRolledBox(image.positions().get(0));
  }

  private Map<FingerPosition, Minutiae> measure(ExaminedImage image) {
    Map<FingerPosition, Minutiae> prints = new EnumMap<>(FingerPosition.class);
    image
        .ridges()
        .map(RidgeAnalysis::fingers)
        .orElseGet(() -> analysed(image))
        .forEach(
            (finger, analysis) ->
                analysis
                    .measures()
                    .map(FingerMeasures::minutiae)
                    .ifPresent(minutiae -> prints.put(finger, minutiae)));
    return prints;
  }

  /** Of a trace, or what else an examination does not look at. */
  private Map<FingerPosition, FingerAnalysis> analysed(ExaminedImage image) {
    Optional<GrayImage> pixels =
        ppi(image).isEmpty() ? Optional.empty() : extraction.decode(image).pixels();
    return pixels
        .map(
            gray ->
                PrintAnalyzer.analyse(gray, ppi(image).orElseThrow(), named(image), this::isMissing)
                    .fingers())
        .orElse(Map.of());
  }
}
