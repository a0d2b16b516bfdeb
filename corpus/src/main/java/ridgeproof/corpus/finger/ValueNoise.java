package ridgeproof.corpus.finger;

/**
 * Smooth noise: random values on a lattice, interpolated between its nodes. A lattice is drawn for
 * each image, so nothing repeats.
 */
public final class ValueNoise {

  private ValueNoise() {}

  /** Signed bytes, -127 to 127, with patches about {@code cell} pixels wide. */
  public static byte[] of(int width, int height, int cell, SeededRandom dice) {
    int columns = width / cell + 2;
    int rows = height / cell + 2;
    byte[] nodes = new byte[columns * rows + 8];
    for (int i = 0; i < columns * rows; i += 8) {
      long bits = dice.next();
      for (int k = 0; k < 8; k++) {
        nodes[i + k] = (byte) (bits >> (8 * k));
      }
    }
    int[] share = new int[cell];
    for (int i = 0; i < cell; i++) {
      double t = i / (double) cell;
      share[i] = (int) (256 * t * t * (3 - 2 * t));
    }
    byte[] out = new byte[width * height];
    int[] line = new int[columns];
    for (int y = 0; y < height; y++) {
      int above = y / cell * columns;
      int down = share[y % cell];
      for (int c = 0; c < columns; c++) {
        line[c] = (nodes[above + c] << 8) + down * (nodes[above + columns + c] - nodes[above + c]);
      }
      int at = y * width;
      for (int c = 0, x = 0; x < width; c++) {
        int left = line[c];
        int rise = (line[c + 1] - left) >> 8;
        int last = Math.min(width, x + cell);
        for (int k = 0; x < last; k++, x++) {
          out[at + x] = (byte) ((left + share[k] * rise) >> 8);
        }
      }
    }
    return out;
  }
}
