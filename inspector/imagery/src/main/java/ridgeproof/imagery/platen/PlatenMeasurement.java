package ridgeproof.imagery.platen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import ridgeproof.imagery.GrayImage;

/** Measures the cells of one image: first what each shows, then which of them are prints. */
final class PlatenMeasurement {

  private static final int USUAL_PPI = 500;
  private static final int USUAL_CELL = 16;
  private static final int MIN_CELL = 4;

  /** Standard deviation in gray levels above which a cell is no bare platen. */
  private static final double MIN_MARK_DEVIATION = 8;

  /** Gray levels below the bare platen from which an even cell is a stain. */
  private static final double MIN_STAIN_DEPTH = 20;

  /** Cells of the smallest print, about 66 square millimeters; less is dirt. */
  private static final int MIN_PRINT_CELLS = 100;

  /** Deviation of the means of a cell's quarters of quarters: grain averages out, ridges do not. */
  private static final double MIN_GHOST_DEVIATION = 2.5;

  private static final int MAX_STAINS = 400;

  private static final int PARTS = PlatenFacts.LIGHT_PARTS * PlatenFacts.LIGHT_PARTS;

  private final GrayImage image;
  private final byte[] pixels;
  private final int cell;
  private final int columns;
  private final int rows;
  private final double[] mean;
  private final double[] deviation;
  private final double[] patternDeviation;

  PlatenMeasurement(GrayImage image, double ppi) {
    this.image = image;
    this.pixels = image.toArray();
    this.cell = Math.max(MIN_CELL, (int) Math.round(USUAL_CELL * ppi / USUAL_PPI));
    this.columns = Math.max(1, image.width() / cell);
    this.rows = Math.max(1, image.height() / cell);
    this.mean = new double[columns * rows];
    this.deviation = new double[columns * rows];
    this.patternDeviation = new double[columns * rows];
  }

  PlatenFacts measure() {
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        measureCell(column, row);
      }
    }
    List<CellBox> prints = prints();
    boolean[] bare = new boolean[mean.length];
    int bareCells = 0;
    for (int i = 0; i < bare.length; i++) {
      int column = i % columns;
      int row = i / columns;
      bare[i] = prints.stream().noneMatch(box -> box.contains(column, row));
      bareCells += bare[i] ? 1 : 0;
    }
    double[] ground = ground(bare);
    List<Integer> stains = new ArrayList<>();
    int ghosts = 0;
    for (int i = 0; i < bare.length; i++) {
      if (bare[i] && isStain(i, ground)) {
        stains.add(i);
      } else if (bare[i] && patternDeviation[i] >= MIN_GHOST_DEVIATION) {
        ghosts++;
      }
    }
    StandingOut lines = new StandingOut(pixels, image.width(), image.height());
    return new PlatenFacts(
        columns,
        rows,
        prints,
        light(bare, ground),
        stains.subList(0, Math.min(stains.size(), MAX_STAINS)),
        lines.rows(),
        lines.columns(),
        bareCells == 0 ? 0 : (double) ghosts / bareCells);
  }

  /** Small images have cells that reach beyond the edge. */
  private void measureCell(int column, int row) {
    int quarter = Math.max(1, cell / 4);
    long sum = 0;
    long squares = 0;
    int count = 0;
    double partSum = 0;
    double partSquares = 0;
    int parts = 0;
    int right = Math.min(image.width(), (column + 1) * cell);
    int bottom = Math.min(image.height(), (row + 1) * cell);
    for (int y = row * cell; y < bottom; y += quarter) {
      for (int x = column * cell; x < right; x += quarter) {
        int part = 0;
        int partCount = 0;
        for (int v = y; v < Math.min(bottom, y + quarter); v++) {
          int end = v * image.width() + Math.min(right, x + quarter);
          for (int i = v * image.width() + x; i < end; i++) {
            int gray = pixels[i] & 0xFF;
            part += gray;
            squares += gray * gray;
            partCount++;
          }
        }
        sum += part;
        count += partCount;
        double partMean = (double) part / partCount;
        partSum += partMean;
        partSquares += partMean * partMean;
        parts++;
      }
    }
    int at = row * columns + column;
    mean[at] = (double) sum / count;
    deviation[at] = Math.sqrt(Math.max(0, (double) squares / count - mean[at] * mean[at]));
    double partsMean = partSum / parts;
    patternDeviation[at] = Math.sqrt(Math.max(0, partSquares / parts - partsMean * partsMean));
  }

  /** The boxes of what hangs together and is large enough for a print, one cell wider all round. */
  private List<CellBox> prints() {
    boolean[] seen = new boolean[mean.length];
    List<CellBox> boxes = new ArrayList<>();
    for (int start = 0; start < mean.length; start++) {
      if (!seen[start] && isMarked(start)) {
        grow(start, seen, boxes);
      }
    }
    return boxes;
  }

  private void grow(int start, boolean[] seen, List<CellBox> boxes) {
    int[] waiting = new int[mean.length];
    int count = 0;
    waiting[count++] = start;
    seen[start] = true;
    CellBox box =
        new CellBox(start % columns, start / columns, start % columns + 1, start / columns + 1);
    for (int next = 0; next < count; next++) {
      int column = waiting[next] % columns;
      int row = waiting[next] / columns;
      box = box.with(column, row);
      for (int y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++) {
        for (int x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
          int neighbor = y * columns + x;
          if (!seen[neighbor] && isMarked(neighbor)) {
            seen[neighbor] = true;
            waiting[count++] = neighbor;
          }
        }
      }
    }
    if (count >= MIN_PRINT_CELLS) {
      boxes.add(
          new CellBox(
              Math.max(0, box.left() - 1),
              Math.max(0, box.top() - 1),
              Math.min(columns, box.right() + 1),
              Math.min(rows, box.bottom() + 1)));
    }
  }

  private boolean isMarked(int at) {
    return deviation[at] >= MIN_MARK_DEVIATION;
  }

  /**
   * @param ground gray level of the bare platen in each part
   */
  private boolean isStain(int at, double[] ground) {
    return isMarked(at) || mean[at] <= ground[partOf(at)] - MIN_STAIN_DEPTH;
  }

  private int partOf(int at) {
    return at / columns * PlatenFacts.LIGHT_PARTS / rows * PlatenFacts.LIGHT_PARTS
        + at % columns * PlatenFacts.LIGHT_PARTS / columns;
  }

  /** The median of each part, so that light that falls off is no stain. */
  private double[] ground(boolean[] bare) {
    double[] ground = new double[PARTS];
    for (int part = 0; part < PARTS; part++) {
      int wanted = part;
      double[] means =
          IntStream.range(0, bare.length)
              .filter(i -> bare[i] && partOf(i) == wanted)
              .mapToDouble(i -> mean[i])
              .sorted()
              .toArray();
      ground[part] = means.length == 0 ? 0 : means[means.length / 2];
    }
    return ground;
  }

  private List<Integer> light(boolean[] bare, double[] ground) {
    double[] sums = new double[PARTS];
    int[] counts = new int[PARTS];
    for (int i = 0; i < bare.length; i++) {
      if (bare[i] && !isStain(i, ground)) {
        sums[partOf(i)] += mean[i];
        counts[partOf(i)]++;
      }
    }
    List<Integer> light = new ArrayList<>();
    for (int part = 0; part < PARTS; part++) {
      light.add(counts[part] == 0 ? -1 : (int) Math.round(sums[part] / counts[part]));
    }
    return light;
  }
}
