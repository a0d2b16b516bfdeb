package ridgeproof.examination.cause.card;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.examination.cause.card.CardPrints.PlainImage;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.Turn;

/**
 * Which side of a slap is up where no roll tells: an image that looks little like a hand is looked
 * at again in all four directions.
 */
final class UprightSlaps {

  /**
   * As a hand of the first images of a card looks at least; better ones are not looked at again.
   */
  private static final double LIKE_A_HAND = 1.45;

  /** How much better a turned image has to look. */
  private static final double CLEARLY = 0.45;

  /** The same for each of several images that are all turned alike, on average. */
  private static final double CLEARLY_TOGETHER = 0.25;

  private final ExaminationInput examinee;

  UprightSlaps(ExaminationInput examinee) {
    this.examinee = examinee;
  }

  /** By how much each image has to be turned back; none where all may be as they should. */
  Map<PlainImage, Turn> turned(List<PlainImage> images) {
    Map<PlainImage, Map<Turn, Double>> looks = new LinkedHashMap<>();
    for (PlainImage image : images) {
      if (image.places().size() > 1 && image.image().ridges().isPresent()) {
        looks.put(image, looks(image));
      }
    }
    Map<PlainImage, Turn> turned = new LinkedHashMap<>();
    Optional<Turn> common =
        Stream.of(Turn.HALF, Turn.QUARTER_RIGHT, Turn.QUARTER_LEFT)
            .filter(turn -> looks.size() > 1 && averageGain(looks, turn) >= CLEARLY_TOGETHER)
            .max(Comparator.comparingDouble(turn -> averageGain(looks, turn)));
    if (common.isPresent()) {
      looks.keySet().forEach(image -> turned.put(image, common.get()));
      return turned;
    }
    looks.forEach((image, look) -> single(look).ifPresent(turn -> turned.put(image, turn)));
    return turned;
  }

  private static Optional<Turn> single(Map<Turn, Double> look) {
    return look.keySet().stream()
        .filter(turn -> gain(look, turn) >= CLEARLY)
        .max((one, other) -> Double.compare(look.get(one), look.get(other)));
  }

  private static double averageGain(Map<PlainImage, Map<Turn, Double>> looks, Turn turn) {
    return looks.values().stream().mapToDouble(look -> gain(look, turn)).average().orElse(0);
  }

  /** An image that was not looked at again speaks for itself as it is. */
  private static double gain(Map<Turn, Double> look, Turn turn) {
    return look.size() == 1 ? -1 : look.get(turn) - look.get(Turn.NONE);
  }

  private Map<Turn, Double> looks(PlainImage image) {
    Map<Turn, Double> looks = new EnumMap<>(Turn.class);
    double asIs = TurnedPrints.likeHand(image.image().ridges().orElseThrow());
    looks.put(Turn.NONE, asIs);
    if (asIs < LIKE_A_HAND) {
      Optional<GrayImage> pixels = TurnedPrints.pixels(image, examinee);
      for (Turn turn : List.of(Turn.HALF, Turn.QUARTER_RIGHT, Turn.QUARTER_LEFT)) {
        pixels.ifPresent(gray -> looks.put(turn, TurnedPrints.of(image, gray, turn).likeHand()));
      }
    }
    return looks;
  }
}
