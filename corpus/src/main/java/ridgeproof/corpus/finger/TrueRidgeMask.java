package ridgeproof.corpus.finger;

import java.util.BitSet;

/** Where an image shows ridges, known to the nearest square cell. */
public final class TrueRidgeMask {

  /** Side of a cell in pixels. */
  public static final int CELL_PX = 8;

  private final int columns;
  private final int rows;
  private final BitSet cells;

  private TrueRidgeMask(int columns, int rows, BitSet cells) {
    this.columns = columns;
    this.rows = rows;
    this.cells = cells;
  }

  /** True when the cell that holds this pixel shows ridges; false outside the image. */
  public boolean contains(double x, double y) {
    int column = (int) Math.floor(x / CELL_PX);
    int row = (int) Math.floor(y / CELL_PX);
    return column >= 0
        && row >= 0
        && column < columns
        && row < rows
        && cells.get(row * columns + column);
  }

  /** The area of the ridges in pixels. */
  public long areaPx() {
    return (long) cells.cardinality() * CELL_PX * CELL_PX;
  }

  /** Collects the cells of one mask. */
  public static final class Builder {

    private final int columns;
    private final int rows;
    private final BitSet cells = new BitSet();

    public Builder(int width, int height) {
      this.columns = (width + CELL_PX - 1) / CELL_PX;
      this.rows = (height + CELL_PX - 1) / CELL_PX;
    }

    /** Marks all cells whose corner lies in a rectangle of pixels. */
    public void mark(int left, int top, int right, int bottom) {
      for (int row = Math.max(0, top / CELL_PX); row < rows && row * CELL_PX < bottom; row++) {
        int first = row * columns + Math.max(0, left / CELL_PX);
        int last = row * columns + Math.min(columns, (right + CELL_PX - 1) / CELL_PX);
        if (first < last) {
          cells.set(first, last);
        }
      }
    }

    public TrueRidgeMask build() {
      return new TrueRidgeMask(columns, rows, (BitSet) cells.clone());
    }
  }
}
