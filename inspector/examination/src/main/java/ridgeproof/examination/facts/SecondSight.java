package ridgeproof.examination.facts;

import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.facts.SequenceComparison.SeenFinger;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.matching.SecondLook;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Decodes an image again where a print of it is to be looked at twice: few are, and to keep the
 * pixels of all would cost the memory of a whole file.
 */
public final class SecondSight {

  private final ImageExtraction extraction;

  public SecondSight(ImageExtraction extraction) {
    this.extraction = extraction;
  }

  /** Of the prints of a file. */
  public SecondLook of(
      Map<FingerPosition, SeenFinger> rolls, Map<FingerPosition, SeenFinger> plains) {
    return new SecondLook(
        finger -> look(Optional.ofNullable(rolls.get(finger))),
        finger -> look(Optional.ofNullable(plains.get(finger))));
  }

  private Optional<Minutiae> look(Optional<SeenFinger> print) {
    Optional<ExaminedImage> image = print.map(SeenFinger::image);
    Optional<RotatedBox> box =
        print
            .flatMap(seen -> seen.analysis().measures())
            .map(FingerMeasures::extent)
            .map(extent -> extent.box());
    Optional<PixelDensity> density = image.flatMap(ExaminedImage::density);
    boolean disorder =
        print
            .flatMap(seen -> seen.analysis().measures())
            .filter(measures -> measures.minutiae().isOfDisorder())
            .isPresent();
    if (box.isEmpty() || density.isEmpty() || disorder) {
      return Optional.empty();
    }
    return extraction
        .decode(image.get())
        .pixels()
        .map(pixels -> Minutiae.again(pixels, density.get().meanPpi(), box.get()));
  }
}
