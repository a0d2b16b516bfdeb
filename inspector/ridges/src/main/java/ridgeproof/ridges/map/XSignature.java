package ridgeproof.ridges.map;

/** The gray profile across the ridges around one point; reused from block to block. */
final class XSignature {

  /** Pixels across the ridges: three to five periods. */
  static final int LENGTH = 40;

  /** Pixels along the ridges. */
  static final int BREADTH = 16;

  /** Pixels from the middle that no sample lies beyond: half a diagonal. */
  private static final int REACH = 23;

  private static final int FIRST_LAG = 4;
  private static final int LAST_LAG = 20;
  private static final int FREQUENCIES = 16;

  /** Weight of the neighbours of the strongest frequency in ISO/IEC 29794-4 (from memory). */
  private static final double NEIGHBOUR_WEIGHT = 0.3;

  /** Gray levels below which a profile is grain of the paper. */
  private static final double MIN_CONTRAST = 6;

  private static final double[] COSINES = new double[LENGTH];

  static {
    for (int i = 0; i < LENGTH; i++) {
      COSINES[i] = Math.cos(2 * Math.PI * i / LENGTH);
    }
  }

  private final byte[] pixels;
  private final int width;
  private final int height;
  private final int[] samples = new int[LENGTH * BREADTH];
  private final double[] gray = new double[LENGTH];
  private final double[] profile = new double[LENGTH];
  private final double[] squares = new double[LENGTH + 1];
  private final double[] crossings = new double[LENGTH];
  private double period;
  private double periodicity;
  private double threshold;
  private double light;
  private double dark;

  XSignature(byte[] pixels, int width, int height) {
    this.pixels = pixels;
    this.width = width;
    this.height = height;
  }

  void sample(double centreX, double centreY, double alongRidges) {
    double tx = Math.cos(alongRidges);
    double ty = Math.sin(alongRidges);
    int stepX = (int) Math.round(tx * 65536);
    int stepY = (int) Math.round(ty * 65536);
    boolean inside =
        centreX >= REACH && centreY >= REACH && centreX < width - REACH && centreY < height - REACH;
    for (int u = 0; u < LENGTH; u++) {
      double du = u - (LENGTH - 1) / 2.0;
      int x = (int) Math.round((centreX - ty * du - tx * BREADTH / 2) * 65536);
      int y = (int) Math.round((centreY + tx * du - ty * BREADTH / 2) * 65536);
      int sum = inside ? row(u, x, y, stepX, stepY) : rowAtEdge(u, x, y, stepX, stepY);
      gray[u] = (double) sum / BREADTH;
    }
    removeTrend();
    findLevels();
    period = 0;
    periodicity = 0;
    if (contrast() >= MIN_CONTRAST) {
      findPeriod();
    }
  }

  private int row(int u, int startX, int startY, int stepX, int stepY) {
    int sum = 0;
    int x = startX;
    int y = startY;
    for (int v = 0; v < BREADTH; v++) {
      int value = pixels[(y >> 16) * width + (x >> 16)] & 0xFF;
      samples[u * BREADTH + v] = value;
      sum += value;
      x += stepX;
      y += stepY;
    }
    return sum;
  }

  /** The same where it may reach beyond the image, whose edge repeats. */
  private int rowAtEdge(int u, int startX, int startY, int stepX, int stepY) {
    int sum = 0;
    int x = startX;
    int y = startY;
    for (int v = 0; v < BREADTH; v++) {
      int px = Math.max(0, Math.min(width - 1, x >> 16));
      int py = Math.max(0, Math.min(height - 1, y >> 16));
      int value = pixels[py * width + px] & 0xFF;
      samples[u * BREADTH + v] = value;
      sum += value;
      x += stepX;
      y += stepY;
    }
    return sum;
  }

  private void removeTrend() {
    double mean = 0;
    double slope = 0;
    double squares = 0;
    for (int u = 0; u < LENGTH; u++) {
      double t = u - (LENGTH - 1) / 2.0;
      mean += gray[u];
      slope += t * gray[u];
      squares += t * t;
    }
    mean /= LENGTH;
    slope /= squares;
    for (int u = 0; u < LENGTH; u++) {
      profile[u] = gray[u] - mean - slope * (u - (LENGTH - 1) / 2.0);
    }
  }

  private double correlation(int lag) {
    double product = 0;
    for (int u = 0; u + lag < LENGTH; u++) {
      product += profile[u] * profile[u + lag];
    }
    double head = squares[LENGTH - lag];
    double tail = squares[LENGTH] - squares[lag];
    return head <= 0 || tail <= 0 ? 0 : product / Math.sqrt(head * tail);
  }

  private void findPeriod() {
    squares[0] = 0;
    for (int u = 0; u < LENGTH; u++) {
      squares[u + 1] = squares[u] + profile[u] * profile[u];
    }
    boolean wasNegative = false;
    double before = correlation(FIRST_LAG - 2);
    double here = correlation(FIRST_LAG - 1);
    for (int lag = FIRST_LAG - 1; lag < LAST_LAG; lag++) {
      double after = correlation(lag + 1);
      wasNegative |= here < 0;
      if (wasNegative && here > 0 && here >= before && here > after) {
        double curve = before - 2 * here + after;
        double shift = curve >= 0 ? 0 : 0.5 * (before - after) / curve;
        period = lag + shift;
        periodicity = here;
        return;
      }
      before = here;
      here = after;
    }
  }

  private void findLevels() {
    double above = 0;
    double below = 0;
    int lighter = 0;
    for (int u = 0; u < LENGTH; u++) {
      if (profile[u] > 0) {
        above += profile[u];
        lighter++;
      } else {
        below += profile[u];
      }
    }
    light = lighter == 0 ? 0 : above / lighter;
    dark = lighter == LENGTH ? 0 : below / (LENGTH - lighter);
    threshold = (light + dark) / 2;
  }

  double period() {
    return period;
  }

  double periodicity() {
    return periodicity;
  }

  double contrast() {
    return light - dark;
  }

  double level() {
    double mean = 0;
    for (double value : gray) {
      mean += value;
    }
    return mean / LENGTH + threshold;
  }

  double ridgeShare() {
    int whole = period <= 0 ? LENGTH : (int) Math.round(Math.floor(LENGTH / period) * period);
    int start = (LENGTH - whole) / 2;
    int ridge = 0;
    for (int u = start; u < start + whole; u++) {
      ridge += profile[u] < threshold ? 1 : 0;
    }
    return (double) ridge / whole;
  }

  double clarity() {
    int wrongRidge = 0;
    int wrongValley = 0;
    int ridges = 0;
    for (int u = 0; u < LENGTH; u++) {
      boolean ridge = profile[u] < threshold;
      ridges += ridge ? 1 : 0;
      // The trend belongs to the paper, not to the ridges, and goes into the level compared with.
      double limit = gray[u] - profile[u] + threshold;
      for (int v = 0; v < BREADTH; v++) {
        boolean dark = samples[u * BREADTH + v] < limit;
        wrongRidge += ridge && !dark ? 1 : 0;
        wrongValley += !ridge && dark ? 1 : 0;
      }
    }
    if (ridges == 0 || ridges == LENGTH) {
      return 0;
    }
    double overlap =
        (double) wrongRidge / (ridges * BREADTH)
            + (double) wrongValley / ((LENGTH - ridges) * BREADTH);
    return Math.max(0, 1 - overlap);
  }

  /** Mean step from pixel to pixel along the ridges, of the contrast. */
  double grain() {
    long steps = 0;
    for (int u = 0; u < LENGTH; u++) {
      int at = u * BREADTH;
      for (int v = 1; v < BREADTH; v++) {
        steps += Math.abs(samples[at + v] - samples[at + v - 1]);
      }
    }
    return contrast() <= 0 ? 0 : steps / (LENGTH * (BREADTH - 1) * contrast());
  }

  double dominance() {
    double[] amplitudes = new double[FREQUENCIES + 2];
    double sum = 0;
    int strongest = 1;
    for (int k = 1; k <= FREQUENCIES; k++) {
      double re = 0;
      double im = 0;
      int cosine = 0;
      int sine = LENGTH / 4;
      for (int u = 0; u < LENGTH; u++) {
        re += profile[u] * COSINES[cosine];
        im += profile[u] * COSINES[sine];
        cosine += cosine + k < LENGTH ? k : k - LENGTH;
        sine += sine + k < LENGTH ? k : k - LENGTH;
      }
      amplitudes[k] = Math.sqrt(re * re + im * im);
      sum += amplitudes[k];
      strongest = amplitudes[k] > amplitudes[strongest] ? k : strongest;
    }
    double neighbours = amplitudes[strongest - 1] + amplitudes[strongest + 1];
    return sum <= 0 ? 0 : (amplitudes[strongest] + NEIGHBOUR_WEIGHT * neighbours) / sum;
  }

  double unevenness() {
    int count = 0;
    boolean firstFalls = false;
    for (int u = 1; u < LENGTH; u++) {
      double a = profile[u - 1] - threshold;
      double b = profile[u] - threshold;
      if (a < 0 != b < 0) {
        firstFalls = count == 0 ? b < 0 : firstFalls;
        crossings[count++] = u - 1 + a / (a - b);
      }
    }
    int first = firstFalls ? 0 : 1;
    double sum = 0;
    double squares = 0;
    int ratios = 0;
    for (int i = first; i + 2 < count; i += 2) {
      double ridge = crossings[i + 1] - crossings[i];
      double valley = crossings[i + 2] - crossings[i + 1];
      double ratio = ridge / Math.max(0.5, valley);
      sum += ratio;
      squares += ratio * ratio;
      ratios++;
    }
    if (ratios < 2) {
      return 0;
    }
    double mean = sum / ratios;
    return Math.sqrt(Math.max(0, squares / ratios - mean * mean));
  }

  double edge() {
    double steepest = 0;
    double second = 0;
    double third = 0;
    for (int u = 1; u < LENGTH; u++) {
      double slope = Math.abs(profile[u] - profile[u - 1]);
      if (slope > steepest) {
        third = second;
        second = steepest;
        steepest = slope;
      } else if (slope > second) {
        third = second;
        second = slope;
      } else if (slope > third) {
        third = slope;
      }
    }
    // The third steepest of several edges stands for all without being a single speck.
    return third <= 0 ? 0 : contrast() / third;
  }
}
