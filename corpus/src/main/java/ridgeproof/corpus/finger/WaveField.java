package ridgeproof.corpus.finger;

/** The local wave vector of the ridges, in radians per pixel, on the nodes of a square lattice. */
final class WaveField {

  /** Lattice spacing in pixels at 500 ppi: less than half a ridge period. */
  static final int SPACING = 4;

  private static final int SPARSE = 4;

  final int columns;
  final int rows;
  final float[] kx;
  final float[] ky;

  WaveField(FingerFlow flow, int width, int height) {
    this.columns = (width + SPACING - 1) / SPACING + 1;
    this.rows = (height + SPACING - 1) / SPACING + 1;
    this.kx = new float[columns * rows];
    this.ky = new float[columns * rows];
    fill(flow);
  }

  private void fill(FingerFlow flow) {
    int sparseColumns = columns / SPARSE + 2;
    int sparseRows = rows / SPARSE + 2;
    double[] angles = new double[sparseColumns * sparseRows];
    double[] periods = new double[sparseColumns * sparseRows];
    for (int i = 0; i < angles.length; i++) {
      double x = (i % sparseColumns) * SPARSE * SPACING;
      double y = (i / sparseColumns) * SPARSE * SPACING;
      angles[i] = flow.smoothAngle(x, y);
      periods[i] = flow.period(x, y);
    }
    double[] doubled = new double[2];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int corner = row / SPARSE * sparseColumns + column / SPARSE;
        double right = (column % SPARSE) / (double) SPARSE;
        double down = (row % SPARSE) / (double) SPARSE;
        double angle = blend(angles, corner, sparseColumns, right, down);
        double period = blend(periods, corner, sparseColumns, right, down);
        flow.doubledDirection(column * SPACING, row * SPACING, angle, doubled);
        setNode(row * columns + column, doubled[0], doubled[1], 2 * Math.PI / period);
      }
    }
  }

  private static double blend(double[] grid, int corner, int stride, double right, double down) {
    double top = grid[corner] + right * (grid[corner + 1] - grid[corner]);
    int below = corner + stride;
    double bottom = grid[below] + right * (grid[below + 1] - grid[below]);
    return top + down * (bottom - top);
  }

  private void setNode(int node, double doubledCos, double doubledSin, double frequency) {
    double along = Math.sqrt(Math.max(0, (1 + doubledCos) / 2));
    double up = Math.sqrt(Math.max(0, (1 - doubledCos) / 2)) * (doubledSin < 0 ? -1 : 1);
    // The ridge runs along (along, -up) in image coordinates; the wave vector is square to it.
    kx[node] = (float) (frequency * up);
    ky[node] = (float) (frequency * along);
  }
}
