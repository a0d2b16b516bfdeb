package ridgeproof.ridges.map;

import java.util.Arrays;

/**
 * The blocks that show friction ridges: a repeated profile of ridge-like period and one direction.
 */
public final class RidgeMask {

  /** Pixels; 0.2 mm, the ridges of a small child. */
  private static final double MIN_PERIOD = 4.2;

  /** Pixels; 0.85 mm, beyond the widest adult ridges. */
  private static final double MAX_PERIOD = 16.5;

  private static final double MIN_COHERENCE = 0.22;
  private static final double MIN_PERIODICITY = 0.35;

  /** Gray levels. */
  private static final double MIN_CONTRAST = 9;

  private RidgeMask() {}

  static boolean[] strict(StructureTensorField tensors, XSignatureField signatures) {
    boolean[] mask = new boolean[tensors.grid().blocks()];
    for (int block = 0; block < mask.length; block++) {
      mask[block] =
          signatures.periodicity(block) >= MIN_PERIODICITY
              && signatures.period(block) >= MIN_PERIOD
              && signatures.period(block) <= MAX_PERIOD
              && signatures.contrast(block) >= MIN_CONTRAST
              && tensors.coherence(block) >= MIN_COHERENCE;
    }
    return mask;
  }

  /**
   * Blocks with at least so many like them in the square of neighbours this far; the square is cut
   * by the edges of the image and counts as what is left of it.
   */
  public static boolean[] majority(boolean[] mask, BlockGrid grid, int reach, double share) {
    int[] sums = sums(mask, grid);
    boolean[] result = new boolean[mask.length];
    for (int row = 0; row < grid.rows(); row++) {
      int top = Math.max(0, row - reach);
      int bottom = Math.min(grid.rows(), row + reach + 1);
      for (int column = 0; column < grid.columns(); column++) {
        int left = Math.max(0, column - reach);
        int right = Math.min(grid.columns(), column + reach + 1);
        int count = count(sums, grid, left, top, right, bottom);
        result[grid.index(column, row)] = count >= share * (right - left) * (bottom - top);
      }
    }
    return result;
  }

  /** Erosion and dilation by a disc; what is narrower than the disc goes. */
  static boolean[] open(boolean[] mask, BlockGrid grid, double radius) {
    return dilate(erode(mask, grid, radius), grid, radius);
  }

  public static boolean[] erode(boolean[] mask, BlockGrid grid, double radius) {
    boolean[] inverse = new boolean[mask.length];
    for (int i = 0; i < mask.length; i++) {
      inverse[i] = !mask[i];
    }
    boolean[] grown = dilate(inverse, grid, radius);
    for (int i = 0; i < mask.length; i++) {
      grown[i] = !grown[i];
    }
    return grown;
  }

  public static boolean[] dilate(boolean[] mask, BlockGrid grid, double radius) {
    boolean[] result = new boolean[mask.length];
    int reach = (int) Math.floor(radius);
    for (int dy = -reach; dy <= reach; dy++) {
      int dx = (int) Math.floor(Math.sqrt(radius * radius - dy * dy));
      for (int row = Math.max(0, -dy); row < Math.min(grid.rows(), grid.rows() - dy); row++) {
        for (int column = 0; column < grid.columns(); column++) {
          if (mask[grid.index(column, row)]) {
            int from = Math.max(0, column - dx);
            int to = Math.min(grid.columns() - 1, column + dx);
            Arrays.fill(result, grid.index(from, row + dy), grid.index(to, row + dy) + 1, true);
          }
        }
      }
    }
    return result;
  }

  /** The connected parts of a mask that have at least one block in common with another mask. */
  static boolean[] touching(boolean[] mask, boolean[] other, BlockGrid grid) {
    boolean[] result = new boolean[mask.length];
    for (RidgeRegion part : RidgeRegion.of(mask, grid)) {
      if (Arrays.stream(part.blocks()).anyMatch(block -> other[block])) {
        for (int block : part.blocks()) {
          result[block] = true;
        }
      }
    }
    return result;
  }

  /** Fills what is enclosed and no larger than so many blocks. */
  public static boolean[] fillHoles(boolean[] mask, BlockGrid grid, int most) {
    boolean[] inverse = new boolean[mask.length];
    for (int i = 0; i < mask.length; i++) {
      inverse[i] = !mask[i];
    }
    boolean[] result = mask.clone();
    for (RidgeRegion hole : RidgeRegion.of(inverse, grid)) {
      boolean enclosed =
          hole.left() > 0
              && hole.top() > 0
              && hole.right() < grid.columns() - 1
              && hole.bottom() < grid.rows() - 1;
      if (enclosed && hole.size() <= most) {
        for (int block : hole.blocks()) {
          result[block] = true;
        }
      }
    }
    return result;
  }

  private static int[] sums(boolean[] mask, BlockGrid grid) {
    int stride = grid.columns() + 1;
    int[] sums = new int[stride * (grid.rows() + 1)];
    for (int row = 0; row < grid.rows(); row++) {
      int line = 0;
      for (int column = 0; column < grid.columns(); column++) {
        line += mask[grid.index(column, row)] ? 1 : 0;
        sums[(row + 1) * stride + column + 1] = sums[row * stride + column + 1] + line;
      }
    }
    return sums;
  }

  private static int count(int[] sums, BlockGrid grid, int left, int top, int right, int bottom) {
    int stride = grid.columns() + 1;
    return sums[bottom * stride + right]
        - sums[top * stride + right]
        - sums[bottom * stride + left]
        + sums[top * stride + left];
  }
}
