package ridgeproof.ridges;

/**
 * Square blocks over an image at 500 ppi; the last column and row may be cut by its edge.
 *
 * @param width pixels
 * @param height pixels
 * @param columns blocks
 * @param rows blocks
 */
record BlockGrid(int width, int height, int columns, int rows) {

  /** Pixels; about one and a third ridge periods, so that the field follows a core closely. */
  static final int BLOCK = 12;

  static final double BLOCK_MM = BLOCK * WorkingResolution.MM_PER_PIXEL;
  static final double BLOCK_MM2 = BLOCK_MM * BLOCK_MM;

  static BlockGrid over(int width, int height) {
    return new BlockGrid(width, height, (width + BLOCK - 1) / BLOCK, (height + BLOCK - 1) / BLOCK);
  }

  int blocks() {
    return columns * rows;
  }

  int index(int column, int row) {
    return row * columns + column;
  }

  boolean contains(int column, int row) {
    return column >= 0 && row >= 0 && column < columns && row < rows;
  }

  int left(int column) {
    return column * BLOCK;
  }

  int right(int column) {
    return Math.min(width, (column + 1) * BLOCK);
  }

  int top(int row) {
    return row * BLOCK;
  }

  int bottom(int row) {
    return Math.min(height, (row + 1) * BLOCK);
  }
}
