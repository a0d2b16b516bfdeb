package ridgeproof.examination;

import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.SequenceFacts.SeenFinger;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.ridges.FingerMeasures;
import ridgeproof.ridges.FingerPosition;
import ridgeproof.ridges.Minutiae;
import ridgeproof.ridges.RotatedBox;
import ridgeproof.ridges.SecondLook;

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
    if (box.isEmpty() || density.isEmpty()) {
      return Optional.empty();
    }
    return extraction
        .decode(image.get())
        .pixels()
        .map(pixels -> Minutiae.again(pixels, density.get().meanPpi(), box.get()));
  }
}
