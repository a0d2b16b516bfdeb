package ridgeproof.imagery.wsq.codestream;

import java.util.List;

/**
 * The content of DQT (WSQ specification IAFIS-IC-0110, from memory).
 *
 * @param offset of the marker in the file
 * @param binCenter C, where in its bin a coefficient is reconstructed
 * @param binWidths Q of the 64 subbands; 0 when the subband is not coded
 * @param zeroBinWidths Z of the 64 subbands
 */
public record QuantizationTable(
    int offset, WsqDecimal binCenter, List<WsqDecimal> binWidths, List<WsqDecimal> zeroBinWidths) {

  public QuantizationTable {
    binWidths = List.copyOf(binWidths);
    zeroBinWidths = List.copyOf(zeroBinWidths);
  }

  /** Whether the codestream holds coefficients of the subband, 0 to 63. */
  public boolean isCoded(int subband) {
    return binWidths.get(subband).mantissa() != 0;
  }
}
