package ridgeproof.ridges.map;

import java.util.Arrays;

/**
 * Averages the ridges of one print along their own direction, so that pores, grain and specks do
 * not count as minutiae (after the oriented smoothing of O'Gorman and Nickerson 1989).
 */
public final class RidgeSmoothing {

  /** Pixels each way: two thirds of a ridge period more than a speck, far less than a curve. */
  private static final int REACH = 5;

  private RidgeSmoothing() {}

  /** The rectangle with the shown blocks smoothed and everything else as paper. */
  public static byte[] cut(
      RidgeMaps maps, boolean[] shown, int left, int top, int width, int height, byte paper) {
    BlockGrid grid = maps.grid();
    byte[] pixels = Smoothing.pixels(maps.pixels(), grid.width(), left, top, width, height);
    byte[] result = new byte[width * height];
    Arrays.fill(result, paper);
    int[] offsetX = new int[2 * REACH + 1];
    int[] offsetY = new int[2 * REACH + 1];
    int[] offset = new int[2 * REACH + 1];
    for (int row = top / BlockGrid.BLOCK; row * BlockGrid.BLOCK < top + height; row++) {
      for (int column = left / BlockGrid.BLOCK; column * BlockGrid.BLOCK < left + width; column++) {
        int block = grid.index(column, row);
        if (shown[block]) {
          double direction = maps.tensors().orientation(block);
          for (int k = -REACH; k <= REACH; k++) {
            offsetX[k + REACH] = (int) Math.round(k * Math.cos(direction));
            offsetY[k + REACH] = (int) Math.round(k * Math.sin(direction));
            offset[k + REACH] = offsetY[k + REACH] * width + offsetX[k + REACH];
          }
          int startY = Math.max(0, grid.top(row) - top);
          int startX = Math.max(0, grid.left(column) - left);
          int endY = Math.min(height, grid.bottom(row) - top);
          int endX = Math.min(width, grid.right(column) - left);
          boolean inside =
              startX >= REACH && startY >= REACH && endX <= width - REACH && endY <= height - REACH;
          for (int y = startY; y < endY; y++) {
            for (int x = startX; x < endX; x++) {
              result[y * width + x] =
                  inside
                      ? average(pixels, y * width + x, offset)
                      : average(pixels, width, height, x, y, offsetX, offsetY);
            }
          }
        }
      }
    }
    return result;
  }

  private static byte average(byte[] pixels, int at, int[] offset) {
    int sum = 0;
    for (int step : offset) {
      sum += pixels[at + step] & 0xFF;
    }
    return (byte) (sum / offset.length);
  }

  /** The same where it may reach beyond the rectangle. */
  private static byte average(
      byte[] pixels, int width, int height, int x, int y, int[] offsetX, int[] offsetY) {
    int sum = 0;
    int count = 0;
    for (int k = 0; k < offsetX.length; k++) {
      int px = x + offsetX[k];
      int py = y + offsetY[k];
      if (px >= 0 && py >= 0 && px < width && py < height) {
        sum += pixels[py * width + px] & 0xFF;
        count++;
      }
    }
    return (byte) (sum / count);
  }
}
