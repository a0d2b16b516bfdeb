package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import ridgeproof.examination.cause.card.CardPrints.Print;
import ridgeproof.imagery.Turn;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.matching.TurnBetween;
import ridgeproof.spec.layout.FingerPosition;

/**
 * The prints of one image, turned in some way, compared with the rolls as they are and as in a
 * mirror.
 */
final class PlainReading {

  /**
   * One way in which they match.
   *
   * @param mirrored whether the image or the rolls are
   * @param matches the prints that match, by the roll that they match
   * @param similarity of all those together
   * @param turn by how much the image, as it is in the file, is turned against the rolls, by right
   *     angles clockwise; nothing where that cannot be told
   * @param turns the same of each print, by its roll
   */
  record Fit(
      FingerOrder order,
      boolean mirrored,
      Map<FingerPosition, Print> matches,
      double similarity,
      Optional<Turn> turn,
      Map<FingerPosition, Turn> turns) {

    int count() {
      return matches.size();
    }

    /** Without the rolls that another way explains. */
    Fit without(Fit other) {
      Map<FingerPosition, Print> rest = new EnumMap<>(FingerPosition.class);
      rest.putAll(matches);
      rest.keySet().removeAll(other.matches().keySet());
      return new Fit(order, mirrored, rest, similarity, turn, turns);
    }
  }

  /** Degrees to a right angle within which prints are turned by it. */
  private static final double NEAR = 35;

  private final Turn turned;
  private final List<FingerPosition> places;
  private final Map<FingerPosition, Print> prints;
  private final Map<FingerPosition, Print> rolls;
  private final double threshold;
  private final List<Minutiae> candidates;
  private final Map<FingerPosition, double[]> direct = new EnumMap<>(FingerPosition.class);
  private final Map<FingerPosition, double[]> mirrored = new EnumMap<>(FingerPosition.class);

  /**
   * @param turned what was done to the image before its prints were looked for
   */
  PlainReading(
      Turn turned,
      List<FingerPosition> places,
      Map<FingerPosition, Print> prints,
      Map<FingerPosition, Print> rolls,
      double threshold) {
    this.turned = turned;
    this.places = places;
    this.prints = prints;
    this.rolls = rolls;
    this.threshold = threshold;
    candidates = rolls.values().stream().map(Print::minutiae).toList();
    prints.forEach((place, print) -> direct.put(place, print.minutiae().similarities(candidates)));
  }

  /** The way in which most prints match, among those that are asked for. */
  Fit best(FingerOrder... orders) {
    return Stream.of(orders)
        .flatMap(order -> Stream.of(fit(order, false), fit(order, true)))
        .max(Comparator.comparingInt(Fit::count).thenComparingDouble(Fit::similarity))
        .orElseThrow();
  }

  Fit fit(FingerOrder order, boolean inMirror) {
    Map<FingerPosition, Print> matches = new EnumMap<>(FingerPosition.class);
    List<FingerPosition> expected = order.rollsOf(places);
    double similarity = 0;
    List<Double> degrees = new ArrayList<>();
    Map<FingerPosition, Turn> turns = new EnumMap<>(FingerPosition.class);
    for (int i = 0; i < places.size(); i++) {
      Print print = prints.get(places.get(i));
      Print roll = rolls.get(expected.get(i));
      double score =
          print == null || roll == null ? 0 : score(places.get(i), expected.get(i), inMirror);
      if (score >= threshold) {
        matches.put(expected.get(i), print);
        similarity += score;
        OptionalInt turn = turn(print, roll, inMirror);
        if (turn.isPresent()) {
          degrees.add((double) turn.getAsInt());
          FingerPosition finger = expected.get(i);
          commonTurn(List.of((double) turn.getAsInt())).ifPresent(t -> turns.put(finger, t));
        }
      }
    }
    return new Fit(order, inMirror, matches, similarity, commonTurn(degrees), turns);
  }

  private double score(FingerPosition place, FingerPosition roll, boolean inMirror) {
    int index = List.copyOf(rolls.keySet()).indexOf(roll);
    return inMirror ? inMirror(place)[index] : direct.get(place)[index];
  }

  private double[] inMirror(FingerPosition place) {
    return mirrored.computeIfAbsent(
        place, p -> prints.get(p).minutiae().mirrored().similarities(candidates));
  }

  /** Degrees from the roll to the print. */
  private static OptionalInt turn(Print print, Print roll, boolean inMirror) {
    Minutiae seen = inMirror ? print.minutiae().mirrored() : print.minutiae();
    double ppi = inMirror ? TEMPLATE_PPI : print.ppi();
    var degrees = TurnBetween.of(roll.minutiae(), roll.ppi(), seen, ppi);
    return degrees.isPresent()
        ? OptionalInt.of((int) Math.round(degrees.getAsDouble()))
        : OptionalInt.empty();
  }

  /** Mirrored minutiae have the places of the template. */
  private static final double TEMPLATE_PPI = 500;

  private Optional<Turn> commonTurn(List<Double> degrees) {
    for (Turn turn : Turn.values()) {
      long near =
          degrees.stream()
              .filter(d -> Math.abs(Math.IEEEremainder(d - turn.degrees(), 360)) <= NEAR)
              .count();
      if (near > 0 && 2 * near > degrees.size()) {
        // What was turned back before has been turned by so much less.
        int inFile = Math.floorMod(turn.degrees() - turned.degrees(), 360);
        return Arrays.stream(Turn.values()).filter(t -> t.degrees() == inFile).findFirst();
      }
    }
    return Optional.empty();
  }
}
