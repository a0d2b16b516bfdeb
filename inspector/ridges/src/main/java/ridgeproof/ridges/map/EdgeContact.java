package ridgeproof.ridges.map;

/**
 * Over what length each edge of the image cuts a print, millimetres.
 *
 * @param topMm top edge
 * @param rightMm right edge
 * @param bottomMm bottom edge
 * @param leftMm left edge
 */
public record EdgeContact(double topMm, double rightMm, double bottomMm, double leftMm) {

  /** Pixels at the edge that a ruled line may fill. */
  private static final int LINE = 3;

  /** Pixels: ridges that end nearer to the edge cannot be told from cut ones. */
  private static final int DEPTH = 10;

  /** Blocks. */
  private static final int INSIDE = 2;

  /** Of the gray deviation inside the print that its rim must have to be cut there. */
  private static final double FULL_STRENGTH = 0.5;

  /** Shorter contacts are chance, mm. */
  private static final double CUT = 2.5;

  public static EdgeContact of(RidgeMaps maps, RidgeRegion region) {
    BlockGrid grid = maps.grid();
    double[] deviations = new double[region.size()];
    int count = 0;
    for (int block : region.blocks()) {
      if (maps.isRidge(block)) {
        int column = block % grid.columns();
        int row = block / grid.columns();
        deviations[count++] =
            deviation(maps, grid.left(column), grid.top(row), grid.right(column), grid.bottom(row));
      }
    }
    double least = FULL_STRENGTH * Statistics.quantile(deviations, count, 0.5);
    boolean[] good = maps.printMask();
    for (int block : region.blocks()) {
      good[block] |= maps.isRidge(block);
    }
    int width = grid.width();
    int height = grid.height();
    int lastColumn = grid.columns() - 1;
    int lastRow = grid.rows() - 1;
    int[] cut = new int[4];
    for (int block : region.blocks()) {
      int column = block % grid.columns();
      int row = block / grid.columns();
      int left = grid.left(column);
      int right = grid.right(column);
      int top = grid.top(row);
      int bottom = grid.bottom(row);
      if (row == 0 && near(good, grid, column, 0, 0, 1)) {
        cut[0] += deviation(maps, left, LINE, right, DEPTH) >= least ? 1 : 0;
      }
      if (column == lastColumn && near(good, grid, lastColumn, row, -1, 0)) {
        cut[1] += deviation(maps, width - DEPTH, top, width - LINE, bottom) >= least ? 1 : 0;
      }
      if (row == lastRow && near(good, grid, column, lastRow, 0, -1)) {
        cut[2] += deviation(maps, left, height - DEPTH, right, height - LINE) >= least ? 1 : 0;
      }
      if (column == 0 && near(good, grid, 0, row, 1, 0)) {
        cut[3] += deviation(maps, LINE, top, DEPTH, bottom) >= least ? 1 : 0;
      }
    }
    double mm = BlockGrid.BLOCK_MM;
    return new EdgeContact(cut[0] * mm, cut[1] * mm, cut[2] * mm, cut[3] * mm);
  }

  /** Profiles right at the edge are cut short, so that clear ridges may begin a little inside. */
  private static boolean near(
      boolean[] good, BlockGrid grid, int column, int row, int stepX, int stepY) {
    for (int step = 0; step <= INSIDE; step++) {
      int c = column + step * stepX;
      int r = row + step * stepY;
      if (grid.contains(c, r) && good[grid.index(c, r)]) {
        return true;
      }
    }
    return false;
  }

  private static double deviation(RidgeMaps maps, int left, int top, int right, int bottom) {
    int width = maps.grid().width();
    int x0 = Math.max(0, left);
    int y0 = Math.max(0, top);
    int x1 = Math.min(width, right);
    int y1 = Math.min(maps.grid().height(), bottom);
    byte[] pixels = maps.pixels();
    long sum = 0;
    long squares = 0;
    for (int y = y0; y < y1; y++) {
      for (int x = x0; x < x1; x++) {
        int value = pixels[y * width + x] & 0xFF;
        sum += value;
        squares += value * value;
      }
    }
    double count = Math.max(1, (x1 - x0) * (y1 - y0));
    double mean = sum / count;
    return Math.sqrt(Math.max(0, squares / count - mean * mean));
  }

  /** Whether the top edge cuts the print. */
  public boolean isCutAtTop() {
    return topMm >= CUT;
  }

  /** Whether a side cuts the print. */
  public boolean isCutAtSide() {
    return leftMm >= CUT || rightMm >= CUT;
  }

  /** Whether the bottom edge cuts the print. */
  public boolean isCutAtBottom() {
    return bottomMm >= CUT;
  }
}
