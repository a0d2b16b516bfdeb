package ridgeproof.imagery.wsq.wavelet;

import ridgeproof.imagery.wsq.codestream.DecodingDeadline;
import ridgeproof.imagery.wsq.subband.Band;
import ridgeproof.imagery.wsq.subband.SubbandNode;

/** Puts a band together from its four parts. */
public interface BandSynthesis {

  /**
   * Synthesises a band row by row. A part that is null is zero everywhere.
   *
   * @param stop asked every few rows
   * @return false when stopped before the last row
   */
  boolean synthesize(
      SubbandNode node,
      Band lowLow,
      Band highLow,
      Band lowHigh,
      Band highHigh,
      RowSink sink,
      DecodingDeadline stop);

  /** The factor that low-pass samples already carry for one pass. */
  double lowFactor();

  /** The factor that high-pass samples already carry for one pass. */
  double highFactor();
}
