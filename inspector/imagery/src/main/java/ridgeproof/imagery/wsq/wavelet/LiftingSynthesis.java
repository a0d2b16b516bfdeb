package ridgeproof.imagery.wsq.wavelet;

import java.util.Arrays;
import ridgeproof.imagery.wsq.codestream.DecodingDeadline;
import ridgeproof.imagery.wsq.subband.Band;
import ridgeproof.imagery.wsq.subband.SubbandNode;

/**
 * Inverse transform of a band by lifting, a few rows at a time, so that the rows in work stay in
 * the cache. Every inner loop runs over arrays at one common index, which is what the JIT compiler
 * turns into vector instructions.
 */
final class LiftingSynthesis implements BandSynthesis {

  private static final int ROWS_BETWEEN_CHECKS = 32;

  private final LiftingScheme ladder;
  private final float[] weights;
  private final float constant;

  LiftingSynthesis(LiftingScheme ladder) {
    this.ladder = ladder;
    this.weights = ladder.weights();
    this.constant = ladder.constantSynthesis();
  }

  @Override
  public double lowFactor() {
    return ladder.lowSynthesisGain();
  }

  @Override
  public double highFactor() {
    return ladder.highSynthesisGain();
  }

  @Override
  public boolean synthesize(
      SubbandNode node,
      Band lowLow,
      Band highLow,
      Band lowHigh,
      Band highHigh,
      RowSink sink,
      DecodingDeadline stop) {
    int width = node.width();
    int lows = (node.height() + 1) / 2;
    int highs = node.height() / 2;
    int delay = weights.length / 2;
    int ring = delay + 2;
    float[][] low = new float[ring][width + 1];
    float[][] high = new float[ring][width + 1];
    RowSynthesis horizontal = new RowSynthesis(width);
    for (int time = 0; time < lows + delay; time++) {
      if (time % ROWS_BETWEEN_CHECKS == 0 && stop.isRaised()) {
        return false;
      }
      if (time < lows) {
        load(low[time % ring], width, time, lowLow, highLow);
      }
      if (time < highs) {
        load(high[time % ring], width, time, lowHigh, highHigh);
      }
      if (highs == 0) {
        multiply(low[time % ring], constant, width);
      } else {
        lift(low, high, time, lows, highs, width);
      }
      int done = time - delay;
      if (done >= 0) {
        horizontal.finish(2 * done, low[done % ring], sink);
        if (done < highs) {
          horizontal.finish(2 * done + 1, high[done % ring], sink);
        }
      }
    }
    return true;
  }

  private void lift(float[][] low, float[][] high, int time, int lows, int highs, int width) {
    int ring = low.length;
    for (int step = 0; step < weights.length; step += 2) {
      int lowRow = time - step / 2;
      if (lowRow >= 0 && lowRow < lows) {
        float[] above = high[Math.max(lowRow - 1, 0) % ring];
        float[] below = high[Math.min(lowRow, highs - 1) % ring];
        subtract(low[lowRow % ring], above, below, weights[step], width);
      }
      int highRow = lowRow - 1;
      if (highRow >= 0 && highRow < highs) {
        float[] above = low[highRow % ring];
        float[] below = low[Math.min(highRow + 1, lows - 1) % ring];
        subtract(high[highRow % ring], above, below, weights[step + 1], width);
      }
    }
  }

  private static void load(float[] row, int width, int index, Band left, Band right) {
    int lows = (width + 1) / 2;
    int highs = width / 2;
    if (left == null) {
      Arrays.fill(row, 0, lows, 0);
    } else {
      System.arraycopy(left.values(), left.start() + index * lows, row, 0, lows);
    }
    if (right == null) {
      Arrays.fill(row, lows, width, 0);
    } else {
      System.arraycopy(right.values(), right.start() + index * highs, row, lows, highs);
    }
  }

  private static void subtract(float[] row, float[] above, float[] below, float weight, int count) {
    for (int i = 0; i < count; i++) {
      row[i] -= weight * (above[i] + below[i]);
    }
  }

  private static void multiply(float[] row, float factor, int count) {
    for (int i = 0; i < count; i++) {
      row[i] *= factor;
    }
  }

  private final class RowSynthesis {
    private final int lows;
    private final int highs;
    private final float[] odds;
    private final float[] shifted;

    RowSynthesis(int width) {
      lows = (width + 1) / 2;
      highs = width / 2;
      odds = new float[lows + 1];
      shifted = new float[lows + 1];
    }

    void finish(int row, float[] samples, RowSink sink) {
      if (highs == 0) {
        multiply(samples, constant, lows);
      } else {
        System.arraycopy(samples, lows, odds, 0, highs);
        for (int step = 0; step < weights.length; step += 2) {
          System.arraycopy(odds, 0, shifted, 1, highs);
          shifted[0] = odds[0];
          odds[lows - 1] = odds[highs - 1];
          subtract(samples, shifted, odds, weights[step], lows);
          System.arraycopy(samples, 1, shifted, 0, lows - 1);
          shifted[lows - 1] = samples[lows - 1];
          subtract(odds, samples, shifted, weights[step + 1], highs);
        }
      }
      sink.accept(row, samples, odds);
    }
  }
}
