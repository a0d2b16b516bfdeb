package ridgeproof.imagery.wsq.wavelet;

import java.util.Arrays;
import ridgeproof.imagery.wsq.codestream.DecodingDeadline;
import ridgeproof.imagery.wsq.subband.Band;
import ridgeproof.imagery.wsq.subband.SubbandNode;

/**
 * Inverse transform of a band with the filters as they stand in DTT, of any length. The bands are
 * continued symmetrically: about the first and last pixel for odd filters; about the edges of the
 * image for even filters, where the high-pass band changes its sign (C. Brislawn, "Classification
 * of nonexpansive symmetric extension transforms for multirate filter banks", 1996; from memory).
 */
public final class ConvolutionSynthesis implements BandSynthesis {

  private final boolean odd;
  private final float[] lowTaps;
  private final float[] highTaps;

  public ConvolutionSynthesis(FilterPair filters) {
    odd = filters.isOdd();
    lowTaps = floats(filters.lowPassSynthesis());
    highTaps = floats(filters.highPassSynthesis());
  }

  @Override
  public double lowFactor() {
    return 1;
  }

  @Override
  public double highFactor() {
    return 1;
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
    int lows = (width + 1) / 2;
    float[] left = new float[lows];
    float[] right = new float[width / 2];
    float[] evens = new float[lows];
    float[] odds = new float[lows];
    for (int row = 0; row < node.height(); row++) {
      if (stop.isRaised()) {
        return false;
      }
      column(row, node.height(), lowLow, lowHigh, left);
      column(row, node.height(), highLow, highHigh, right);
      for (int x = 0; x < width; x++) {
        (x % 2 == 0 ? evens : odds)[x / 2] = sample(x, width, left, right);
      }
      sink.accept(row, evens, odds);
    }
    return true;
  }

  private void column(int row, int height, Band low, Band high, float[] sum) {
    Arrays.fill(sum, 0);
    if (low != null) {
      for (int n = first(row, lowTaps, 0); n <= last(row, lowTaps, 0); n++) {
        add(sum, low, extendedLow(n, height), tap(lowTaps, row - 2 * n, 1));
      }
    }
    if (high != null && height > 1) {
      int shift = odd ? 1 : 0;
      for (int n = first(row, highTaps, shift); n <= last(row, highTaps, shift); n++) {
        float weight = tap(highTaps, row - 2 * n - shift, -1) * highSign(n, height);
        if (weight != 0) {
          add(sum, high, extendedHigh(n, height), weight);
        }
      }
    }
  }

  private float sample(int x, int width, float[] low, float[] high) {
    float sum = 0;
    for (int n = first(x, lowTaps, 0); n <= last(x, lowTaps, 0); n++) {
      sum += low[extendedLow(n, width)] * tap(lowTaps, x - 2 * n, 1);
    }
    if (width > 1) {
      int shift = odd ? 1 : 0;
      for (int n = first(x, highTaps, shift); n <= last(x, highTaps, shift); n++) {
        float weight = tap(highTaps, x - 2 * n - shift, -1) * highSign(n, width);
        if (weight != 0) {
          sum += high[extendedHigh(n, width)] * weight;
        }
      }
    }
    return sum;
  }

  private int first(int position, float[] taps, int shift) {
    int reach = odd ? taps.length - 1 : taps.length;
    return Math.floorDiv(position - shift - reach + 1, 2);
  }

  private int last(int position, float[] taps, int shift) {
    return Math.floorDiv(position - shift + taps.length - 1, 2);
  }

  private float tap(float[] taps, int distance, int rightSign) {
    if (odd) {
      int index = Math.abs(distance);
      return index < taps.length ? taps[index] : 0;
    }
    int index = distance > 0 ? distance - 1 : -distance;
    return index < taps.length ? (distance > 0 ? rightSign * taps[index] : taps[index]) : 0;
  }

  private int extendedLow(int n, int size) {
    return odd ? reflected(2 * n, size) / 2 : halfReflected(n, size);
  }

  private int extendedHigh(int n, int size) {
    return odd ? reflected(2 * n + 1, size) / 2 : halfReflected(n, size);
  }

  private int highSign(int n, int size) {
    if (odd) {
      return 1;
    }
    if (halfReflected(n, size) >= size / 2) {
      return 0;
    }
    return Math.floorMod(n, size) == halfReflected(n, size) ? 1 : -1;
  }

  private static int reflected(int position, int size) {
    if (size == 1) {
      return 0;
    }
    int period = 2 * (size - 1);
    int inside = Math.floorMod(position, period);
    return Math.min(inside, period - inside);
  }

  private static int halfReflected(int n, int size) {
    int inside = Math.floorMod(n, size);
    return Math.min(inside, size - 1 - inside);
  }

  private static void add(float[] sum, Band band, int row, float weight) {
    float[] values = band.values();
    int start = band.start() + row * sum.length;
    for (int i = 0; i < sum.length; i++) {
      sum[i] += weight * values[start + i];
    }
  }

  private static float[] floats(double[] values) {
    float[] result = new float[values.length];
    for (int i = 0; i < values.length; i++) {
      result[i] = (float) values[i];
    }
    return result;
  }
}
