package ridgeproof.imagery.wsq;

import java.util.List;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.codestream.CodestreamDefect;
import ridgeproof.imagery.wsq.codestream.WsqCodestream;

/**
 * What came of decoding a codestream.
 *
 * @param image the image, as far as it could be recovered; nothing when no coefficient was
 * @param codestream what the markers say
 * @param defects of the markers, then of the entropy-coded data
 * @param codedCoefficients how many wavelet coefficients the codestream ought to hold
 * @param recoveredCoefficients how many of them were decoded; the others count as zero
 */
public record WsqDecoding(
    Optional<GrayImage> image,
    WsqCodestream codestream,
    List<CodestreamDefect> defects,
    long codedCoefficients,
    long recoveredCoefficients) {

  public WsqDecoding {
    defects = List.copyOf(defects);
  }

  /** Whether the image is there with all its coefficients. */
  public boolean isComplete() {
    return image.isPresent() && recoveredCoefficients == codedCoefficients;
  }
}
