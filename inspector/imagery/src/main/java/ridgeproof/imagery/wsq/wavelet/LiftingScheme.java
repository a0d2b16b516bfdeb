package ridgeproof.imagery.wsq.wavelet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A pair of odd symmetric filters taken apart into lifting steps, each of which adds a multiple of
 * the two neighbours of the other kind (I. Daubechies and W. Sweldens, "Factoring wavelet
 * transforms into lifting steps", 1998). That needs half the multiplications of the filters, and
 * whole-sample symmetric extension becomes a repeated neighbour.
 *
 * <p>In the order of synthesis the steps change low, high, low, high, ... samples.
 */
public final class LiftingScheme {

  private static final double NEGLIGIBLE = 1e-6;

  private final float[] weights;
  private final double lowGain;
  private final double highGain;

  private LiftingScheme(float[] weights, double lowGain, double highGain) {
    this.weights = weights;
    this.lowGain = lowGain;
    this.highGain = highGain;
  }

  /** The ladder of a filter pair, or nothing when two-neighbour steps cannot make it. */
  public static Optional<LiftingScheme> of(FilterPair filters) {
    if (!filters.isOdd()) {
      return Optional.empty();
    }
    double[] low = trimmed(filters.lowPassAnalysis());
    double[] high = trimmed(filters.highPassAnalysis());
    List<Double> steps = new ArrayList<>();
    while (low.length > 1 || high.length > 1) {
      boolean reducesLow = low.length > high.length;
      double[] longer = reducesLow ? low : high;
      double[] shorter = reducesLow ? high : low;
      if (longer.length != shorter.length + 1) {
        return Optional.empty();
      }
      double weight = longer[longer.length - 1] / shorter[shorter.length - 1];
      double[] reduced = trimmed(reduced(longer, shorter, weight));
      if (reduced.length >= longer.length || !Double.isFinite(weight)) {
        return Optional.empty();
      }
      if (steps.isEmpty() && !reducesLow) {
        steps.add(0.0);
      }
      steps.add(weight);
      low = reducesLow ? reduced : low;
      high = reducesLow ? high : reduced;
    }
    double ratio = high[0] / low[0];
    if (!Double.isFinite(ratio) || ratio == 0) {
      return Optional.empty();
    }
    if (steps.size() % 2 == 1) {
      steps.add(0.0);
    }
    float[] weights = new float[steps.size()];
    for (int i = 0; i < weights.length; i++) {
      // Moves the gains from the samples of the image to those of the bands.
      double gains = i % 2 == 0 ? ratio : 1 / ratio;
      weights[i] = (float) (steps.get(i) * gains);
    }
    return Optional.of(new LiftingScheme(weights, low[0], high[0]));
  }

  /** Weights in the order of synthesis, where they are subtracted; an even number of them. */
  float[] weights() {
    return weights.clone();
  }

  /** What low-pass samples are multiplied by after the steps of analysis. */
  double lowGain() {
    return lowGain;
  }

  /** What high-pass samples are multiplied by after the steps of analysis. */
  double highGain() {
    return highGain;
  }

  /** What low-pass samples are multiplied by before the steps of synthesis. */
  double lowSynthesisGain() {
    return highGain;
  }

  /** What high-pass samples are multiplied by before the steps of synthesis. */
  double highSynthesisGain() {
    return lowGain;
  }

  /** What the steps of synthesis make of a constant low-pass signal of 1. */
  float constantSynthesis() {
    double low = 1;
    double high = 0;
    for (int i = 0; i < weights.length; i += 2) {
      low -= 2 * weights[i] * high;
      high -= 2 * weights[i + 1] * low;
    }
    return (float) low;
  }

  /** What the steps of analysis make of a constant signal of 1 in the low-pass band. */
  float constantAnalysis() {
    double low = 1;
    double high = 1;
    for (int i = weights.length - 2; i >= 0; i -= 2) {
      high += 2 * weights[i + 1] * low;
      low += 2 * weights[i] * high;
    }
    return (float) low;
  }

  private static double[] reduced(double[] longer, double[] shorter, double weight) {
    double[] result = longer.clone();
    for (int k = 0; k < result.length; k++) {
      result[k] -= weight * (tap(shorter, k - 1) + tap(shorter, k + 1));
    }
    return result;
  }

  private static double tap(double[] half, int offset) {
    int index = Math.abs(offset);
    return index < half.length ? half[index] : 0;
  }

  private static double[] trimmed(double[] half) {
    int length = half.length;
    while (length > 1 && Math.abs(half[length - 1]) < NEGLIGIBLE * Math.abs(half[0])) {
      length--;
    }
    return Arrays.copyOf(half, length);
  }
}
