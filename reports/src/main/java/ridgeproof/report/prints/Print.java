package ridgeproof.report.prints;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.spec.layout.FingerPosition;

/**
 * A print in an image, or the image as a whole.
 *
 * @param finger which finger of the image; empty for the image as a whole
 */
public record Print(ExaminedImage image, Optional<FingerPosition> finger) {

  /** The print of a position; of a slap the finger that the position names. */
  static Print of(ExaminedImage image, OptionalInt position) {
    boolean ofImage = position.isEmpty() || position.equals(image.position());
    Optional<FingerPosition> named =
        ofImage ? single(image) : FingerPosition.ofCode(position.getAsInt());
    return new Print(image, named);
  }

  /** The only finger of an image. */
  private static Optional<FingerPosition> single(ExaminedImage image) {
    return image
        .ridges()
        .filter(facts -> facts.slap().isEmpty() && facts.fingers().size() == 1)
        .map(facts -> facts.fingers().keySet().iterator().next());
  }

  /** The code of the finger, or of the whole image. */
  OptionalInt position() {
    return code().isPresent() ? code() : image.position();
  }

  /** The code of the finger where it is one of several in its image. */
  public OptionalInt code() {
    return finger.isPresent() && isInSlap()
        ? OptionalInt.of(finger.get().code())
        : OptionalInt.empty();
  }

  boolean isInSlap() {
    return image.ridges().flatMap(RidgeAnalysis::slap).isPresent();
  }

  /** The ordinal of the record of its image. */
  public int record() {
    return image.record().ordinal();
  }

  Optional<FingerMeasures> measures() {
    return finger
        .flatMap(name -> image.ridges().map(facts -> facts.fingers().get(name)))
        .flatMap(analysis -> analysis.measures());
  }

  /** Within one report the record tells the image. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Print print
        && record() == print.record()
        && finger.equals(print.finger());
  }

  @Override
  public int hashCode() {
    return Objects.hash(record(), finger);
  }

  /** Around the print, where it was found. */
  Optional<RotatedBox> box() {
    return image
        .ridges()
        .flatMap(RidgeAnalysis::slap)
        .flatMap(
            slap ->
                slap.segments().stream()
                    .filter(segment -> finger.filter(segment.position()::equals).isPresent())
                    .flatMap(segment -> segment.box().stream())
                    .findFirst())
        .or(() -> measures().map(found -> found.extent().box()));
  }
}
