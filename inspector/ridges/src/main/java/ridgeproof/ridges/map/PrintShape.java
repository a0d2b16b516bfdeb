package ridgeproof.ridges.map;

/**
 * Where a print lies along and across a direction.
 *
 * @param region the blocks
 * @param degrees how far the long axis leans to the right from straight up, -90..90
 * @param elongation length over breadth by second moments, 1 for a disc
 */
public record PrintShape(RidgeRegion region, double degrees, double elongation) {

  /** Of the blocks at either end that a box leaves out. */
  private static final double TRIM = 0.01;

  public static PrintShape of(RidgeRegion region) {
    double cx = region.centreX();
    double cy = region.centreY();
    double xx = 0;
    double yy = 0;
    double xy = 0;
    int columns = region.grid().columns();
    for (int block : region.blocks()) {
      double dx = (block % columns + 0.5) * BlockGrid.BLOCK - cx;
      double dy = (block / columns + 0.5) * BlockGrid.BLOCK - cy;
      xx += dx * dx;
      yy += dy * dy;
      xy += dx * dy;
    }
    // Angle of the long axis from vertical; a tip leaning right has its top at greater x.
    double angle = 0.5 * Math.atan2(-2 * xy, yy - xx);
    double mean = (xx + yy) / 2;
    double spread = Math.hypot((xx - yy) / 2, xy);
    double smallest = Math.max(mean - spread, 1e-9 + mean * 1e-3);
    return new PrintShape(region, Math.toDegrees(angle), Math.sqrt((mean + spread) / smallest));
  }

  /** Least and greatest place across and along an axis: left, right, tip, base (working pixels). */
  public double[] span(double axisDegrees) {
    double cos = Math.cos(Math.toRadians(axisDegrees));
    double sin = Math.sin(Math.toRadians(axisDegrees));
    int[] blocks = region.blocks();
    double[] across = new double[blocks.length];
    double[] along = new double[blocks.length];
    int columns = region.grid().columns();
    for (int i = 0; i < blocks.length; i++) {
      double x = (blocks[i] % columns + 0.5) * BlockGrid.BLOCK;
      double y = (blocks[i] / columns + 0.5) * BlockGrid.BLOCK;
      across[i] = x * cos + y * sin;
      along[i] = y * cos - x * sin;
    }
    double half = BlockGrid.BLOCK / 2.0;
    int n = blocks.length;
    return new double[] {
      Statistics.quantile(across, n, TRIM) - half,
      Statistics.quantile(across, n, 1 - TRIM) + half,
      Statistics.quantile(along, n, TRIM) - half,
      Statistics.quantile(along, n, 1 - TRIM) + half
    };
  }

  /** The box along an axis, in pixels of the source of the maps. */
  public RotatedBox box(double axisDegrees, double scale) {
    double[] span = span(axisDegrees);
    double cos = Math.cos(Math.toRadians(axisDegrees));
    double sin = Math.sin(Math.toRadians(axisDegrees));
    double across = (span[0] + span[1]) / 2;
    double along = (span[2] + span[3]) / 2;
    return new RotatedBox(
        (across * cos - along * sin) / scale,
        (across * sin + along * cos) / scale,
        (span[1] - span[0]) / scale,
        (span[3] - span[2]) / scale,
        axisDegrees);
  }
}
