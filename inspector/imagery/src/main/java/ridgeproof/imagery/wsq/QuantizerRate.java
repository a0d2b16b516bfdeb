package ridgeproof.imagery.wsq;

import java.util.OptionalDouble;
import ridgeproof.imagery.wsq.codestream.QuantizationTable;
import ridgeproof.imagery.wsq.wavelet.WaveletAnalysis;

/**
 * The bit rate that an encoder chose its bin widths for, worked out backwards from the widths alone
 * (WSQ specification IAFIS-IC-0110, from memory). How many bytes came of it says little: white
 * paper takes hardly any, at whatever rate.
 *
 * <p>The width of a subband is 10 / (A ln v q), that of the first four 1 / q, so that the table
 * tells q and every variance v but the first four, which weigh a 256th of the rate together.
 */
public final class QuantizerRate {

  private static final int MIN_BANDS = BitAllocation.MIN_BANDS;
  private static final int CODED = WaveletAnalysis.CODED_SUBBANDS;
  private static final double WIDTH_FACTOR = 10;

  /** Binary logarithm of the deviation in a lowest band of a fingerprint, which varies little. */
  private static final double USUAL_LOWEST = 7.5;

  /** Bins this narrow lose nothing that shows, and encoders go no further down. */
  private static final double FINEST = BitAllocation.NARROWEST;

  private static final double LARGEST = 16;

  /** The widths are rounded to four or five digits. */
  private static final double SAME = 0.002;

  /** Beyond this no variance of 8-bit pixels goes; the widths follow some other rule. */
  private static final double MAX_LOG_VARIANCE = 25;

  private static final double MIN_LOG_VARIANCE = Math.log(1.01) * 0.5;

  private QuantizerRate() {}

  /** Bits per pixel; nothing where the widths do not follow the specification's rule. */
  public static OptionalDouble of(QuantizationTable table) {
    double lowest = width(table, 0);
    if (!(lowest > 0)) {
      return OptionalDouble.empty();
    }
    if (lowest <= FINEST * (1 + SAME)) {
      return OptionalDouble.of(LARGEST);
    }
    for (int subband = 1; subband < MIN_BANDS; subband++) {
      if (Math.abs(width(table, subband) - lowest) > SAME * lowest) {
        return OptionalDouble.empty();
      }
    }
    double share = 0;
    double bits = 0;
    for (int subband = 0; subband < CODED; subband++) {
      double width = width(table, subband);
      if (width > 0) {
        double deviation = USUAL_LOWEST;
        if (subband >= MIN_BANDS) {
          double logVariance = WIDTH_FACTOR * lowest / (BitAllocation.weight(subband) * width);
          if (logVariance > MAX_LOG_VARIANCE || logVariance < MIN_LOG_VARIANCE) {
            return OptionalDouble.empty();
          }
          deviation = logVariance / 2 / Math.log(2);
        }
        double own = 1 + log2(BitAllocation.LOADING_FACTOR) + deviation - log2(width);
        // A band whose bins are wider than it reaches gets no bits.
        if (own > 0) {
          share += BitAllocation.shareOfPixels(subband);
          bits += BitAllocation.shareOfPixels(subband) * own;
        }
      }
    }
    return share == 0 ? OptionalDouble.empty() : OptionalDouble.of(bits);
  }

  private static double width(QuantizationTable table, int subband) {
    return table.binWidths().get(subband).value();
  }

  private static double log2(double value) {
    return Math.log(value) / Math.log(2);
  }
}
