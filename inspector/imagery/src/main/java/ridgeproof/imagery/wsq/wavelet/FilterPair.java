package ridgeproof.imagery.wsq.wavelet;

import java.util.List;
import ridgeproof.imagery.wsq.codestream.TransformTable;
import ridgeproof.imagery.wsq.codestream.WsqDecimal;

/**
 * The two analysis filters of a wavelet transform, each as its right half from the middle on. The
 * synthesis filters follow from them: low-pass synthesis is high-pass analysis with every second
 * sign changed, and the other way round (WSQ specification IAFIS-IC-0110, from memory).
 */
public final class FilterPair {

  /** The 9/7 pair that the specification gives for fingerprints. */
  public static final FilterPair STANDARD =
      new FilterPair(
          true,
          new double[] {
            0.85269867900940,
            0.37740285561265,
            -0.11062440441842,
            -0.023849465019380,
            0.037828455506995
          },
          new double[] {
            0.78848561640566, -0.41809227322221, -0.040689417609558, 0.064538882628938
          });

  private final boolean odd;
  private final double[] low;
  private final double[] high;

  FilterPair(boolean odd, double[] low, double[] high) {
    this.odd = odd;
    this.low = low.clone();
    this.high = high.clone();
  }

  public static FilterPair of(TransformTable table) {
    return new FilterPair(table.isOdd(), values(table.lowPass()), values(table.highPass()));
  }

  /** Whether both filters have an odd number of taps. */
  public boolean isOdd() {
    return odd;
  }

  public double[] lowPassAnalysis() {
    return low.clone();
  }

  public double[] highPassAnalysis() {
    return high.clone();
  }

  double[] lowPassSynthesis() {
    return alternated(high);
  }

  double[] highPassSynthesis() {
    return alternated(low);
  }

  private static double[] values(List<WsqDecimal> numbers) {
    double[] values = new double[numbers.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = numbers.get(i).value();
    }
    return values;
  }

  private static double[] alternated(double[] half) {
    double[] result = half.clone();
    for (int i = 1; i < result.length; i += 2) {
      result[i] = -result[i];
    }
    return result;
  }
}
