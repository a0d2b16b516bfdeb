package ridgeproof.imagery.wsq.subband;

import ridgeproof.imagery.wsq.codestream.QuantizationTable;

/**
 * Uniform scalar quantization with a wider bin around zero (WSQ specification IAFIS-IC-0110, from
 * memory).
 */
public final class Quantization {

  private final double binCenter;
  private final double[] widths = new double[SubbandTree.SUBBANDS];
  private final double[] zeroWidths = new double[SubbandTree.SUBBANDS];

  public Quantization(QuantizationTable table) {
    binCenter = table.binCenter().value();
    for (int subband = 0; subband < SubbandTree.SUBBANDS; subband++) {
      widths[subband] = table.binWidths().get(subband).value();
      zeroWidths[subband] = table.zeroBinWidths().get(subband).value();
    }
  }

  /** Whether the subband's bin width is not 0; otherwise it is not in the codestream. */
  public boolean isCoded(int subband) {
    return widths[subband] != 0;
  }

  public double width(int subband) {
    return widths[subband];
  }

  public double zeroWidth(int subband) {
    return zeroWidths[subband];
  }

  /** The coefficient that stands for a bin. */
  double coefficient(int subband, int quantized) {
    if (quantized > 0) {
      return widths[subband] * (quantized - binCenter) + zeroWidths[subband] / 2;
    }
    if (quantized < 0) {
      return widths[subband] * (quantized + binCenter) - zeroWidths[subband] / 2;
    }
    return 0;
  }
}
