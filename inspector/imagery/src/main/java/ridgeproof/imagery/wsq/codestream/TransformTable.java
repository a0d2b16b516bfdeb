package ridgeproof.imagery.wsq.codestream;

import java.util.List;

/**
 * The content of DTT: the two analysis filters, each as its right half beginning in the middle. A
 * filter of odd length is symmetric about its middle coefficient. Of a pair of even length, the
 * low-pass filter is symmetric and the high-pass filter antisymmetric; filtering is convolution, so
 * that the right half meets the samples on the left (WSQ specification IAFIS-IC-0110, from memory).
 *
 * @param offset of the marker in the file
 * @param lowPassLength taps of the whole low-pass filter
 * @param highPassLength taps of the whole high-pass filter
 */
public record TransformTable(
    int offset,
    int lowPassLength,
    int highPassLength,
    List<WsqDecimal> lowPass,
    List<WsqDecimal> highPass) {

  public TransformTable {
    lowPass = List.copyOf(lowPass);
    highPass = List.copyOf(highPass);
  }

  /** Whether both filters have an odd number of taps. */
  public boolean isOdd() {
    return lowPassLength % 2 == 1;
  }

  static int halfLength(int length) {
    return (length + 1) / 2;
  }
}
