package ridgeproof.imagery.wsq;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.imagery.wsq.codestream.QuantizationTable;
import ridgeproof.imagery.wsq.codestream.WsqDecimal;
import ridgeproof.imagery.wsq.subband.SubbandNode;
import ridgeproof.imagery.wsq.subband.SubbandTree;
import ridgeproof.imagery.wsq.wavelet.WaveletAnalysis;

/**
 * Chooses the bin widths of the subbands for a bit rate from their variances (WSQ specification
 * IAFIS-IC-0110, from memory).
 */
final class BitAllocation {

  private static final int CODED = WaveletAnalysis.CODED_SUBBANDS;
  static final int MIN_BANDS = 4;
  private static final int FIRST_OF_LARGE_BANDS = 51;
  private static final double MIN_VARIANCE = 1.01;
  private static final double FLAT_IMAGE = 20000;
  static final double LOADING_FACTOR = 2.5;
  private static final double WIDEST_IN_DEVIATIONS = 5;

  /** Keeps quantized values within 16 bits when few subbands share a high rate; our own limit. */
  static final double NARROWEST = 0.25;

  private static final double ZERO_BIN_RATIO = 1.2;
  private static final double BIN_CENTER = 0.44;
  private static final int MAX_MANTISSA = 0xFFFF;
  private static final double[] LARGE_BAND_WEIGHTS = {
    1, 1.32, 1.08, 1.42, 1.08, 1.32, 1.42, 1.08, 1.08
  };

  private BitAllocation() {}

  static QuantizationTable table(WaveletAnalysis analysis, SubbandTree tree, double bitsPerPixel) {
    double[] variances = variances(analysis, tree);
    double[] relative = relativeWidths(variances);
    double divisor = divisor(variances, relative, bitsPerPixel);
    List<WsqDecimal> widths = new ArrayList<>();
    List<WsqDecimal> zeroWidths = new ArrayList<>();
    for (int subband = 0; subband < SubbandTree.SUBBANDS; subband++) {
      double width = relative[subband] > 0 ? Math.max(relative[subband] / divisor, NARROWEST) : 0;
      widths.add(WsqDecimal.closestTo(width, MAX_MANTISSA));
      zeroWidths.add(WsqDecimal.closestTo(ZERO_BIN_RATIO * width, MAX_MANTISSA));
    }
    return new QuantizationTable(0, WsqDecimal.closestTo(BIN_CENTER, 0xFF), widths, zeroWidths);
  }

  private static double[] variances(WaveletAnalysis analysis, SubbandTree tree) {
    double[] variances = new double[SubbandTree.SUBBANDS];
    double lowest = 0;
    for (int subband = 0; subband < CODED; subband++) {
      variances[subband] = variance(analysis, tree, subband, true);
      lowest += subband < MIN_BANDS ? variances[subband] : 0;
    }
    if (lowest < FLAT_IMAGE) {
      for (int subband = 0; subband < CODED; subband++) {
        variances[subband] = variance(analysis, tree, subband, false);
      }
    }
    return variances;
  }

  private static double variance(
      WaveletAnalysis analysis, SubbandTree tree, int subband, boolean middleOnly) {
    SubbandNode band = tree.leaf(subband);
    int left = middleOnly ? band.width() / 8 : 0;
    int top = middleOnly ? 9 * band.height() / 32 : 0;
    int width = middleOnly ? 3 * band.width() / 4 : band.width();
    int height = middleOnly ? 7 * band.height() / 16 : band.height();
    float[] values = analysis.coefficients(subband);
    double sum = 0;
    double squares = 0;
    for (int y = top; y < top + height; y++) {
      int row = y * band.width();
      for (int x = row + left; x < row + left + width; x++) {
        double value = values[x];
        sum += value;
        squares += value * value;
      }
    }
    double count = (double) width * height;
    double gain = analysis.gain(subband);
    return count < 2 ? 0 : Math.max(0, (squares - sum * sum / count) / (count - 1)) * gain * gain;
  }

  private static double[] relativeWidths(double[] variances) {
    double[] widths = new double[SubbandTree.SUBBANDS];
    for (int subband = 0; subband < CODED; subband++) {
      if (variances[subband] >= MIN_VARIANCE) {
        widths[subband] =
            subband < MIN_BANDS ? 1 : 10 / (weight(subband) * Math.log(variances[subband]));
      }
    }
    return widths;
  }

  /** How much finer than others a large subband is quantized. */
  static double weight(int subband) {
    return subband < FIRST_OF_LARGE_BANDS ? 1 : LARGE_BAND_WEIGHTS[subband - FIRST_OF_LARGE_BANDS];
  }

  private static double divisor(double[] variances, double[] relative, double bitsPerPixel) {
    boolean[] counts = new boolean[SubbandTree.SUBBANDS];
    for (int subband = 0; subband < CODED; subband++) {
      counts[subband] = relative[subband] > 0;
    }
    double divisor = 1;
    for (boolean changed = true; changed; ) {
      double share = 0;
      double logarithms = 0;
      for (int subband = 0; subband < CODED; subband++) {
        if (counts[subband]) {
          share += shareOfPixels(subband);
          logarithms +=
              shareOfPixels(subband) * Math.log(Math.sqrt(variances[subband]) / relative[subband]);
        }
      }
      if (share == 0) {
        return divisor;
      }
      divisor =
          Math.exp((bitsPerPixel / share - 1) * Math.log(2) - logarithms / share) / LOADING_FACTOR;
      changed = false;
      for (int subband = 0; subband < CODED; subband++) {
        double widest = WIDEST_IN_DEVIATIONS * Math.sqrt(variances[subband]);
        if (counts[subband] && relative[subband] / divisor >= widest) {
          counts[subband] = false;
          changed = true;
        }
      }
    }
    return divisor;
  }

  static double shareOfPixels(int subband) {
    if (subband < MIN_BANDS) {
      return 1.0 / 1024;
    }
    return subband < FIRST_OF_LARGE_BANDS ? 1.0 / 256 : 1.0 / 16;
  }
}
