package ridgeproof.ridges.map;

/** Smooths pixels, or one value for each block, over their neighbours. */
public final class Smoothing {

  private Smoothing() {}

  /** Weights 1 4 6 4 1 twice both ways: a standard deviation of 1.4 pixels; edges repeat. */
  public static byte[] pixels(byte[] source, int width, int height) {
    byte[] once = new byte[source.length];
    byte[] twice = new byte[source.length];
    along(source, once, width, height);
    across(once, twice, width, height);
    along(twice, once, width, height);
    across(once, twice, width, height);
    return twice;
  }

  /** The same of a rectangle cut out. */
  static byte[] pixels(byte[] source, int stride, int left, int top, int width, int height) {
    byte[] cut = new byte[width * height];
    for (int y = 0; y < height; y++) {
      System.arraycopy(source, (top + y) * stride + left, cut, y * width, width);
    }
    return pixels(cut, width, height);
  }

  private static void along(byte[] from, byte[] to, int width, int height) {
    for (int y = 0; y < height; y++) {
      int start = y * width;
      for (int x = 0; x < width; x++) {
        int at = start + x;
        int sum;
        if (x >= 2 && x < width - 2) {
          sum =
              (from[at - 2] & 0xFF)
                  + (from[at + 2] & 0xFF)
                  + 4 * ((from[at - 1] & 0xFF) + (from[at + 1] & 0xFF))
                  + 6 * (from[at] & 0xFF);
        } else {
          sum =
              (from[start + Math.max(0, x - 2)] & 0xFF)
                  + (from[start + Math.min(width - 1, x + 2)] & 0xFF)
                  + 4 * (from[start + Math.max(0, x - 1)] & 0xFF)
                  + 4 * (from[start + Math.min(width - 1, x + 1)] & 0xFF)
                  + 6 * (from[at] & 0xFF);
        }
        to[at] = (byte) ((sum + 8) >> 4);
      }
    }
  }

  private static void across(byte[] from, byte[] to, int width, int height) {
    for (int y = 0; y < height; y++) {
      int far = Math.max(0, y - 2) * width;
      int near = Math.max(0, y - 1) * width;
      int here = y * width;
      int next = Math.min(height - 1, y + 1) * width;
      int last = Math.min(height - 1, y + 2) * width;
      for (int x = 0; x < width; x++) {
        int sum =
            (from[far + x] & 0xFF)
                + (from[last + x] & 0xFF)
                + 4 * ((from[near + x] & 0xFF) + (from[next + x] & 0xFF))
                + 6 * (from[here + x] & 0xFF);
        to[here + x] = (byte) ((sum + 8) >> 4);
      }
    }
  }

  /** Weights 1 2 1 both ways, summing to 1; edges repeat. */
  static float[] binomial(float[] values, BlockGrid grid) {
    int columns = grid.columns();
    int rows = grid.rows();
    float[] across = new float[values.length];
    for (int row = 0; row < rows; row++) {
      int start = row * columns;
      for (int column = 0; column < columns; column++) {
        float left = values[start + Math.max(0, column - 1)];
        float right = values[start + Math.min(columns - 1, column + 1)];
        across[start + column] = (left + 2 * values[start + column] + right) / 4;
      }
    }
    float[] result = new float[values.length];
    for (int row = 0; row < rows; row++) {
      int above = Math.max(0, row - 1) * columns;
      int below = Math.min(rows - 1, row + 1) * columns;
      int start = row * columns;
      for (int column = 0; column < columns; column++) {
        result[start + column] =
            (across[above + column] + 2 * across[start + column] + across[below + column]) / 4;
      }
    }
    return result;
  }
}
