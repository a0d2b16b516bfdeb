package ridgeproof.imagery.measure;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;

/**
 * How far apart the ridges of an image lie.
 *
 * @param pixels median over the windows that show ridges, from the middle of a ridge to the next
 * @param spread difference of the upper and lower quartile, in pixels
 * @param windows how many windows of {@value RidgeWindow#SIDE} x {@value RidgeWindow#SIDE} pixels
 *     show ridges of one direction
 * @param coherentShare those among all windows of print that were looked at, 0 to 1
 */
public record RidgePeriod(double pixels, double spread, int windows, double coherentShare) {

  private static final int BLOCKS = RidgeWindow.SIDE / ContrastBlocks.BLOCK;

  /** Of the 16 blocks of a window; a print has holes and creases. */
  private static final int MIN_PRINT_BLOCKS = 13;

  /** More windows make the median no better. */
  private static final int MAX_WINDOWS = 64;

  private record Place(int column, int row) {}

  static Optional<RidgePeriod> of(GrayImage image, ContrastBlocks grid) {
    List<Place> places = places(grid);
    int looked = Math.min(places.size(), MAX_WINDOWS);
    double[] periods = new double[looked];
    int found = 0;
    byte[] window = new byte[RidgeWindow.SIDE * RidgeWindow.SIDE];
    ByteBuffer pixels = image.asBuffer();
    for (int i = 0; i < looked; i++) {
      Place place = places.get((int) ((long) i * places.size() / looked));
      int start =
          place.row() * ContrastBlocks.BLOCK * image.width()
              + place.column() * ContrastBlocks.BLOCK;
      for (int y = 0; y < RidgeWindow.SIDE; y++) {
        pixels.get(start + y * image.width(), window, y * RidgeWindow.SIDE, RidgeWindow.SIDE);
      }
      OptionalDouble period = RidgeWindow.period(window);
      if (period.isPresent()) {
        periods[found++] = period.getAsDouble();
      }
    }
    if (found == 0) {
      return Optional.empty();
    }
    double[] sorted = Arrays.copyOf(periods, found);
    Arrays.sort(sorted);
    return Optional.of(
        new RidgePeriod(
            sorted[found / 2],
            sorted[found * 3 / 4] - sorted[found / 4],
            found,
            (double) found / looked));
  }

  /** The distance on the finger, where the image has so many pixels for each inch. */
  public double millimetres(double ppi) {
    return pixels / ppi * PixelDensity.MM_PER_INCH;
  }

  private static List<Place> places(ContrastBlocks grid) {
    List<Place> places = new ArrayList<>();
    for (int row = 0; row + BLOCKS <= grid.rows(); row += BLOCKS) {
      for (int column = 0; column + BLOCKS <= grid.columns(); column += BLOCKS) {
        if (printBlocks(grid, column, row) >= MIN_PRINT_BLOCKS) {
          places.add(new Place(column, row));
        }
      }
    }
    return places;
  }

  private static int printBlocks(ContrastBlocks grid, int left, int top) {
    int count = 0;
    for (int row = top; row < top + BLOCKS; row++) {
      for (int column = left; column < left + BLOCKS; column++) {
        count += grid.kindAt(column, row) == ContrastBlocks.Kind.BARE ? 0 : 1;
      }
    }
    return count;
  }
}
