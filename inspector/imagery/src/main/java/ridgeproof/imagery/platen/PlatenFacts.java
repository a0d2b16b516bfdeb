package ridgeproof.imagery.platen;

import java.util.List;
import java.util.OptionalDouble;
import ridgeproof.imagery.GrayImage;

/**
 * What one image shows of the platen.
 *
 * @param width cells across
 * @param height cells down
 * @param prints where prints lie, in cells; nothing is known of the platen there
 * @param light mean gray level of the bare platen in nine parts of the image, row by row; negative
 *     where a part is covered
 * @param stains cells outside {@code prints} that are darker or rougher than the bare platen
 * @param deadRows rows of pixels that stand out from both neighbors over the whole width
 * @param deadColumns columns of pixels that do so over the whole height
 * @param ghostShare share of the bare cells that show a faint pattern, 0 to 1
 */
public record PlatenFacts(
    int width,
    int height,
    List<CellBox> prints,
    List<Integer> light,
    List<Integer> stains,
    List<Integer> deadRows,
    List<Integer> deadColumns,
    double ghostShare) {

  /** The side of a cell: 16 pixels at 500 ppi. */
  public static final double CELL_MM = 0.8128;

  /** Parts of the image across and down for which there is a gray level. */
  public static final int LIGHT_PARTS = 3;

  public PlatenFacts {
    prints = List.copyOf(prints);
    light = List.copyOf(light);
    stains = List.copyOf(stains);
    deadRows = List.copyOf(deadRows);
    deadColumns = List.copyOf(deadColumns);
  }

  /**
   * Measures an image.
   *
   * @param ppi pixels per inch, above 0
   */
  public static PlatenFacts of(GrayImage image, double ppi) {
    return new PlatenMeasurement(image, ppi).measure();
  }

  /** Whether a print covers the cell. */
  public boolean covers(int column, int row) {
    return prints.stream().anyMatch(box -> box.contains(column, row));
  }

  /** How wide the widest print is, in millimeters; empty without a print. */
  public OptionalDouble printWidthMm() {
    return prints.stream().mapToDouble(box -> (box.right() - box.left()) * CELL_MM).max();
  }

  /** The gray level of the brightest part less that of the darkest; empty for fewer than two. */
  public OptionalDouble unevenness() {
    List<Integer> seen = light.stream().filter(gray -> gray >= 0).toList();
    if (seen.size() < 2) {
      return OptionalDouble.empty();
    }
    int brightest = seen.stream().mapToInt(gray -> gray).max().orElseThrow();
    int darkest = seen.stream().mapToInt(gray -> gray).min().orElseThrow();
    return OptionalDouble.of(brightest - darkest);
  }
}
