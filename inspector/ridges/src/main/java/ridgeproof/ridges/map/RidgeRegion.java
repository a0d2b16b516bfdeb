package ridgeproof.ridges.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Connected blocks of a mask (four neighbours), with their bounds in blocks. */
public final class RidgeRegion {

  private final BlockGrid grid;
  private final int[] blocks;
  private final int left;
  private final int top;
  private final int right;
  private final int bottom;

  public RidgeRegion(BlockGrid grid, int[] blocks) {
    this.grid = grid;
    this.blocks = blocks;
    int l = Integer.MAX_VALUE;
    int t = Integer.MAX_VALUE;
    int r = -1;
    int b = -1;
    for (int block : blocks) {
      l = Math.min(l, block % grid.columns());
      r = Math.max(r, block % grid.columns());
      t = Math.min(t, block / grid.columns());
      b = Math.max(b, block / grid.columns());
    }
    left = l;
    top = t;
    right = r;
    bottom = b;
  }

  /** All regions of a mask, the largest first. */
  static List<RidgeRegion> of(boolean[] mask, BlockGrid grid) {
    List<RidgeRegion> regions = new ArrayList<>();
    boolean[] seen = new boolean[mask.length];
    int[] queue = new int[mask.length];
    for (int start = 0; start < mask.length; start++) {
      if (mask[start] && !seen[start]) {
        int count = flood(mask, seen, grid, start, queue);
        regions.add(new RidgeRegion(grid, Arrays.copyOf(queue, count)));
      }
    }
    regions.sort(Comparator.comparingInt(RidgeRegion::size).reversed());
    return regions;
  }

  private static int flood(boolean[] mask, boolean[] seen, BlockGrid grid, int start, int[] queue) {
    int count = 0;
    queue[count++] = start;
    seen[start] = true;
    for (int at = 0; at < count; at++) {
      int block = queue[at];
      int column = block % grid.columns();
      int row = block / grid.columns();
      for (int side = 0; side < 4; side++) {
        int c = column + (side == 0 ? 1 : side == 1 ? -1 : 0);
        int r = row + (side == 2 ? 1 : side == 3 ? -1 : 0);
        if (grid.contains(c, r) && mask[grid.index(c, r)] && !seen[grid.index(c, r)]) {
          seen[grid.index(c, r)] = true;
          queue[count++] = grid.index(c, r);
        }
      }
    }
    return count;
  }

  /** Both together; they have no block in common. */
  public RidgeRegion with(RidgeRegion other) {
    int[] all = Arrays.copyOf(blocks, blocks.length + other.blocks.length);
    System.arraycopy(other.blocks, 0, all, blocks.length, other.blocks.length);
    return new RidgeRegion(grid, all);
  }

  public BlockGrid grid() {
    return grid;
  }

  public int size() {
    return blocks.length;
  }

  /** Not to be written to. */
  public int[] blocks() {
    return blocks;
  }

  public boolean[] mask() {
    boolean[] mask = new boolean[grid.blocks()];
    for (int block : blocks) {
      mask[block] = true;
    }
    return mask;
  }

  public int left() {
    return left;
  }

  public int top() {
    return top;
  }

  public int right() {
    return right;
  }

  public int bottom() {
    return bottom;
  }

  public double areaMm2() {
    return size() * BlockGrid.BLOCK_MM2;
  }

  public double centreX() {
    double sum = 0;
    for (int block : blocks) {
      sum += block % grid.columns() + 0.5;
    }
    return sum / blocks.length * BlockGrid.BLOCK;
  }

  public double centreY() {
    double sum = 0;
    for (int block : blocks) {
      sum += block / grid.columns() + 0.5;
    }
    return sum / blocks.length * BlockGrid.BLOCK;
  }
}
