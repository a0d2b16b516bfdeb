package ridgeproof.examination.rules.image;

import java.util.List;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;

/** The friction ridge images whose gray levels mean something. */
public final class MeasuredPrints {

  private static final int GRAY_BITS = 8;

  private final ExaminationInput examinee;
  private final Positions positions;
  private final double blankShare;

  public MeasuredPrints(ExaminationInput examinee) {
    this.examinee = examinee;
    this.positions = new Positions(examinee.tables());
    this.blankShare = examinee.tables().pixelLimits().limit("blank-share").share();
  }

  /** Decoded, with more than black and white in them, and not blank. */
  public List<ExaminedImage> gray() {
    return examinee.prints().stream()
        .filter(image -> image.pixels().filter(pixels -> pixels.showsPrint(blankShare)).isPresent())
        .toList();
  }

  /** As {@link #scanned()}, and gray images that show black and white alone too. */
  public List<ExaminedImage> marked() {
    return examinee.prints().stream()
        .filter(image -> image.bitsPerPixel().orElse(GRAY_BITS) > 1)
        .filter(image -> image.pixels().filter(pixels -> pixels.isMarked(blankShare)).isPresent())
        .filter(image -> !positions.isTrace(image.impression()))
        .toList();
  }

  /** Those among them that a finger or a palm was laid down for: a trace is as it was found. */
  public List<ExaminedImage> scanned() {
    return gray().stream().filter(image -> !positions.isTrace(image.impression())).toList();
  }
}
