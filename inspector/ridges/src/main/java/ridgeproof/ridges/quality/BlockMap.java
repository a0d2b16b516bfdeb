package ridgeproof.ridges.quality;

import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.StructureTensorField;
import ridgeproof.ridges.map.XSignatureField;

/** Values of one print block by block, for drawing over the image. */
public final class BlockMap {

  private final BlockGrid grid;
  private final double scale;
  private final StructureTensorField tensors;
  private final XSignatureField signatures;
  private final boolean[] print;
  private final boolean[] ridges;

  BlockMap(RidgeMaps maps, RidgeRegion region) {
    grid = maps.grid();
    scale = maps.scale();
    tensors = maps.tensors();
    signatures = maps.signatures();
    print = region.mask();
    ridges = new boolean[print.length];
    for (int block : region.blocks()) {
      ridges[block] = maps.isRidge(block);
    }
  }

  /** Blocks in a row. */
  public int columns() {
    return grid.columns();
  }

  /** Rows of blocks. */
  public int rows() {
    return grid.rows();
  }

  /** Side of a block, pixels of the image. */
  public double blockPixels() {
    return BlockGrid.BLOCK / scale;
  }

  /** Whether a block belongs to the print. */
  public boolean isPrint(int column, int row) {
    return print[grid.index(column, row)];
  }

  /** Whether it also shows clear ridges. */
  public boolean isRidge(int column, int row) {
    return ridges[grid.index(column, row)];
  }

  /** Direction along the ridges, degrees clockwise from straight right as seen, 0..180. */
  public double orientation(int column, int row) {
    return Math.toDegrees(tensors.orientation(grid.index(column, row)));
  }

  /** Orientation certainty, 0..1. */
  public double certainty(int column, int row) {
    return tensors.coherence(grid.index(column, row));
  }

  /** Local clarity, 0..1. */
  public double clarity(int column, int row) {
    return signatures.clarity(grid.index(column, row));
  }

  /** Ridge period, pixels of the image; 0 where there is none. */
  public double period(int column, int row) {
    return signatures.period(grid.index(column, row)) / scale;
  }

  /** Part of a period that is ridge, 0..1. */
  public double ridgeShare(int column, int row) {
    return signatures.ridgeShare(grid.index(column, row));
  }
}
