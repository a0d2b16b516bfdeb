package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.examination.cause.card.CardPrints.PlainImage;
import ridgeproof.examination.cause.card.PlainReading.Fit;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.Turn;

/**
 * Finds out how the prints of a plain image match the rolls. Where they do not as they are, the
 * image is tried in the eight poses of a square before anything is said of its fingers.
 */
final class PlainFits {

  private static final FingerOrder[] ORDERS = FingerOrder.values();

  /** Prints of a slap that have to match in an order that is not their own. */
  private static final int MIN_OF_SLAP = 3;

  private static final int MIN_OF_OTHERS = 2;

  /** Similarity that no two prints of different fingers reach: half as much again as a match. */
  private static final double CERTAIN = 60;

  /**
   * How an image matches.
   *
   * @param looked by how much it was turned before its prints were looked for
   * @param inMirror the prints that match their own roll only in a mirror, where others match as
   *     they are
   */
  record Seen(PlainImage plain, Fit fit, Turn looked, Optional<Fit> inMirror) {}

  private final ExaminationInput examinee;
  private final CardPrints card;
  private final double threshold;

  PlainFits(ExaminationInput examinee, CardPrints card, double threshold) {
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
    if (best.count() >= MIN_OF_SLAP) {
      return Optional.of(new Seen(plain, best, Turn.NONE, Optional.empty()));
    }
    Optional<Seen> turned = turned(plain).filter(seen -> seen.fit().count() > best.count());
    return turned
        .or(() -> posed(plain, asIs, own))
        .or(
            () ->
                Optional.of(best)
                    .filter(
                        fit -> fit.count() >= Math.min(MIN_OF_OTHERS, places) && own.count() == 0)
                    .map(fit -> new Seen(plain, fit, Turn.NONE, Optional.empty())));
  }

  /**
   * Where no print matches in its own place, a single one tells the pose if it matches beyond doubt
   * and lies as the place in which it matches says: mirrored where the order is reversed, or upside
   * down there, or mirrored and upside down in its own place, or on its side.
   */
  private static Optional<Seen> posed(PlainImage plain, PlainReading asIs, Fit own) {
    if (own.count() > 0) {
      return Optional.empty();
    }
    return Stream.of(ORDERS)
        .flatMap(order -> Stream.of(asIs.fit(order, false), asIs.fit(order, true)))
        .filter(fit -> fit.similarity() >= CERTAIN * fit.count() && fit.count() > 0)
        .filter(PlainFits::isPose)
        .max(Comparator.comparingDouble(Fit::similarity))
        .map(fit -> new Seen(plain, fit, Turn.NONE, Optional.empty()));
  }

  private static boolean isPose(Fit fit) {
    Optional<Turn> turn = fit.turn();
    if (turn.isEmpty()) {
      return false;
    }
    return switch (turn.get()) {
      case NONE -> fit.order() == FingerOrder.REVERSED && fit.mirrored();
      case HALF -> fit.order() == (fit.mirrored() ? FingerOrder.OWN : FingerOrder.REVERSED);
      case QUARTER_RIGHT, QUARTER_LEFT -> !fit.mirrored();
    };
  }

  /** Once it is turned upright, only a mirror leaves the order reversed. */
  private static Fit best(PlainReading reading, Turn turn) {
    Fit best = reading.best(FingerOrder.OWN, FingerOrder.OTHER_HAND);
    Fit flipped = reading.fit(FingerOrder.REVERSED, true);
    return turn == Turn.HALF && flipped.count() > best.count() ? flipped : best;
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
            seen.add(new Seen(plain, best(reading, turn), turn, Optional.empty()));
          });
    }
    return seen.stream()
        .filter(one -> one.fit().count() >= MIN_OF_OTHERS)
        .max(
            Comparator.comparingInt((Seen one) -> one.fit().count())
                .thenComparingDouble(one -> one.fit().similarity()));
  }
}
