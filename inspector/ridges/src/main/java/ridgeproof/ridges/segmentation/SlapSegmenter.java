package ridgeproof.ridges.segmentation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.PrintSegmentation;
import ridgeproof.ridges.map.PrintShape;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.map.Statistics;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Finds the distal prints in an image of several fingers by their ridges alone: print, lines,
 * writing and holes have none. The image may be turned by up to 45 degrees from fingers up.
 */
public final class SlapSegmenter {

  /** Added on each side of a box, working pixels: half a valley. */
  private static final double MARGIN = 2;

  /** Degrees that one finger may stray from the common axis. */
  private static final double STRAY = 25;

  /** Blocks; fingers laid close touch over up to twice this, 6 to 11 mm. */
  private static final double[] WIDER_NECKS = {5.5, 7, 9};

  private static final double AMBIGUOUS = 0.15;
  private static final double CLEARLY_A_HAND = 1.2;

  private SlapSegmenter() {}

  /**
   * Looks for the distal prints of the fingers expected.
   *
   * @param ppi pixels per inch
   * @param expected the fingers declared to be there, in any order, without those missing
   */
  public static Slap segment(GrayImage image, double ppi, List<FingerPosition> expected) {
    return RidgeMaps.canBeMade(image, ppi)
        ? find(RidgeMaps.of(image, ppi), expected).slap()
        : unusable(expected);
  }

  /**
   * The segments with their blocks.
   *
   * @param slap what is said of them
   * @param regions the blocks of those found
   */
  public record Finding(Slap slap, Map<FingerPosition, RidgeRegion> regions) {}

  public static Slap unusable(List<FingerPosition> expected) {
    return nothing(places(expected), Segment.Doubt.UNUSABLE_RESOLUTION);
  }

  private static List<FingerPosition> places(List<FingerPosition> expected) {
    return expected.stream()
        .distinct()
        .sorted(Comparator.comparingInt(SlapSegmenter::place))
        .toList();
  }

  public static Finding find(RidgeMaps maps, List<FingerPosition> expected) {
    List<FingerPosition> places = places(expected);
    List<RidgeRegion> parts = PrintSegmentation.of(maps);
    if (parts.isEmpty()) {
      return new Finding(nothing(places, Segment.Doubt.NO_RIDGES), Map.of());
    }
    double axis =
        places.size() == 1
            ? DistalPhalanxFinder.axisOfOneFinger(parts)
            : DistalPhalanxFinder.axis(parts);
    List<PrintCandidate> candidates = DistalPhalanxFinder.of(maps, parts, axis);
    if (candidates.isEmpty()) {
      return new Finding(nothing(places, Segment.Doubt.NO_RIDGES), Map.of());
    }
    Reading reading = new Reading(FingerAssignment.choose(candidates, places), axis);
    for (int i = 0; i <= WIDER_NECKS.length && !reading.choice().isWhole(); i++) {
      List<RidgeRegion> finer =
          i < WIDER_NECKS.length
              ? PrintSegmentation.of(maps, WIDER_NECKS[i])
              : DistalPhalanxFinder.partBroad(parts, axis);
      // Prints that ran into one lie across, and the lean of all may have been theirs.
      reading = better(reading, maps, finer, places, axis);
      reading = better(reading, maps, finer, places, DistalPhalanxFinder.axis(finer));
    }
    FingerAssignment.Choice choice = reading.choice();
    List<Segment> segments = new ArrayList<>();
    Map<FingerPosition, RidgeRegion> regions = new EnumMap<>(FingerPosition.class);
    for (int i = 0; i < places.size(); i++) {
      PrintCandidate print = choice.prints().get(i);
      if (print != null) {
        regions.put(places.get(i), print.shape().region());
      }
      segments.add(
          print == null
              ? Segment.missing(places.get(i), Segment.Doubt.FEWER_PRINTS_THAN_FINGERS)
              : found(places.get(i), print, choice, reading.axis(), maps.scale()));
    }
    return new Finding(new Slap(segments, reading.axis(), apparentHand(choice.prints())), regions);
  }

  /** Which prints are taken for the fingers when all lean so many degrees. */
  private record Reading(FingerAssignment.Choice choice, double axis) {}

  private static Reading better(
      Reading before,
      RidgeMaps maps,
      List<RidgeRegion> parts,
      List<FingerPosition> places,
      double axis) {
    List<PrintCandidate> candidates = DistalPhalanxFinder.of(maps, parts, axis);
    if (candidates.isEmpty()) {
      return before;
    }
    Reading other = new Reading(FingerAssignment.choose(candidates, places), axis);
    return other.choice().value() > before.choice().value() ? other : before;
  }

  /** From left to right: the left hand lies with its little finger first, the right hand last. */
  private static int place(FingerPosition position) {
    return position.hand() == FingerPosition.Hand.LEFT
        ? -position.indexOnHand()
        : 1 + position.indexOnHand();
  }

  private static Slap nothing(List<FingerPosition> places, Segment.Doubt why) {
    return new Slap(
        places.stream().map(place -> Segment.missing(place, why)).toList(), 0, Optional.empty());
  }

  private static Segment found(
      FingerPosition position,
      PrintCandidate print,
      FingerAssignment.Choice choice,
      double axis,
      double scale) {
    List<Segment.Doubt> doubts = new ArrayList<>();
    long present = choice.prints().stream().filter(p -> p != null).count();
    double merits =
        choice.prints().stream().filter(p -> p != null).mapToDouble(PrintCandidate::merit).sum();
    double arrangement = Math.max(0, 1 - (merits - choice.value()) / present);
    double confidence = print.merit() * arrangement;
    boolean incomplete = present < choice.prints().size();
    if (incomplete) {
      boolean ambiguous = choice.lead() < AMBIGUOUS;
      doubts.addAll(ambiguous ? List.of(Segment.Doubt.PLACE_AMBIGUOUS) : List.of());
      confidence *= ambiguous ? 0.4 : 0.7;
    }
    addIf(print.cutAtTop(), Segment.Doubt.CUT_AT_TOP, doubts);
    addIf(print.cutAtSide(), Segment.Doubt.CUT_AT_SIDE, doubts);
    addIf(print.isSmall(), Segment.Doubt.SMALL, doubts);
    addIf(print.cutFromPhalanx(), Segment.Doubt.CUT_FROM_PHALANX, doubts);
    addIf(arrangement < 0.6, Segment.Doubt.UNUSUAL_ARRANGEMENT, doubts);
    RotatedBox tight = print.shape().box(ownAxis(print.shape(), axis), scale);
    RotatedBox box =
        new RotatedBox(
            tight.centreX(),
            tight.centreY(),
            tight.width() + 2 * MARGIN / scale,
            tight.height() + 2 * MARGIN / scale,
            tight.degrees());
    return new Segment(position, Optional.of(box), confidence, print.areaMm2(), doubts);
  }

  private static void addIf(boolean holds, Segment.Doubt doubt, List<Segment.Doubt> doubts) {
    if (holds) {
      doubts.add(doubt);
    }
  }

  /** A long print tells its own lean, a round one lies as the others do. */
  private static double ownAxis(PrintShape shape, double axis) {
    double stray = Math.IEEEremainder(shape.degrees() - axis, 180);
    double trust = Statistics.ramp(shape.elongation(), 1.1, 1.5);
    return Math.abs(stray) > STRAY ? axis : axis + trust * stray;
  }

  private static Optional<FingerPosition.Hand> apparentHand(List<PrintCandidate> prints) {
    List<PrintCandidate> there = prints.stream().filter(p -> p != null).toList();
    if (there.size() < 3) {
      return Optional.empty();
    }
    PrintCandidate first = there.get(0);
    PrintCandidate last = there.get(there.size() - 1);
    double breadth = there.stream().mapToDouble(PrintCandidate::width).average().orElseThrow();
    // The little finger is the lowest and the narrowest.
    double evidence =
        (last.tip() - first.tip()) / breadth + 4 * (first.width() - last.width()) / breadth;
    if (Math.abs(evidence) < CLEARLY_A_HAND) {
      return Optional.empty();
    }
    return Optional.of(evidence > 0 ? FingerPosition.Hand.RIGHT : FingerPosition.Hand.LEFT);
  }
}
