package ridgeproof.examination.rules.image;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.spec.limit.ImageSizeLimit;
import ridgeproof.spec.limit.ResolutionClass;

/** Friction ridge images keep to the published resolutions, sizes and depths. */
final class ImageLimitsRule implements Rule {

  /**
   * A device may be one percent off in its resolution, and so in the size of an image of full
   * width.
   */
  private static final double SIZE_TOLERANCE = 0.01;

  /** Of 808 columns where 800 are allowed. */
  private static final double ROUNDING = 1e-9;

  private static final int GRAY_BITS = 8;
  private static final int LATENT_TYPE = 13;

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-008", "RP-IMG-009", "RP-IMG-010", "RP-IMG-017", "RP-IMG-018");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    SpecTables tables = examinee.tables();
    List<ImageSizeLimit> sizes = tables.imageSizes();
    Optional<AgencyProfile> agency = examinee.options().agency();
    int version = examinee.transaction().version();
    for (ExaminedImage image : examinee.prints()) {
      image.density().ifPresent(density -> checkDensity(image, density, tables, agency, log));
      checkSize(image, sizes, version, log);
      if (image.bitsPerPixel().isPresent() && image.bitsPerPixel().getAsInt() > GRAY_BITS) {
        log.add(
            "RP-IMG-018",
            image.layout().bitsPerPixel().map(image::at).orElse(image.location()),
            Observed.of(image.bitsPerPixel().getAsInt() + " bits per pixel"),
            "8 bits, gray");
      }
    }
  }

  /** The published classes of the record type, of which an agency may accept only some. */
  private static List<ResolutionClass> resolutions(
      ExaminedImage image, SpecTables tables, Optional<AgencyProfile> agency) {
    List<ResolutionClass> published = tables.resolutionsOf(image.record().type());
    Set<Integer> accepted = agency.map(profile -> profile.limits().resolutions()).orElse(Set.of());
    if (accepted.isEmpty() || image.record().type() == LATENT_TYPE) {
      return published;
    }
    List<ResolutionClass> chosen =
        tables.resolutionClasses().stream()
            .filter(resolution -> accepted.contains((int) resolution.ppi()))
            .map(resolution -> resolution.askedBy(agency.get().source()))
            .toList();
    List<ResolutionClass> both =
        chosen.stream()
            .filter(c -> published.stream().anyMatch(p -> p.name().equals(c.name())))
            .toList();
    return both.isEmpty() ? chosen : both;
  }

  private static void checkDensity(
      ExaminedImage image,
      PixelDensity density,
      SpecTables tables,
      Optional<AgencyProfile> agency,
      FindingLog log) {
    double horizontal = density.horizontalPpi();
    double vertical = density.verticalPpi();
    List<ResolutionClass> allowed = resolutions(image, tables, agency);
    if (Math.abs(horizontal - vertical) > horizontal * SIZE_TOLERANCE) {
      log.add(
          "RP-IMG-017",
          image.layout().verticalScale().map(image::at).orElse(image.location()),
          Observed.of(String.format(Locale.US, "%.0f and %.0f ppi", horizontal, vertical)),
          "equal resolutions");
    } else if (!allowed.isEmpty() && allowed.stream().noneMatch(c -> c.admits(horizontal))) {
      log.add(
          "RP-IMG-008",
          image.layout().horizontalScale().map(image::at).orElse(image.location()),
          Observed.of(String.format(Locale.US, "%.1f ppi", horizontal)),
          String.join(
              " or ",
              allowed.stream().map(c -> String.format(Locale.US, "%.0f ppi", c.ppi())).toList()),
          Optional.of(allowed.get(0).source()),
          List.of(Measure.against("resolution", horizontal, "ppi", allowed.get(0).ppi())));
    }
  }

  private static void checkSize(
      ExaminedImage image, List<ImageSizeLimit> sizes, int version, FindingLog log) {
    if (image.density().isEmpty()
        || image.position().isEmpty()
        || image.trueWidth().isEmpty()
        || image.trueHeight().isEmpty()) {
      return;
    }
    String position = Integer.toString(image.position().getAsInt());
    sizes.stream()
        .filter(
            limit ->
                limit.position().equals(position)
                    && limit.recordTypes().contains(image.record().type())
                    && limit.versions().contains(version))
        .findFirst()
        .ifPresent(limit -> checkSize(image, limit, log));
  }

  private static void checkSize(ExaminedImage image, ImageSizeLimit limit, FindingLog log) {
    PixelDensity density = image.density().orElseThrow();
    double width =
        image.trueWidth().getAsInt() / density.horizontalPpi() * PixelDensity.MM_PER_INCH;
    double height =
        image.trueHeight().getAsInt() / density.verticalPpi() * PixelDensity.MM_PER_INCH;
    double excess = Math.max(width / limit.maxWidthMm(), height / limit.maxHeightMm()) - 1;
    // A scale of 500 pixels to the inch is also written as 19.69 to the millimetre.
    if (width <= limit.maxWidthMm() + 0.05 && height <= limit.maxHeightMm() + 0.05) {
      return;
    }
    log.add(
        excess <= SIZE_TOLERANCE + ROUNDING ? "RP-IMG-010" : "RP-IMG-009",
        image.at(image.layout().width()),
        Observed.of(String.format(Locale.US, "%.2f x %.2f mm", width, height)),
        String.format(Locale.US, "at most %.2f x %.2f mm", limit.maxWidthMm(), limit.maxHeightMm()),
        Optional.of(limit.source()),
        List.of(
            Measure.against("width", width, "mm", limit.maxWidthMm()),
            Measure.against("height", height, "mm", limit.maxHeightMm())));
  }
}
