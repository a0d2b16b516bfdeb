package ridgeproof.ridges.segmentation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Which prints are which fingers: the choice of prints and places that lies most like a hand.
 * Fingers of a slap stand about one and a third breadths apart (common practice).
 */
final class FingerAssignment {

  private static final double SPACING = 1.35;

  /** Costs are in terms of a print's merit, which is at most 1. */
  private static final double SPACING_COST = 0.35;

  private static final double HEIGHT_COST = 0.12;
  private static final int MAX_CANDIDATES = 10;

  /**
   * A choice.
   *
   * @param prints for each place from left to right, null where there is none
   * @param value the sum of merits less the cost of the arrangement
   * @param lead over the best choice that leaves another place empty
   */
  record Choice(List<PrintCandidate> prints, double value, double lead) {

    /** Whether every place has a print as large as one, and as one only. */
    boolean isWhole() {
      return prints.stream().allMatch(print -> print != null && print.looksWhole());
    }
  }

  private final List<PrintCandidate> candidates;
  private final List<FingerPosition> places;
  private List<PrintCandidate> best;
  private double bestValue = Double.NEGATIVE_INFINITY;
  private final double[] bestByEmptiness;

  private FingerAssignment(List<PrintCandidate> candidates, List<FingerPosition> places) {
    this.candidates = candidates;
    this.places = places;
    this.bestByEmptiness = new double[1 << places.size()];
    Arrays.fill(bestByEmptiness, Double.NEGATIVE_INFINITY);
  }

  static Choice choose(List<PrintCandidate> all, List<FingerPosition> places) {
    List<PrintCandidate> strongest =
        all.stream()
            .sorted((a, b) -> Double.compare(b.merit(), a.merit()))
            .limit(MAX_CANDIDATES)
            .sorted((a, b) -> Double.compare(a.middle(), b.middle()))
            .toList();
    FingerAssignment arrangement = new FingerAssignment(strongest, places);
    arrangement.search(0, 0, new ArrayList<>());
    int emptiness = 0;
    for (int i = 0; i < places.size(); i++) {
      emptiness |= arrangement.best.get(i) == null ? 1 << i : 0;
    }
    double rival = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < arrangement.bestByEmptiness.length; i++) {
      if (i != emptiness && Integer.bitCount(i) == Integer.bitCount(emptiness)) {
        rival = Math.max(rival, arrangement.bestByEmptiness[i]);
      }
    }
    return new Choice(arrangement.best, arrangement.bestValue, arrangement.bestValue - rival);
  }

  private void search(int place, int from, List<PrintCandidate> chosen) {
    if (place == places.size()) {
      double value = value(chosen);
      int emptiness = 0;
      for (int i = 0; i < chosen.size(); i++) {
        emptiness |= chosen.get(i) == null ? 1 << i : 0;
      }
      bestByEmptiness[emptiness] = Math.max(bestByEmptiness[emptiness], value);
      if (value > bestValue) {
        bestValue = value;
        best = new ArrayList<>(chosen);
      }
      return;
    }
    for (int i = from; i <= candidates.size(); i++) {
      chosen.add(i == candidates.size() ? null : candidates.get(i));
      search(place + 1, i == candidates.size() ? from : i + 1, chosen);
      chosen.remove(chosen.size() - 1);
    }
  }

  private double value(List<PrintCandidate> chosen) {
    double value = 0;
    double breadth = 0;
    int count = 0;
    for (PrintCandidate print : chosen) {
      if (print != null) {
        value += print.merit();
        breadth += print.width();
        count++;
      }
    }
    if (count < 2) {
      return value;
    }
    breadth /= count;
    int last = -1;
    for (int i = 0; i < chosen.size(); i++) {
      if (chosen.get(i) != null) {
        if (last >= 0) {
          value -= pairCost(chosen, last, i, breadth);
        }
        last = i;
      }
    }
    return value;
  }

  private double pairCost(List<PrintCandidate> chosen, int a, int b, double breadth) {
    PrintCandidate left = chosen.get(a);
    PrintCandidate right = chosen.get(b);
    int steps = Math.abs(places.get(a).indexOnHand() - places.get(b).indexOnHand());
    boolean thumbs = steps == 0;
    double apart = (right.middle() - left.middle()) / breadth;
    double expected = SPACING * Math.max(1, steps);
    double off = Math.max(0, Math.abs(apart - expected) / expected - (thumbs ? 1 : 0.3));
    double crowding = left.overlap(right);
    double drop = (right.tip() - left.tip()) / breadth;
    double usual = usualTip(places.get(b)) - usualTip(places.get(a));
    double tilt = Math.max(0, Math.abs(drop - usual) - 0.6);
    return SPACING_COST * off + crowding + HEIGHT_COST * tilt;
  }

  /** How far a tip lies below that of the middle finger, in breadths. */
  private static double usualTip(FingerPosition position) {
    return switch (position.indexOnHand()) {
      case 1 -> 0.4;
      case 3 -> 0.25;
      case 4 -> 1.2;
      default -> 0;
    };
  }
}
