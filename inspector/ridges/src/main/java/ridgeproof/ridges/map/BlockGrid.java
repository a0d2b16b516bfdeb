package ridgeproof.ridges.map;

/**
 * Square blocks over an image at 500 ppi; the last column and row may be cut by its edge.
 *
 * @param width pixels
 * @param height pixels
 * @param columns blocks
 * @param rows blocks
 */
public record BlockGrid(int width, int height, int columns, int rows) {

  /** Pixels; about one and a third ridge periods, so that the field follows a core closely. */
  public static final int BLOCK = 12;

  public static final double BLOCK_MM = BLOCK * WorkingResolution.MM_PER_PIXEL;
  public static final double BLOCK_MM2 = BLOCK_MM * BLOCK_MM;

  static BlockGrid over(int width, int height) {
    return new BlockGrid(width, height, (width + BLOCK - 1) / BLOCK, (height + BLOCK - 1) / BLOCK);
  }

  public int blocks() {
    return columns * rows;
  }

  public int index(int column, int row) {
    return row * columns + column;
  }

  public boolean contains(int column, int row) {
    return column >= 0 && row >= 0 && column < columns && row < rows;
  }

  public int left(int column) {
    return column * BLOCK;
  }

  public int right(int column) {
    return Math.min(width, (column + 1) * BLOCK);
  }

  public int top(int row) {
    return row * BLOCK;
  }

  public int bottom(int row) {
    return Math.min(height, (row + 1) * BLOCK);
  }

  /** Mean gray level of each block. */
  float[] means(byte[] pixels) {
    int[] sums = new int[blocks()];
    int[] counts = new int[blocks()];
    for (int y = 0; y < height(); y++) {
      int start = index(0, y / BLOCK);
      for (int column = 0; column < columns(); column++) {
        int sum = 0;
        for (int x = left(column); x < right(column); x++) {
          sum += pixels[y * width() + x] & 0xFF;
        }
        sums[start + column] += sum;
        counts[start + column] += right(column) - left(column);
      }
    }
    float[] means = new float[sums.length];
    for (int block = 0; block < means.length; block++) {
      means[block] = (float) sums[block] / counts[block];
    }
    return means;
  }
}
