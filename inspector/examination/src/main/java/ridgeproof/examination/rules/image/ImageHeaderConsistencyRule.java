package ridgeproof.examination.rules.image;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Observed;
import ridgeproof.finding.Quantity;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.spec.layout.FieldNumber;

/** What an image says of itself is what its record says of it. */
final class ImageHeaderConsistencyRule implements Rule {

  /**
   * Encoders round the resolution they note to whole pixels per inch; one percent is the devices'
   * own tolerance.
   */
  private static final double DENSITY_TOLERANCE = 0.01;

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-001", "RP-IMG-002", "RP-IMG-003", "RP-IMG-004", "RP-IMG-005");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    for (ExaminedImage image : examinee.images()) {
      image.header().ifPresent(header -> check(image, header, log));
    }
  }

  private static void check(ExaminedImage image, ImageHeader header, FindingLog log) {
    if (!checkFormat(image, header, log) || header.format() == ImageFormat.RAW) {
      return;
    }
    size(image, "RP-IMG-001", image.layout().width(), header.width(), image.width(), log);
    size(image, "RP-IMG-002", image.layout().height(), header.height(), image.height(), log);
    if (image.bitsPerPixel().isPresent()
        && header.bitsPerPixel() > 0
        && image.bitsPerPixel().getAsInt() != header.bitsPerPixel()) {
      log.add(
          "RP-IMG-003",
          image.layout().bitsPerPixel().map(image::at).orElse(image.location()),
          Observed.of("record " + Quantity.of(image.bitsPerPixel().getAsInt(), "bit")),
          Quantity.of(header.bitsPerPixel(), "bit"));
    }
    checkDensity(image, header, log);
  }

  private static boolean checkFormat(ExaminedImage image, ImageHeader header, FindingLog log) {
    Optional<ImageFormat> stated = image.statedFormat();
    if (stated.isEmpty() || isStoredAs(stated.get(), header.format())) {
      return true;
    }
    log.add(
        "RP-IMG-005",
        image.layout().compression().map(image::at).orElse(image.location()),
        Observed.of("code " + image.compression().orElse("") + ", " + stated.get().label()),
        header.format().label());
    return false;
  }

  private static boolean isStoredAs(ImageFormat stated, ImageFormat found) {
    return stated == found
        || stated == ImageFormat.PEN_VECTORS && found == ImageFormat.RAW
        || stated == ImageFormat.GROUP_4 && (found == ImageFormat.RAW || found == ImageFormat.TIFF);
  }

  private static void size(
      ExaminedImage image,
      String rule,
      FieldNumber field,
      int found,
      OptionalInt stated,
      FindingLog log) {
    if (stated.isPresent() && found > 0 && stated.getAsInt() != found) {
      log.add(
          rule,
          image.at(field),
          Observed.of("record " + Quantity.of(stated.getAsInt(), "pixel")),
          Quantity.of(found, "pixel") + ", as the image has");
    }
  }

  private static void checkDensity(ExaminedImage image, ImageHeader header, FindingLog log) {
    if (image.density().isEmpty() || header.density().isEmpty()) {
      return;
    }
    PixelDensity stated = image.density().get();
    PixelDensity found = header.density().get();
    if (differs(stated.horizontalPpi(), found.horizontalPpi())
        || differs(stated.verticalPpi(), found.verticalPpi())) {
      log.add(
          "RP-IMG-004",
          image.atData(),
          Observed.of(
              String.format(Locale.ROOT, "%.0f ppi inside the image", found.horizontalPpi())),
          String.format(Locale.ROOT, "%.0f ppi, as the record has", stated.horizontalPpi()));
    }
  }

  private static boolean differs(double stated, double found) {
    return Math.abs(stated - found) > stated * DENSITY_TOLERANCE;
  }
}
