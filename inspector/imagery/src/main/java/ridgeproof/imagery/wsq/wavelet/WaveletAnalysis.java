package ridgeproof.imagery.wsq.wavelet;

import ridgeproof.imagery.wsq.subband.SubbandNode;
import ridgeproof.imagery.wsq.subband.SubbandTree;

/**
 * The forward wavelet transform by lifting, a few rows at a time. Its coefficients lack the gains
 * of the ladder; {@link #gain} gives them. The four subbands 60 to 63 are not computed, since the
 * specification never codes them (WSQ specification IAFIS-IC-0110, from memory).
 */
public final class WaveletAnalysis {

  public static final int CODED_SUBBANDS = 60;

  private final LiftingScheme ladder;
  private final float[] weights;
  private final float constant;
  private final SubbandTree tree;
  private final float[][] coefficients = new float[SubbandTree.SUBBANDS][];

  public WaveletAnalysis(LiftingScheme ladder, SubbandTree tree, RowSource image) {
    this.ladder = ladder;
    this.weights = ladder.weights();
    this.constant = ladder.constantAnalysis();
    this.tree = tree;
    split(tree.root(), image);
  }

  /** The coefficients of a subband before its gain, row by row; null for 60 to 63. */
  public float[] coefficients(int subband) {
    return coefficients[subband];
  }

  /** What the coefficients of a subband are to be multiplied by. */
  public double gain(int subband) {
    return tree.gain(subband, ladder.lowGain(), ladder.highGain());
  }

  private void split(SubbandNode node, RowSource source) {
    float[] lowLow = new float[node.lowLow().area()];
    float[] highLow = new float[node.highLow().area()];
    float[] lowHigh = new float[node.lowHigh().area()];
    boolean isRoot = node == tree.root();
    float[] highHigh = isRoot ? null : new float[node.highHigh().area()];
    analyze(node, source, lowLow, highLow, lowHigh, highHigh);
    descend(node.lowLow(), lowLow);
    descend(node.highLow(), highLow);
    descend(node.lowHigh(), lowHigh);
    if (!isRoot) {
      descend(node.highHigh(), highHigh);
    }
  }

  private void descend(SubbandNode node, float[] values) {
    if (node.isLeaf()) {
      coefficients[node.subband()] = values;
      return;
    }
    int width = node.width();
    split(
        node,
        (row, evens, odds) -> {
          int at = row * width;
          int pairs = width / 2;
          for (int i = 0; i < pairs; i++) {
            evens[i] = values[at + 2 * i];
            odds[i] = values[at + 2 * i + 1];
          }
          if (width % 2 == 1) {
            evens[pairs] = values[at + width - 1];
          }
        });
  }

  private void analyze(
      SubbandNode node,
      RowSource source,
      float[] lowLow,
      float[] highLow,
      float[] lowHigh,
      float[] highHigh) {
    int width = node.width();
    if (width == 0 || node.height() == 0) {
      return;
    }
    int lows = (node.height() + 1) / 2;
    int highs = node.height() / 2;
    int delay = weights.length / 2;
    int ring = delay + 2;
    float[][] low = new float[ring][width + 1];
    float[][] high = new float[ring][width + 1];
    RowAnalysis horizontal = new RowAnalysis(width, source);
    for (int time = 0; time < lows + delay; time++) {
      if (time < lows) {
        horizontal.begin(2 * time, low[time % ring]);
      }
      if (time < highs) {
        horizontal.begin(2 * time + 1, high[time % ring]);
      }
      if (highs > 0) {
        lift(low, high, time, lows, highs, width);
      }
      int done = time - delay;
      if (done >= 0) {
        if (highs == 0) {
          multiply(low[done % ring], constant, width);
        }
        store(low[done % ring], width, done, lowLow, highLow);
        if (done < highs) {
          store(high[done % ring], width, done, lowHigh, highHigh);
        }
      }
    }
  }

  private void lift(float[][] low, float[][] high, int time, int lows, int highs, int width) {
    int ring = low.length;
    for (int step = weights.length - 2, row = time - 1; step >= 0; step -= 2, row--) {
      if (row >= 0 && row < highs) {
        float[] below = low[Math.min(row + 1, lows - 1) % ring];
        add(high[row % ring], low[row % ring], below, weights[step + 1], width);
      }
      if (row >= 0 && row < lows) {
        float[] above = high[Math.max(row - 1, 0) % ring];
        float[] below = high[Math.min(row, highs - 1) % ring];
        add(low[row % ring], above, below, weights[step], width);
      }
    }
  }

  private static void store(float[] row, int width, int index, float[] left, float[] right) {
    int lows = (width + 1) / 2;
    int highs = width / 2;
    System.arraycopy(row, 0, left, index * lows, lows);
    if (right != null) {
      System.arraycopy(row, lows, right, index * highs, highs);
    }
  }

  private static void add(float[] row, float[] above, float[] below, float weight, int count) {
    for (int i = 0; i < count; i++) {
      row[i] += weight * (above[i] + below[i]);
    }
  }

  private static void multiply(float[] row, float factor, int count) {
    for (int i = 0; i < count; i++) {
      row[i] *= factor;
    }
  }

  private final class RowAnalysis {
    private final RowSource source;
    private final int lows;
    private final int highs;
    private final float[] odds;
    private final float[] shifted;

    RowAnalysis(int width, RowSource source) {
      this.source = source;
      lows = (width + 1) / 2;
      highs = width / 2;
      odds = new float[lows + 1];
      shifted = new float[lows + 1];
    }

    void begin(int row, float[] samples) {
      source.read(row, samples, odds);
      if (highs == 0) {
        multiply(samples, constant, lows);
        return;
      }
      for (int step = weights.length - 2; step >= 0; step -= 2) {
        System.arraycopy(samples, 1, shifted, 0, lows - 1);
        shifted[lows - 1] = samples[lows - 1];
        add(odds, samples, shifted, weights[step + 1], highs);
        System.arraycopy(odds, 0, shifted, 1, highs);
        shifted[0] = odds[0];
        odds[lows - 1] = odds[highs - 1];
        add(samples, shifted, odds, weights[step], lows);
      }
      System.arraycopy(odds, 0, samples, lows, highs);
    }
  }
}
