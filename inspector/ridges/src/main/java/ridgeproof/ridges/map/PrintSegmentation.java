package ridgeproof.ridges.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Divides the ridges of an image into prints, parting at necks those that merely touch. */
public final class PrintSegmentation {

  /** Blocks, 2.7 mm: prints that touch over less than twice this are two. */
  static final double NECK = 4.5;

  /** Blocks; a speck left by the erosion is no print of its own. */
  private static final int MIN_SEED = 8;

  /** Square millimetres that the main print has at least. */
  private static final double MIN_PRINT = 20;

  /** Blocks that two parts of one print share at least as a border, 4 mm. */
  private static final int CONTACT = 7;

  private PrintSegmentation() {}

  /** The prints, the largest first. */
  public static List<RidgeRegion> of(RidgeMaps maps) {
    return of(maps, NECK);
  }

  /** The prints, parted where they touch over less than twice so many blocks. */
  public static List<RidgeRegion> of(RidgeMaps maps, double neck) {
    BlockGrid grid = maps.grid();
    boolean[] prints = maps.printMask();
    int[] labels = new int[grid.blocks()];
    int count = 0;
    for (RidgeRegion seed : RidgeRegion.of(RidgeMask.erode(prints, grid, neck), grid)) {
      if (seed.size() >= MIN_SEED) {
        count++;
        mark(seed, labels, count);
      }
    }
    for (RidgeRegion print : RidgeRegion.of(prints, grid)) {
      boolean seeded = Arrays.stream(print.blocks()).anyMatch(block -> labels[block] > 0);
      if (!seeded) {
        count++;
        mark(print, labels, count);
      }
    }
    spread(labels, prints, grid);
    spread(labels, maps.extentMask(), grid);
    return regions(labels, count, grid);
  }

  /**
   * The one print that an image of one finger is about: the largest part, and those beside it that
   * touch it broadly. What lies above or below is another joint or another finger.
   */
  public static Optional<RidgeRegion> main(List<RidgeRegion> parts) {
    if (parts.isEmpty() || parts.get(0).areaMm2() < MIN_PRINT) {
      return Optional.empty();
    }
    RidgeRegion largest = parts.get(0);
    RidgeRegion main = largest;
    for (RidgeRegion part : parts.subList(1, parts.size())) {
      double row = part.centreY() / BlockGrid.BLOCK;
      boolean beside =
          row >= largest.top()
              && row <= largest.bottom()
              && part.bottom() <= largest.bottom() + CONTACT;
      if (beside && contact(main, part) >= CONTACT) {
        main = main.with(part);
      }
    }
    return Optional.of(main);
  }

  private static int contact(RidgeRegion a, RidgeRegion b) {
    boolean[] near = RidgeMask.dilate(a.mask(), a.grid(), 1);
    int count = 0;
    for (int block : b.blocks()) {
      count += near[block] ? 1 : 0;
    }
    return count;
  }

  private static void mark(RidgeRegion region, int[] labels, int label) {
    for (int block : region.blocks()) {
      labels[block] = label;
    }
  }

  private static void spread(int[] labels, boolean[] mask, BlockGrid grid) {
    int[] queue = new int[labels.length];
    int count = 0;
    for (int block = 0; block < labels.length; block++) {
      if (labels[block] > 0) {
        queue[count++] = block;
      }
    }
    for (int at = 0; at < count; at++) {
      int block = queue[at];
      int column = block % grid.columns();
      int row = block / grid.columns();
      for (int side = 0; side < 4; side++) {
        int c = column + (side == 0 ? 1 : side == 1 ? -1 : 0);
        int r = row + (side == 2 ? 1 : side == 3 ? -1 : 0);
        if (grid.contains(c, r)) {
          int next = grid.index(c, r);
          if (mask[next] && labels[next] == 0) {
            labels[next] = labels[block];
            queue[count++] = next;
          }
        }
      }
    }
  }

  private static List<RidgeRegion> regions(int[] labels, int count, BlockGrid grid) {
    int[] sizes = new int[count + 1];
    for (int label : labels) {
      sizes[label]++;
    }
    List<RidgeRegion> regions = new ArrayList<>();
    for (int label = 1; label <= count; label++) {
      int[] blocks = new int[sizes[label]];
      int at = 0;
      for (int block = 0; block < labels.length; block++) {
        if (labels[block] == label) {
          blocks[at++] = block;
        }
      }
      regions.add(new RidgeRegion(grid, blocks));
    }
    regions.sort((a, b) -> Integer.compare(b.size(), a.size()));
    return regions;
  }
}
