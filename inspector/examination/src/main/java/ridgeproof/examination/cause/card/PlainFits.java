package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ridgeproof.examination.cause.card.CardPrints.PlainImage;
import ridgeproof.examination.cause.card.PlainReading.Fit;
import ridgeproof.examination.facts.Examinee;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.Turn;

/**
 * Finds out how the prints of a plain image match the rolls. Where they do not as they are, the
 * image is tried in the eight poses of a square before anything is said of its fingers.
 */
final class PlainFits {

  private static final FingerOrder[] ORDERS = FingerOrder.values();

  /** Prints of a slap that have to match in an order that is not their own. */
  private static final int LEAST_OF_SLAP = 3;

  private static final int LEAST_OF_OTHERS = 2;

  /**
   * How an image matches.
   *
   * @param looked by how much it was turned before its prints were looked for
   * @param inMirror the prints that match their own roll only in a mirror, where others match as
   *     they are
   */
  record Seen(PlainImage plain, Fit fit, Turn looked, Optional<Fit> inMirror) {}

  private final Examinee examinee;
  private final CardPrints card;
  private final double threshold;

  PlainFits(Examinee examinee, CardPrints card, double threshold) {
    this.examinee = examinee;
    this.card = card;
    this.threshold = threshold;
  }

  /** Every image of which this can be said. */
  List<Seen> all() {
    List<Seen> all = new ArrayList<>();
    card.plains().forEach(plain -> of(plain).ifPresent(all::add));
    return all;
  }

  private Optional<Seen> of(PlainImage plain) {
    PlainReading asIs =
        new PlainReading(Turn.NONE, plain.places(), plain.prints(), card.rolls(), threshold);
    Fit own = asIs.fit(FingerOrder.OWN, false);
    int places = plain.places().size();
    if (own.count() > 0 && 2 * own.count() >= Math.min(places, plain.prints().size())) {
      boolean complete = own.count() == Math.min(places, plain.prints().size());
      return Optional.of(
          new Seen(
              plain,
              own,
              Turn.NONE,
              complete
                  ? Optional.empty()
                  : Optional.of(asIs.fit(FingerOrder.OWN, true).without(own))));
    }
    if (!plain.isSlap()) {
      // Of one or two prints no order can be told: another finger is the business of other rules.
      return Optional.of(asIs.fit(FingerOrder.OWN, true))
          .filter(fit -> fit.count() == places)
          .map(fit -> new Seen(plain, fit, Turn.NONE, Optional.empty()));
    }
    Fit best = asIs.best(ORDERS);
    if (best.count() >= LEAST_OF_SLAP) {
      return Optional.of(new Seen(plain, best, Turn.NONE, Optional.empty()));
    }
    Optional<Seen> turned = turned(plain).filter(seen -> seen.fit().count() > best.count());
    return turned.isPresent()
        ? turned
        : Optional.of(best)
            .filter(fit -> fit.count() >= Math.min(LEAST_OF_OTHERS, places) && own.count() == 0)
            .map(fit -> new Seen(plain, fit, Turn.NONE, Optional.empty()));
  }

  private Optional<Seen> turned(PlainImage plain) {
    Optional<GrayImage> pixels = TurnedPrints.pixels(plain, examinee);
    List<Seen> seen = new ArrayList<>();
    for (Turn turn : List.of(Turn.HALF, Turn.QUARTER_RIGHT, Turn.QUARTER_LEFT)) {
      pixels.ifPresent(
          gray -> {
            PlainReading reading =
                new PlainReading(
                    turn,
                    plain.places(),
                    TurnedPrints.of(plain, gray, turn).prints(),
                    card.rolls(),
                    threshold);
            seen.add(
                new Seen(
                    plain,
                    reading.best(FingerOrder.OWN, FingerOrder.OTHER_HAND),
                    turn,
                    Optional.empty()));
          });
    }
    return seen.stream()
        .filter(one -> one.fit().count() >= LEAST_OF_OTHERS)
        .max(
            Comparator.comparingInt((Seen one) -> one.fit().count())
                .thenComparingDouble(one -> one.fit().similarity()));
  }
}
