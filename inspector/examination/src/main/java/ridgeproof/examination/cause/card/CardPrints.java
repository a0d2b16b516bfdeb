package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.ridges.segmentation.TipSide;
import ridgeproof.spec.layout.FingerPosition;

/**
 * The prints of a card as its images show them.
 *
 * @param rolls by the names that their boxes give them
 * @param plains every image of plain prints, in the order of the file
 */
record CardPrints(Map<FingerPosition, Print> rolls, List<PlainImage> plains) {

  /** One print with all that was measured of it, and the image it is in. */
  record Print(ExaminedImage image, FingerMeasures measures) {

    Minutiae minutiae() {
      return measures.minutiae();
    }

    double ppi() {
      return image.density().orElseThrow().meanPpi();
    }
  }

  /**
   * The prints of one image.
   *
   * @param places the fingers that it should show, from left to right
   * @param prints those that were found, by the name of their place
   */
  record PlainImage(
      ExaminedImage image, List<FingerPosition> places, Map<FingerPosition, Print> prints) {

    boolean isSlap() {
      return places.size() > 2;
    }
  }

  static CardPrints of(List<ExaminedImage> images) {
    Map<FingerPosition, Print> rolls = new EnumMap<>(FingerPosition.class);
    List<PlainImage> plains = new ArrayList<>();
    for (ExaminedImage image : images) {
      if (image.ridges().isPresent()) {
        RidgeAnalysis facts = image.ridges().get();
        Map<FingerPosition, Print> prints = prints(image, facts.fingers());
        if (facts.impression() == Impression.ROLLED) {
          prints.forEach(rolls::putIfAbsent);
        } else if (!prints.isEmpty()) {
          plains.add(new PlainImage(image, places(facts), prints));
        }
      }
    }
    return new CardPrints(rolls, plains);
  }

  static Map<FingerPosition, Print> prints(
      ExaminedImage image, Map<FingerPosition, FingerAnalysis> fingers) {
    Map<FingerPosition, Print> prints = new EnumMap<>(FingerPosition.class);
    fingers.forEach(
        (finger, analysis) ->
            analysis.measures().ifPresent(found -> prints.put(finger, new Print(image, found))));
    return prints;
  }

  private static List<FingerPosition> places(RidgeAnalysis facts) {
    return facts
        .slap()
        .map(Slap::segments)
        .map(segments -> segments.stream().map(Segment::position).toList())
        .orElseGet(() -> List.copyOf(facts.fingers().keySet()));
  }

  List<Print> all() {
    List<Print> all = new ArrayList<>(rolls.values());
    plains.forEach(plain -> all.addAll(plain.prints().values()));
    return all;
  }

  /** How clearly the tips of these prints are at the top, on average; 0 without a print. */
  static double tipsUp(Collection<FingerMeasures> prints) {
    return prints.stream().mapToDouble(print -> TipSide.of(print).up()).average().orElse(0);
  }

  double tipsUp() {
    return tipsUp(all().stream().map(Print::measures).toList());
  }
}
