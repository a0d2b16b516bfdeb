package ridgeproof.examination.cause.card;

import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.cause.card.CardPrints.PlainImage;
import ridgeproof.examination.cause.card.CardPrints.Print;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RecordImageDecoder;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.Turn;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.ridges.PrintAnalyzer;
import ridgeproof.ridges.segmentation.Segment;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/**
 * What an image of plain prints shows once it is turned.
 *
 * @param prints by the names that their places give them then
 * @param likeHand how well they lie and look like fingertips of a hand: 2 perfectly
 */
record TurnedPrints(Map<FingerPosition, Print> prints, double likeHand) {

  private static final double FULL_SCORE = 200;

  /** Square millimetres: less is a touch, of which no side can be told. */
  private static final double MIN_AREA = 60;

  /** Decodes again, since no pixels were kept. */
  static Optional<GrayImage> pixels(PlainImage plain, ExaminationInput examinee) {
    ExaminedImage image = plain.image();
    return image
        .data()
        .flatMap(
            data ->
                new RecordImageDecoder()
                    .decode(image, data, ImageHeaders.read(data), examinee.options().imageLimits())
                    .image());
  }

  static TurnedPrints of(PlainImage plain, GrayImage gray, Turn turn) {
    double ppi = plain.image().density().orElseThrow().meanPpi();
    PrintAnalyzer.Seen seen =
        PrintAnalyzer.analyse(turn.of(gray), ppi, plain.places(), finger -> false);
    return new TurnedPrints(
        CardPrints.prints(plain.image(), seen.fingers()),
        likeHand(new RidgeAnalysis(RidgeAnalysis.Impression.PLAIN, seen.fingers(), seen.slap())));
  }

  /**
   * By the places of the prints, what they are worth, and the side that their tips are on; 0 where
   * most of them are too small to tell.
   */
  static double likeHand(RidgeAnalysis facts) {
    long large =
        facts.fingers().values().stream()
            .flatMap(finger -> finger.measures().stream())
            .filter(m -> m.extent().areaMm2() >= MIN_AREA)
            .count();
    if (2 * large < facts.fingers().size()) {
      return 0;
    }
    double places =
        facts.slap().map(Slap::segments).stream()
            .flatMap(segments -> segments.stream())
            .mapToDouble(Segment::confidence)
            .average()
            .orElse(0);
    double worth =
        facts.fingers().values().stream()
            .mapToDouble(finger -> finger.score().value() / FULL_SCORE)
            .average()
            .orElse(0);
    double tips =
        CardPrints.tipsUp(
            facts.fingers().values().stream()
                .flatMap(finger -> finger.measures().stream())
                .toList());
    return places + worth + 2 * tips;
  }
}
