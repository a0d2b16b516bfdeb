package ridgeproof.ridges.segmentation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.PrintShape;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.WorkingResolution;

/**
 * Finds the outermost print of each finger: prints in one column along the common axis belong to
 * one finger, the first of them is the distal one, and a long print is cut where its ridges are
 * weakest.
 */
final class DistalPhalanxFinder {

  /** Of its breadth; a flat distal print is rarely longer. */
  private static final double LONGEST = 1.9;

  /** Of its breadth; a flat distal print is rarely shorter. */
  private static final double SHORTEST = 1.1;

  /** Of the length of two parts joined over their breadth. */
  private static final double JOINED = 1.7;

  /** Of the broader part: parts of one finger lie below each other, not askew. */
  private static final double BREADTH_JOINED = 1.2;

  private static final double SAME_COLUMN = 0.5;

  /** Millimetres along the axis: a strip this short at the top edge hangs in from elsewhere. */
  private static final double STRIP = 9;

  /** Square millimetres. */
  private static final double MIN_AREA = 22;

  /** Millimetres: the gap between parts of one print. */
  private static final double GAP = 1.8;

  /** Degrees; a hand is turned by 45 at most, and two fingers that touch lie across. */
  private static final double STEEPEST = 50;

  private static final double LONG = 1.3;

  /** Millimetres across a finger; the plain print of a broad thumb. */
  private static final double BROADEST = 22.5;

  /** Of the lower of the two heights beside it: where two prints meet. */
  private static final double VALLEY = 0.75;

  private DistalPhalanxFinder() {}

  /** The lean that the long prints have in common, degrees: their weighted median. */
  static double axis(List<RidgeRegion> parts) {
    List<PrintShape> shapes =
        parts.stream()
            .map(PrintShape::of)
            .filter(shape -> Math.abs(shape.degrees()) <= STEEPEST)
            .sorted(Comparator.comparingDouble(PrintShape::degrees))
            .toList();
    double half = shapes.stream().mapToDouble(DistalPhalanxFinder::weight).sum() / 2;
    double sum = 0;
    for (PrintShape shape : shapes) {
      sum += weight(shape);
      if (sum >= half) {
        return shape.degrees();
      }
    }
    return 0;
  }

  /** The lean of one finger whose joints all lie in the image. */
  static double axisOfOneFinger(List<RidgeRegion> parts) {
    RidgeRegion all = parts.stream().reduce(RidgeRegion::with).orElseThrow();
    PrintShape shape = PrintShape.of(all);
    boolean tells = shape.elongation() >= LONG && Math.abs(shape.degrees()) <= STEEPEST;
    return tells ? shape.degrees() : axis(parts);
  }

  /** A long print tells the direction of its finger, a round one does not. */
  private static double weight(PrintShape shape) {
    return shape.region().size() * Math.min(1, shape.elongation() - 1);
  }

  static List<PrintCandidate> of(RidgeMaps maps, List<RidgeRegion> parts, double axis) {
    List<PrintCandidate> candidates =
        parts.stream()
            .filter(part -> part.areaMm2() >= MIN_AREA)
            .map(part -> PrintCandidate.of(maps, part, axis, false))
            .sorted(Comparator.comparingDouble(PrintCandidate::tip))
            .toList();
    boolean[] used = new boolean[candidates.size()];
    List<PrintCandidate> distal = new ArrayList<>();
    for (int i = 0; i < used.length; i++) {
      if (!used[i]) {
        used[i] = true;
        PrintCandidate print = candidates.get(i);
        List<Integer> below = below(candidates, used, i);
        double largestBelow =
            below.stream().mapToDouble(b -> candidates.get(b).areaMm2()).max().orElse(0);
        boolean strip =
            print.cutAtTop()
                && print.length() * WorkingResolution.MM_PER_PIXEL < STRIP
                && largestBelow > 1.5 * print.areaMm2();
        if (!strip) {
          for (int b : below) {
            PrintCandidate next = candidates.get(b);
            used[b] = true;
            PrintCandidate joined =
                PrintCandidate.of(
                    maps, print.shape().region().with(next.shape().region()), axis, false);
            if (isOneWith(print, next, joined)) {
              print = joined;
            }
          }
          distal.add(shorten(maps, print, axis));
        }
      }
    }
    return distal;
  }

  /**
   * Parts prints that are broader than any finger pressed flat where they are weakest along the
   * axis, as fingers laid close together run into one.
   */
  static List<RidgeRegion> partBroad(List<RidgeRegion> parts, double axis) {
    List<RidgeRegion> narrow = new ArrayList<>();
    for (RidgeRegion part : parts) {
      double[] span = PrintShape.of(part).span(axis);
      if ((span[1] - span[0]) * WorkingResolution.MM_PER_PIXEL > BROADEST) {
        narrow.addAll(halves(part, axis, span));
      } else {
        narrow.add(part);
      }
    }
    narrow.sort(Comparator.comparingInt(RidgeRegion::size).reversed());
    return narrow;
  }

  private static List<RidgeRegion> halves(RidgeRegion part, double axis, double[] span) {
    double cos = Math.cos(Math.toRadians(axis));
    double sin = Math.sin(Math.toRadians(axis));
    int columns = part.grid().columns();
    int bins = (int) ((span[1] - span[0]) / BlockGrid.BLOCK) + 1;
    int[] counts = new int[bins];
    int[] bin = new int[part.size()];
    for (int i = 0; i < bin.length; i++) {
      int block = part.blocks()[i];
      double across =
          (block % columns + 0.5) * BlockGrid.BLOCK * cos
              + (block / columns + 0.5) * BlockGrid.BLOCK * sin;
      bin[i] = Math.max(0, Math.min(bins - 1, (int) ((across - span[0]) / BlockGrid.BLOCK)));
      counts[bin[i]]++;
    }
    int cut = bins / 2;
    for (int i = bins / 4; i < bins - bins / 4; i++) {
      cut = counts[i] < counts[cut] ? i : cut;
    }
    int middle = cut;
    int[] left = IntStream.range(0, bin.length).filter(i -> bin[i] < middle).toArray();
    int[] right = IntStream.range(0, bin.length).filter(i -> bin[i] > middle).toArray();
    int highest = Math.min(tallest(counts, 0, cut), tallest(counts, cut, bins));
    if (counts[cut] > VALLEY * highest || left.length == 0 || right.length == 0) {
      return List.of(part);
    }
    return List.of(of(part, left), of(part, right));
  }

  private static int tallest(int[] counts, int from, int to) {
    return Arrays.stream(counts, from, to).max().orElse(0);
  }

  private static RidgeRegion of(RidgeRegion part, int[] indices) {
    return new RidgeRegion(
        part.grid(), Arrays.stream(indices).map(i -> part.blocks()[i]).toArray());
  }

  private static List<Integer> below(List<PrintCandidate> all, boolean[] used, int first) {
    List<Integer> below = new ArrayList<>();
    PrintCandidate top = all.get(first);
    for (int i = first + 1; i < all.size(); i++) {
      PrintCandidate print = all.get(i);
      boolean lower = print.tip() > top.tip() + 0.6 * Math.min(top.length(), print.length());
      if (!used[i] && lower && print.overlap(top) >= SAME_COLUMN) {
        below.add(i);
      }
    }
    return below;
  }

  private static boolean isOneWith(
      PrintCandidate print, PrintCandidate next, PrintCandidate joined) {
    double gap = (next.tip() - print.base()) * WorkingResolution.MM_PER_PIXEL;
    double breadth = Math.max(print.width(), next.width());
    return gap <= GAP
        && joined.length() <= JOINED * breadth
        && joined.width() <= BREADTH_JOINED * breadth;
  }

  private static PrintCandidate shorten(RidgeMaps maps, PrintCandidate print, double axis) {
    if (print.cutAtTop() || print.length() <= LONGEST * print.width()) {
      return print;
    }
    double cos = Math.cos(Math.toRadians(axis));
    double sin = Math.sin(Math.toRadians(axis));
    int bins = (int) (print.length() / BlockGrid.BLOCK) + 2;
    int[] good = new int[bins];
    RidgeRegion region = print.shape().region();
    int columns = region.grid().columns();
    int[] bin = new int[region.size()];
    for (int i = 0; i < bin.length; i++) {
      int block = region.blocks()[i];
      double along =
          (block / columns + 0.5) * BlockGrid.BLOCK * cos
              - (block % columns + 0.5) * BlockGrid.BLOCK * sin;
      bin[i] = Math.max(0, Math.min(bins - 1, (int) ((along - print.tip()) / BlockGrid.BLOCK)));
      good[bin[i]] += maps.isRidge(block) ? 1 : 0;
    }
    int cut = weakest(good, print.width() / BlockGrid.BLOCK);
    int[] kept = new int[bin.length];
    int count = 0;
    for (int i = 0; i < bin.length; i++) {
      if (bin[i] < cut) {
        kept[count++] = region.blocks()[i];
      }
    }
    return count == 0
        ? print
        : PrintCandidate.of(
            maps, new RidgeRegion(region.grid(), Arrays.copyOf(kept, count)), axis, true);
  }

  private static int weakest(int[] good, double width) {
    int from = (int) Math.round(SHORTEST * width);
    int to = Math.min(good.length - 2, (int) Math.round(LONGEST * width));
    int best = Math.min(good.length - 1, to);
    double least = Double.MAX_VALUE;
    for (int i = Math.max(1, from); i <= to; i++) {
      double value = good[i - 1] + 2 * good[i] + good[i + 1];
      if (value < least) {
        least = value;
        best = i;
      }
    }
    return best;
  }
}
