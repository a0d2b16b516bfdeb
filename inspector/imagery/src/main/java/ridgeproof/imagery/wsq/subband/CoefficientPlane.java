package ridgeproof.imagery.wsq.subband;

import java.util.Arrays;
import ridgeproof.imagery.wsq.codestream.QuantizationTable;

/**
 * All coded coefficients of an image in the order of the codestream, subband after subband, and
 * what turns a quantized value into a coefficient.
 */
public final class CoefficientPlane {

  /** Quantized values that one symbol can code are looked up, from {@code -ZERO_VALUE} on. */
  public static final int LOOKUP = 256;

  /** No gray level changes by as little, and denormal numbers make every step many times slower. */
  private static final double NOTHING = 1e-20;

  private final SubbandTree tree;
  private final Quantization quantization;
  private final double[] factors = new double[SubbandTree.SUBBANDS];
  private final int[] ends = new int[SubbandTree.SUBBANDS];
  public final float[] values;

  /**
   * @param lowFactor what a coefficient is multiplied by for each low-pass filter on its way
   * @param highFactor the same for high-pass filters
   * @param scale what the whole image is multiplied by
   */
  public CoefficientPlane(
      SubbandTree tree,
      Quantization quantization,
      double lowFactor,
      double highFactor,
      double scale) {
    this.tree = tree;
    this.quantization = quantization;
    int end = 0;
    for (int subband = 0; subband < SubbandTree.SUBBANDS; subband++) {
      end += quantization.isCoded(subband) ? tree.leaf(subband).area() : 0;
      ends[subband] = end;
      factors[subband] = tree.gain(subband, lowFactor, highFactor) * scale;
    }
    values = new float[end];
  }

  /** How many coefficients the codestream holds. */
  public static long codedCoefficients(SubbandTree tree, QuantizationTable table) {
    long sum = 0;
    for (int subband = 0; subband < SubbandTree.SUBBANDS; subband++) {
      sum += table.isCoded(subband) ? tree.leaf(subband).area() : 0;
    }
    return sum;
  }

  /** The position behind the last coefficient of a subband. */
  public int end(int subband) {
    return ends[subband];
  }

  int start(int subband) {
    return subband == 0 ? 0 : ends[subband - 1];
  }

  public int size() {
    return values.length;
  }

  /** The coefficients of the symbols 0 to 255 in a subband. */
  public void fillLookup(int subband, float[] lookup) {
    for (int symbol = 0; symbol < LOOKUP; symbol++) {
      lookup[symbol] = coefficient(subband, symbol - EntropySymbols.ZERO_VALUE);
    }
  }

  public float coefficient(int subband, int quantized) {
    double value = quantization.coefficient(subband, quantized) * factors[subband];
    return Math.abs(value) < NOTHING ? 0 : (float) value;
  }

  /** One subband, or null when it is zero everywhere. */
  public Band subband(int subband) {
    int start = start(subband);
    int end = ends[subband];
    for (int i = start; i < end; i++) {
      if (values[i] != 0) {
        return new Band(values, start);
      }
    }
    return null;
  }

  public void clear() {
    Arrays.fill(values, 0);
  }

  public SubbandTree tree() {
    return tree;
  }
}
