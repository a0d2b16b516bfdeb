package ridgeproof.imagery.wsq.wavelet;

import java.util.Optional;
import ridgeproof.imagery.wsq.codestream.DecodingDeadline;
import ridgeproof.imagery.wsq.subband.Band;
import ridgeproof.imagery.wsq.subband.CoefficientPlane;
import ridgeproof.imagery.wsq.subband.SubbandNode;

/** The inverse wavelet transform of a whole image, from the smallest bands up. */
public final class ImageSynthesis {

  private final BandSynthesis bands;
  private final DecodingDeadline stop;

  public ImageSynthesis(BandSynthesis bands, DecodingDeadline stop) {
    this.bands = bands;
    this.stop = stop;
  }

  /** The fastest synthesis that a filter pair allows. */
  public static BandSynthesis of(FilterPair filters) {
    Optional<LiftingScheme> ladder = LiftingScheme.of(filters);
    return ladder.isPresent()
        ? new LiftingSynthesis(ladder.get())
        : new ConvolutionSynthesis(filters);
  }

  /** Gray levels row by row, or nothing when stopped. */
  public Optional<byte[]> pixels(CoefficientPlane plane, double shift) {
    SubbandNode root = plane.tree().root();
    GrayRows rows = new GrayRows(root.width(), root.height(), shift);
    return synthesize(root, plane, rows) ? Optional.of(rows.pixels()) : Optional.empty();
  }

  private boolean synthesize(SubbandNode node, CoefficientPlane plane, RowSink sink) {
    Band lowLow = band(node.lowLow(), plane);
    Band highLow = band(node.highLow(), plane);
    Band lowHigh = band(node.lowHigh(), plane);
    Band highHigh = band(node.highHigh(), plane);
    return !stop.isRaised()
        && bands.synthesize(node, lowLow, highLow, lowHigh, highHigh, sink, stop);
  }

  private Band band(SubbandNode node, CoefficientPlane plane) {
    if (node.width() == 0 || node.height() == 0) {
      return null;
    }
    if (node.isLeaf()) {
      return plane.subband(node.subband());
    }
    if (isZero(node, plane)) {
      return null;
    }
    BandRows rows = new BandRows(node);
    return synthesize(node, plane, rows) ? rows.band() : null;
  }

  private static boolean isZero(SubbandNode node, CoefficientPlane plane) {
    if (node.isLeaf()) {
      return plane.subband(node.subband()) == null;
    }
    return isZero(node.lowLow(), plane)
        && isZero(node.highLow(), plane)
        && isZero(node.lowHigh(), plane)
        && isZero(node.highHigh(), plane);
  }
}
