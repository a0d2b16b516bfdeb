package ridgeproof.corpus.finger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The ridge pattern of a finger as a lattice of coupled oscillators.
 *
 * <p>A fingerprint is an AM-FM wave whose phase carries one spiral for each minutia (Larkin and
 * Fletcher, "A coherent framework for fingerprint analysis: are fingerprints holograms?", Optics
 * Express 15(14), 2007). Cappelli et al. (ICPR 2000) let the pattern grow by filtering an image
 * again and again with Gabor filters tuned to the local orientation and period. Here the same
 * iteration runs on the phase itself: each node holds a complex amplitude, and takes on what its
 * eight neighbours foretell for it, each turned by the local wave vector over the distance between
 * them. Where no smooth phase can follow the orientation and period asked for, spirals remain;
 * these are the minutiae. Both papers from memory.
 */
final class PhaseLattice {

  private static final int[] RIGHT = {1, 0, 1, -1};
  private static final int[] DOWN = {0, 1, 1, 1};

  private static final double TURN = 2 * Math.PI;

  private final WaveField waves;
  private final int columns;
  private final int rows;
  private final float[] real;
  private final float[] imaginary;
  private final float[][] turnCos = new float[4][];
  private final float[][] turnSin = new float[4][];
  private final float[][] expected = new float[4][];
  private final float[][] flip = new float[4][];
  private final float[] phases;

  PhaseLattice(WaveField waves, SeededRandom dice, int seeds, int rounds) {
    this.waves = waves;
    this.columns = waves.columns;
    this.rows = waves.rows;
    this.real = new float[columns * rows];
    this.imaginary = new float[columns * rows];
    for (int edge = 0; edge < 4; edge++) {
      tuneEdges(edge);
    }
    grow(dice, seeds);
    for (int round = 0; round < rounds; round++) {
      relax();
    }
    this.phases = new float[columns * rows];
    for (int node = 0; node < phases.length; node++) {
      phases[node] = (float) StrictMath.atan2(imaginary[node], real[node]);
    }
  }

  private void tuneEdges(int edge) {
    int nodes = columns * rows;
    float[] cos = turnCos[edge] = new float[nodes];
    float[] sin = turnSin[edge] = new float[nodes];
    float[] phases = expected[edge] = new float[nodes];
    float[] signs = flip[edge] = new float[nodes];
    float right = RIGHT[edge] * WaveField.SPACING;
    float down = DOWN[edge] * WaveField.SPACING;
    for (int row = 0; row + DOWN[edge] < rows; row++) {
      int first = edge == 3 ? 1 : 0;
      int last = columns - Math.max(0, RIGHT[edge]);
      for (int column = first; column < last; column++) {
        int from = row * columns + column;
        int to = from + DOWN[edge] * columns + RIGHT[edge];
        float dot = waves.kx[from] * waves.kx[to] + waves.ky[from] * waves.ky[to];
        float sign = dot < 0 ? -1 : 1;
        float phase =
            0.5f
                * ((waves.kx[from] + sign * waves.kx[to]) * right
                    + (waves.ky[from] + sign * waves.ky[to]) * down);
        float norm = waves.kx[from] * waves.kx[from] + waves.ky[from] * waves.ky[from];
        float weight = dot * dot / (norm * norm) * (edge < 2 ? 1f : 0.7f);
        cos[from] = weight * TrigTables.cos(phase);
        sin[from] = weight * TrigTables.sin(phase);
        phases[from] = phase;
        signs[from] = sign;
      }
    }
  }

  /** Lets the pattern spread from a few seeds over ragged fronts that meet where they may. */
  private void grow(SeededRandom dice, int seeds) {
    int nodes = columns * rows;
    boolean[] queued = new boolean[nodes];
    int[] front = new int[nodes];
    int size = 0;
    for (int i = 0; i < seeds; i++) {
      int node = dice.below(nodes);
      float phase = (float) dice.between(0, 2 * Math.PI);
      real[node] = TrigTables.cos(phase);
      imaginary[node] = TrigTables.sin(phase);
      if (!queued[node]) {
        queued[node] = true;
        front[size++] = node;
      }
    }
    while (size > 0) {
      int pick = dice.below(size);
      int node = front[pick];
      front[pick] = front[--size];
      if (real[node] == 0 && imaginary[node] == 0) {
        settle(node);
      }
      int row = node / columns;
      int column = node % columns;
      for (int edge = 0; edge < 8; edge++) {
        int sign = edge < 4 ? 1 : -1;
        int r = row + sign * DOWN[edge & 3];
        int c = column + sign * RIGHT[edge & 3];
        if (r >= 0 && r < rows && c >= 0 && c < columns && !queued[r * columns + c]) {
          queued[r * columns + c] = true;
          front[size++] = r * columns + c;
        }
      }
    }
  }

  private void settle(int node) {
    int row = node / columns;
    int column = node % columns;
    float re = 0;
    float im = 0;
    for (int edge = 0; edge < 4; edge++) {
      int step = DOWN[edge] * columns + RIGHT[edge];
      int c = column + RIGHT[edge];
      if (row + DOWN[edge] < rows && c >= 0 && c < columns) {
        float sign = flip[edge][node];
        float otherIm = sign * imaginary[node + step];
        re += real[node + step] * turnCos[edge][node] + otherIm * turnSin[edge][node];
        im += otherIm * turnCos[edge][node] - real[node + step] * turnSin[edge][node];
      }
      c = column - RIGHT[edge];
      if (row - DOWN[edge] >= 0 && c >= 0 && c < columns) {
        int from = node - step;
        re += real[from] * turnCos[edge][from] - imaginary[from] * turnSin[edge][from];
        im +=
            flip[edge][from]
                * (real[from] * turnSin[edge][from] + imaginary[from] * turnCos[edge][from]);
      }
    }
    float size = (float) Math.sqrt(re * re + im * im) + 1e-9f;
    real[node] = re / size;
    imaginary[node] = im / size;
  }

  private void relax() {
    int nodes = columns * rows;
    float[] re = new float[nodes];
    float[] im = new float[nodes];
    for (int edge = 0; edge < 4; edge++) {
      float[] cos = turnCos[edge];
      float[] sin = turnSin[edge];
      float[] signs = flip[edge];
      int step = DOWN[edge] * columns + RIGHT[edge];
      // Edges that would leave the lattice have zero weight.
      for (int from = 0; from < nodes - step; from++) {
        int to = from + step;
        float sign = signs[from];
        float toIm = sign * imaginary[to];
        re[from] += real[to] * cos[from] + toIm * sin[from];
        im[from] += toIm * cos[from] - real[to] * sin[from];
        re[to] += real[from] * cos[from] - imaginary[from] * sin[from];
        im[to] += sign * (real[from] * sin[from] + imaginary[from] * cos[from]);
      }
    }
    for (int node = 0; node < nodes; node++) {
      float size = (float) Math.sqrt(re[node] * re[node] + im[node] * im[node] + 0.3f);
      real[node] = re[node] / size;
      imaginary[node] = im[node] / size;
    }
  }

  /**
   * The spirals of the phase.
   *
   * @param wave the ridge wave as {@link #paint} wrote it
   * @param width pixels in a row of it
   */
  List<TrueMinutia> minutiae(float[] wave, int width) {
    List<TrueMinutia> found = new ArrayList<>();
    for (int row = 2; row + 4 < rows; row++) {
      for (int column = 2; column + 4 < columns; column++) {
        int winding = winding(row * columns + column);
        if (winding != 0) {
          found.add(describe(row, column, winding, wave, width));
        }
      }
    }
    return found;
  }

  private int winding(int node) {
    int east = node + 1;
    int south = node + columns;
    float signTop = flip[0][node];
    float signRight = flip[1][east];
    float signBottom = flip[0][south];
    float signLeft = flip[1][node];
    if (signTop * signRight * signBottom * signLeft < 0) {
      return 0;
    }
    // Steps against a frame that has been flipped count the other way.
    double sum = advance(0, node, 1, signTop) + signTop * advance(1, east, columns, signRight);
    sum -= signLeft * advance(0, south, 1, signBottom) + advance(1, node, columns, signLeft);
    return (int) Math.rint(sum / TURN);
  }

  private double advance(int edge, int from, int step, float sign) {
    int to = from + step;
    double off = sign * phases[to] - phases[from] - expected[edge][from];
    off -= TURN * Math.rint(off / TURN);
    return expected[edge][from] + off;
  }

  private TrueMinutia describe(int row, int column, int winding, float[] wave, int width) {
    int node = row * columns + column;
    double x = (column + 0.5) * WaveField.SPACING;
    double y = (row + 0.5) * WaveField.SPACING;
    double norm = Math.sqrt(waves.kx[node] * waves.kx[node] + waves.ky[node] * waves.ky[node]);
    double alongX = winding * waves.ky[node] / norm;
    double alongY = -winding * waves.kx[node] / norm;
    // Ahead lies one ridge more than behind. Where a ridge ends, a valley closes in behind it.
    double behind = 0;
    for (int aside = -3; aside <= 3; aside++) {
      int px = (int) Math.rint(x - 4 * alongX + aside * alongY);
      int py = (int) Math.rint(y - 4 * alongY - aside * alongX);
      behind += wave[py * width + px];
    }
    double angle = StrictMath.toDegrees(StrictMath.atan2(-alongY, alongX));
    return new TrueMinutia(
        x,
        y,
        angle < 0 ? angle + 360 : angle,
        behind < 0 ? TrueMinutia.Kind.ENDING : TrueMinutia.Kind.BIFURCATION);
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  /** Finds the ridge crest nearest to a node, unless a valley is nearer. */
  boolean crestNear(int row, int column, float[] place) {
    int node = row * columns + column;
    float phase = phases[node];
    if (Math.abs(phase) > Math.PI / 2) {
      return false;
    }
    float kx = waves.kx[node];
    float ky = waves.ky[node];
    float back = phase / (kx * kx + ky * ky);
    place[0] = column * WaveField.SPACING - back * kx;
    place[1] = row * WaveField.SPACING - back * ky;
    return true;
  }

  /**
   * Writes the ridge wave over the whole skin, each pixel blended from the plane waves of the four
   * nodes around it and brought to unit amplitude.
   */
  float[] paint(int width, int height) {
    float[] out = new float[width * height];
    int s = WaveField.SPACING;
    float[] share = new float[s];
    for (int i = 0; i < s; i++) {
      float t = i / (float) s;
      share[i] = t * t * (3 - 2 * t);
    }
    float[] blockRe = new float[s * s];
    float[] blockIm = new float[s * s];
    for (int row = 0; row + 1 < rows; row++) {
      for (int column = 0; column + 1 < columns; column++) {
        Arrays.fill(blockRe, 0);
        Arrays.fill(blockIm, 0);
        int lead = row * columns + column;
        for (int corner = 0; corner < 4; corner++) {
          addPlaneWave(lead, corner & 1, corner >> 1, share, blockRe, blockIm);
        }
        int right = Math.min(s, width - column * s);
        int down = Math.min(s, height - row * s);
        for (int y = 0; y < down; y++) {
          int at = (row * s + y) * width + column * s;
          for (int x = 0; x < right; x++) {
            float re = blockRe[y * s + x];
            float im = blockIm[y * s + x];
            out[at + x] = re / (float) Math.sqrt(re * re + im * im + 0.02f);
          }
        }
      }
    }
    return out;
  }

  private void addPlaneWave(
      int lead, int right, int down, float[] share, float[] blockRe, float[] blockIm) {
    int s = WaveField.SPACING;
    int node = lead + down * columns + right;
    float kx = waves.kx[node];
    float ky = waves.ky[node];
    float sign = waves.kx[lead] * kx + waves.ky[lead] * ky < 0 ? -1 : 1;
    float stepXCos = TrigTables.cos(kx);
    float stepXSin = TrigTables.sin(kx);
    float stepYCos = TrigTables.cos(ky);
    float stepYSin = TrigTables.sin(ky);
    float start = -(kx * right + ky * down) * s;
    float startCos = TrigTables.cos(start);
    float startSin = TrigTables.sin(start);
    float rowRe = real[node] * startCos - imaginary[node] * startSin;
    float rowIm = real[node] * startSin + imaginary[node] * startCos;
    for (int y = 0; y < s; y++) {
      float rowShare = down == 1 ? share[y] : 1 - share[y];
      float re = rowRe;
      float im = rowIm;
      for (int x = 0; x < s; x++) {
        float weight = rowShare * (right == 1 ? share[x] : 1 - share[x]);
        blockRe[y * s + x] += weight * re;
        blockIm[y * s + x] += weight * sign * im;
        float turned = re * stepXCos - im * stepXSin;
        im = re * stepXSin + im * stepXCos;
        re = turned;
      }
      float turned = rowRe * stepYCos - rowIm * stepYSin;
      rowIm = rowRe * stepYSin + rowIm * stepYCos;
      rowRe = turned;
    }
  }
}
