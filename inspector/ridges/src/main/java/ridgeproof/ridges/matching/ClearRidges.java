package ridgeproof.ridges.matching;

import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeMask;
import ridgeproof.ridges.map.RidgeRegion;

/** Tells which places of a print lie among ridges, and which among ridges clear enough to trust. */
final class ClearRidges {

  /** Of a block and its eight neighbors, how many have ridges where a minutia can be. */
  private static final int AMONG = 5;

  /** Blocks to the border of the print: ridges end there because the print does. */
  private static final double BORDER = 1.5;

  private static final double MIN_COHERENCE = 0.4;
  private static final double MIN_CLARITY = 0.4;

  private final RidgeMaps maps;
  private final boolean[] inside;
  private final boolean[] inner;

  ClearRidges(RidgeMaps maps, RidgeRegion print) {
    this.maps = maps;
    BlockGrid grid = maps.grid();
    inside = print.mask();
    inner = RidgeMask.erode(RidgeMask.fillHoles(inside, grid, grid.blocks()), grid, BORDER);
  }

  /** Whether there are ridges around a place, not a hole, a word, specks or the end of a crease. */
  boolean surround(Minutia minutia) {
    int column = column(minutia);
    int row = row(minutia);
    int count = 0;
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        boolean there = maps.grid().contains(column + dx, row + dy);
        int block = there ? maps.grid().index(column + dx, row + dy) : 0;
        count += there && inside[block] && maps.isRidge(block) ? 1 : 0;
      }
    }
    return count >= AMONG;
  }

  /** Whether a minutia there is likely to be found again in another impression. */
  boolean support(Minutia minutia) {
    int block = maps.grid().index(column(minutia), row(minutia));
    return inner[block]
        && maps.tensors().coherence(block) > MIN_COHERENCE
        && maps.signatures().clarity(block) > MIN_CLARITY
        && surround(minutia);
  }

  /** The share of the print whose ridges run in one direction in each place, 0 to 1. */
  double share() {
    int print = 0;
    int clear = 0;
    for (int block = 0; block < inside.length; block++) {
      if (inside[block]) {
        print++;
        clear += maps.tensors().coherence(block) > MIN_COHERENCE ? 1 : 0;
      }
    }
    return print == 0 ? 0 : (double) clear / print;
  }

  private int column(Minutia minutia) {
    int column = (int) (minutia.x() * maps.scale() / BlockGrid.BLOCK);
    return Math.max(0, Math.min(maps.grid().columns() - 1, column));
  }

  private int row(Minutia minutia) {
    int row = (int) (minutia.y() * maps.scale() / BlockGrid.BLOCK);
    return Math.max(0, Math.min(maps.grid().rows() - 1, row));
  }
}
