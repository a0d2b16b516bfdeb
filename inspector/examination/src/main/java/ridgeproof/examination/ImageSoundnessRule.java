package ridgeproof.examination;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.transaction.ByteRange;

/** The image is there and its bytes are whole. */
final class ImageSoundnessRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of(
        "RP-IMG-006", "RP-IMG-007", "RP-IMG-011", "RP-IMG-013", "RP-IMG-014", "RP-IMG-015");
  }

  @Override
  public void check(Examinee examinee, FindingLog log) {
    for (ExaminedImage image : examinee.images()) {
      if (image.data().isEmpty()) {
        reportAbsent(image, log);
      } else {
        checkByteCount(image, log);
        reportDefects(image, log);
      }
    }
  }

  /** A record that declares its finger missing has no image, and that is right. */
  private static void reportAbsent(ExaminedImage image, FindingLog log) {
    boolean excused =
        image.layout().amputation().flatMap(field -> image.record().field(field)).isPresent();
    if (!excused) {
      log.add("RP-IMG-013", image.location(), Observed.of("no image data"), "an image");
    }
  }

  private static void checkByteCount(ExaminedImage image, FindingLog log) {
    boolean raw = image.statedFormat().filter(format -> format == ImageFormat.RAW).isPresent();
    boolean looksRaw =
        image.header().map(header -> header.format() == ImageFormat.RAW).orElse(true);
    if (!raw
        || !looksRaw
        || image.width().isEmpty()
        || image.height().isEmpty()
        || image.bitsPerPixel().isEmpty()) {
      return;
    }
    long row = ((long) image.width().getAsInt() * image.bitsPerPixel().getAsInt() + 7) / 8;
    long expected = row * image.height().getAsInt();
    int found = image.data().get().length();
    if (found != expected) {
      log.add(
          "RP-IMG-011",
          image.atData(),
          Observed.of(found + " bytes"),
          String.format(
              Locale.ROOT,
              "%d bytes for %d x %d pixels of %d bits",
              expected,
              image.width().getAsInt(),
              image.height().getAsInt(),
              image.bitsPerPixel().getAsInt()));
    }
  }

  private static void reportDefects(ExaminedImage image, FindingLog log) {
    // The header walk and the decoder may meet the same damage.
    Set<ImageDefect> defects = new LinkedHashSet<>();
    image.header().ifPresent(header -> defects.addAll(header.defects()));
    defects.addAll(image.decodingDefects());
    defects.forEach(defect -> report(image, defect, log));
    boolean unknown =
        image.header().isPresent()
            && image.pixels().isEmpty()
            && defects.stream().noneMatch(ImageSoundnessRule::stopsDecoding);
    if (unknown) {
      log.add(
          "RP-IMG-014",
          image.atData(),
          Observed.of(image.header().get().format().label()),
          "a format that can be decoded");
    }
  }

  /** Whether it tells by itself why there are no pixels. */
  private static boolean stopsDecoding(ImageDefect defect) {
    return defect.kind() == ImageDefect.Kind.DAMAGE || defect.kind() == ImageDefect.Kind.LIMIT;
  }

  private static void report(ExaminedImage image, ImageDefect defect, FindingLog log) {
    Location place = image.location().at(new ByteRange(defect.offset(), 0));
    switch (defect.kind()) {
      case DAMAGE ->
          log.add("RP-IMG-006", place, Observed.of(defect.detail()), "a whole codestream");
      case TRAILING_BYTES ->
          log.add("RP-IMG-007", place, Observed.of(defect.detail()), "the image and nothing more");
      case LIMIT ->
          log.add("RP-IMG-015", place, Observed.of(defect.detail()), "an image within the limit");
    }
  }
}
