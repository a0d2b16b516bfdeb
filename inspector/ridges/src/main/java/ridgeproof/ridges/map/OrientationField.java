package ridgeproof.ridges.map;

/**
 * Ridge directions of one print, smoothed as doubled angles (Kass and Witkin 1987) within the print
 * only, so that its surroundings do not bend them.
 */
public final class OrientationField {

  /** Right at a core directions nearly cancel; only where nothing was averaged is there none. */
  private static final double MIN_LENGTH = 1e-6;

  private final BlockGrid grid;
  private final boolean[] inside;
  private final float[] cosines;
  private final float[] sines;

  private OrientationField(BlockGrid grid, boolean[] inside, float[] cosines, float[] sines) {
    this.grid = grid;
    this.inside = inside;
    this.cosines = cosines;
    this.sines = sines;
  }

  public static OrientationField of(RidgeMaps maps, boolean[] inside, int passes) {
    BlockGrid grid = maps.grid();
    float[] cosines = new float[grid.blocks()];
    float[] sines = new float[grid.blocks()];
    for (int block = 0; block < inside.length; block++) {
      if (inside[block]) {
        double weight = maps.tensors().coherence(block) * (maps.isRidge(block) ? 1 : 0.3);
        double angle = 2 * maps.tensors().orientation(block);
        cosines[block] = (float) (weight * Math.cos(angle));
        sines[block] = (float) (weight * Math.sin(angle));
      }
    }
    for (int pass = 0; pass < passes; pass++) {
      cosines = Smoothing.binomial(cosines, grid);
      sines = Smoothing.binomial(sines, grid);
    }
    return new OrientationField(grid, inside, cosines, sines);
  }

  public BlockGrid grid() {
    return grid;
  }

  public boolean isKnown(int column, int row) {
    if (!grid.contains(column, row)) {
      return false;
    }
    int block = grid.index(column, row);
    return inside[block] && Math.hypot(cosines[block], sines[block]) >= MIN_LENGTH;
  }

  /** Twice the direction along the ridges, radians. */
  public double doubled(int column, int row) {
    int block = grid.index(column, row);
    return Math.atan2(sines[block], cosines[block]);
  }

  /**
   * Turns of the ridges around the corner right below a block, in half turns: 1 around a core, -1
   * around a delta, 0 elsewhere and where a direction is missing (Poincare index, Kawagoe and Tojo
   * 1984).
   */
  public int halfTurns(int column, int row) {
    if (!isKnown(column, row)
        || !isKnown(column + 1, row)
        || !isKnown(column + 1, row + 1)
        || !isKnown(column, row + 1)) {
      return 0;
    }
    double a = doubled(column, row);
    double b = doubled(column + 1, row);
    double c = doubled(column + 1, row + 1);
    double d = doubled(column, row + 1);
    double turn = step(a, b) + step(b, c) + step(c, d) + step(d, a);
    return (int) Math.round(turn / (2 * Math.PI));
  }

  private static double step(double from, double to) {
    return Math.IEEEremainder(to - from, 2 * Math.PI);
  }

  /** Mean difference between the directions of neighbouring blocks, degrees. */
  public double roughness() {
    double sum = 0;
    int count = 0;
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        if (isKnown(column, row)) {
          if (isKnown(column + 1, row)) {
            sum += Math.abs(step(doubled(column, row), doubled(column + 1, row)));
            count++;
          }
          if (isKnown(column, row + 1)) {
            sum += Math.abs(step(doubled(column, row), doubled(column, row + 1)));
            count++;
          }
        }
      }
    }
    return count == 0 ? 0 : Math.toDegrees(sum / count / 2);
  }

  /**
   * Degrees by which ridges at the right fall more than those at the left, seen from left to right:
   * positive where they rise in the middle.
   */
  public double bend(int left, int right) {
    double[] sums = new double[4];
    int third = Math.max(1, (right - left + 1) / 3);
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = left; column <= right; column++) {
        boolean first = column < left + third;
        if ((first || column > right - third) && isKnown(column, row)) {
          int side = first ? 0 : 2;
          sums[side] += Math.cos(doubled(column, row));
          sums[side + 1] += Math.sin(doubled(column, row));
        }
      }
    }
    double turn = step(Math.atan2(sums[1], sums[0]), Math.atan2(sums[3], sums[2]));
    return Math.toDegrees(turn) / 2;
  }
}
