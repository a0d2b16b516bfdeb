package ridgeproof.corpus.finger;

/**
 * Ridges thinned to lines by Zhang and Suen, "A fast parallel algorithm for thinning digital
 * patterns", CACM 27(3), 1984 (from memory): a second way to find minutiae, independent of how they
 * were made.
 */
public final class Skeleton {

  private final int width;
  private final int height;
  private final boolean[] line;

  public Skeleton(boolean[] ridges, int width, int height) {
    this.width = width;
    this.height = height;
    this.line = ridges.clone();
    boolean changed = true;
    while (changed) {
      changed = peel(0) | peel(1);
    }
  }

  private boolean peel(int half) {
    boolean[] drop = new boolean[line.length];
    boolean any = false;
    for (int y = 1; y + 1 < height; y++) {
      for (int x = 1; x + 1 < width; x++) {
        int at = y * width + x;
        if (line[at] && removable(at, half)) {
          drop[at] = true;
          any = true;
        }
      }
    }
    for (int i = 0; i < drop.length; i++) {
      line[i] &= !drop[i];
    }
    return any;
  }

  private boolean removable(int at, int half) {
    boolean[] n = ring(at);
    int count = 0;
    for (boolean set : n) {
      count += set ? 1 : 0;
    }
    boolean first = half == 0;
    return count >= 2
        && count <= 6
        && crossings(n) == 1
        && !(n[0] && n[2] && (first ? n[4] : n[6]))
        && !((first ? n[2] : n[0]) && n[4] && n[6]);
  }

  /** The neighbours from the north, clockwise. */
  private boolean[] ring(int at) {
    return new boolean[] {
      line[at - width],
      line[at - width + 1],
      line[at + 1],
      line[at + width + 1],
      line[at + width],
      line[at + width - 1],
      line[at - 1],
      line[at - width - 1]
    };
  }

  private static int crossings(boolean[] ring) {
    int crossings = 0;
    for (int i = 0; i < 8; i++) {
      crossings += !ring[i] && ring[(i + 1) % 8] ? 1 : 0;
    }
    return crossings;
  }

  /** True when a line ends, or forks, within a few pixels of a place. */
  public boolean shows(TrueMinutia.Kind kind, double x, double y, int reach) {
    int wanted = kind == TrueMinutia.Kind.ENDING ? 1 : 3;
    for (int dy = -reach; dy <= reach; dy++) {
      for (int dx = -reach; dx <= reach; dx++) {
        int px = (int) x + dx;
        int py = (int) y + dy;
        if (px > 0 && py > 0 && px < width - 1 && py < height - 1 && line[py * width + px]) {
          if (crossings(ring(py * width + px)) == wanted) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
