package ridgeproof.imagery.platen;

/**
 * Cells from {@code left} and {@code top} on, up to but without {@code right} and {@code bottom}.
 */
public record CellBox(int left, int top, int right, int bottom) {

  /** Whether the cell is inside. */
  public boolean contains(int column, int row) {
    return column >= left && column < right && row >= top && row < bottom;
  }

  /** The box of both. */
  CellBox with(int column, int row) {
    return new CellBox(
        Math.min(left, column),
        Math.min(top, row),
        Math.max(right, column + 1),
        Math.max(bottom, row + 1));
  }
}
