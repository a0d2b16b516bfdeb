package ridgeproof.ridges.map;

/**
 * Ridge flow of each block by its averaged squared gradients (Kass and Witkin 1987; Bazen and Gerez
 * 2002): orientation and coherence. The coherence is the orientation certainty level of ISO/IEC
 * 29794-4 (from memory) up to its scale.
 */
public final class StructureTensorField {

  private final BlockGrid grid;

  /** Sums over a block: differences and products of gradients, smoothed over 3 x 3 blocks. */
  private final float[] real;

  private final float[] imaginary;
  private final float[] energy;

  /** Of the block alone, for where prints end. */
  private final float[] ownEnergy;

  private StructureTensorField(BlockGrid grid, float[] real, float[] imaginary, float[] ownEnergy) {
    this.grid = grid;
    this.real = Smoothing.binomial(real, grid);
    this.imaginary = Smoothing.binomial(imaginary, grid);
    this.energy = Smoothing.binomial(ownEnergy, grid);
    this.ownEnergy = ownEnergy;
  }

  static StructureTensorField of(byte[] source, BlockGrid grid) {
    // Specks of ink and paper are finer than ridges and would drown their direction.
    byte[] pixels = Smoothing.pixels(source, grid.width(), grid.height());
    float[] real = new float[grid.blocks()];
    float[] imaginary = new float[grid.blocks()];
    float[] energy = new float[grid.blocks()];
    int width = grid.width();
    for (int y = 1; y < grid.height() - 1; y++) {
      int rowStart = grid.index(0, y / BlockGrid.BLOCK);
      for (int column = 0; column < grid.columns(); column++) {
        int differences = 0;
        int products = 0;
        int squares = 0;
        int start = Math.max(1, grid.left(column));
        int end = Math.min(width - 1, grid.right(column));
        if (start >= end) {
          continue;
        }
        // Sums and differences of a column of three are those of the next pixels too.
        int at = y * width + start;
        int sumBefore = sum(pixels, at - 1, width);
        int sumHere = sum(pixels, at, width);
        int stepBefore = step(pixels, at - 1, width);
        int stepHere = step(pixels, at, width);
        for (int x = start; x < end; x++) {
          at++;
          int sumNext = sum(pixels, at, width);
          int stepNext = step(pixels, at, width);
          int gx = sumNext - sumBefore;
          int gy = stepBefore + 2 * stepHere + stepNext;
          differences += gx * gx - gy * gy;
          products += 2 * gx * gy;
          squares += gx * gx + gy * gy;
          sumBefore = sumHere;
          sumHere = sumNext;
          stepBefore = stepHere;
          stepHere = stepNext;
        }
        real[rowStart + column] += differences;
        imaginary[rowStart + column] += products;
        energy[rowStart + column] += squares;
      }
    }
    return new StructureTensorField(grid, real, imaginary, energy);
  }

  private static int sum(byte[] pixels, int at, int width) {
    return (pixels[at - width] & 0xFF) + 2 * (pixels[at] & 0xFF) + (pixels[at + width] & 0xFF);
  }

  private static int step(byte[] pixels, int at, int width) {
    return (pixels[at + width] & 0xFF) - (pixels[at - width] & 0xFF);
  }

  /** Along the ridges, radians from the x axis towards the y axis (down), in [0, pi). */
  public double orientation(int block) {
    double across = 0.5 * Math.atan2(imaginary[block], real[block]);
    double along = across + Math.PI / 2;
    return along < 0 ? along + Math.PI : along >= Math.PI ? along - Math.PI : along;
  }

  /** 0 no direction .. 1 one direction only. */
  public double coherence(int block) {
    return energy[block] <= 0 ? 0 : Math.hypot(real[block], imaginary[block]) / energy[block];
  }

  /** Root mean square gradient, gray levels for each pixel. */
  double gradient(int block) {
    // A Sobel mask weighs eight pixels at two pixels' distance.
    return Math.sqrt(energy[block] / (BlockGrid.BLOCK * BlockGrid.BLOCK)) / 8;
  }

  /** The same of the block alone, without its neighbours. */
  double ownGradient(int block) {
    return Math.sqrt(ownEnergy[block] / (BlockGrid.BLOCK * BlockGrid.BLOCK)) / 8;
  }

  BlockGrid grid() {
    return grid;
  }
}
