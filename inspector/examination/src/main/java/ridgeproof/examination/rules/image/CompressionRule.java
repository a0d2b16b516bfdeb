package ridgeproof.examination.rules.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.spec.limit.CompressionLimit;

/**
 * Friction ridge images are compressed no further than allowed. White paper takes hardly any bytes,
 * so that the size of the file says nothing: what the encoder was set to decides, and where its
 * tables do not tell, the bytes for the area that shows print.
 */
final class CompressionRule implements Rule {

  private static final String RULE = "RP-IMG-016";
  private static final double GRAY_BITS = 8;

  /** What the setting worked out from the tables may be off. */
  private static final double UNCERTAINTY = 1.03;

  private record Found(double bitsPerPixel, String words) {}

  @Override
  public Set<String> ids() {
    return Set.of(RULE);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    List<CompressionLimit> ceilings = ceilings(examinee);
    for (ExaminedImage image : examinee.prints()) {
      image
          .header()
          .ifPresent(
              header ->
                  ceilings.stream()
                      .filter(ceiling -> ceiling.format().equals(header.format().name()))
                      .forEach(ceiling -> check(image, header, ceiling, log)));
    }
  }

  /** The agency's ceilings go before the published ones and have no tolerance. */
  private static List<CompressionLimit> ceilings(ExaminationInput examinee) {
    List<CompressionLimit> published = examinee.tables().compressionCeilings();
    Optional<AgencyProfile> agency = examinee.options().agency();
    if (agency.isEmpty()) {
      return published;
    }
    List<CompressionLimit> ceilings = new ArrayList<>(published);
    agency
        .get()
        .limits()
        .compression()
        .forEach(
            (format, ratio) -> {
              CompressionLimit known =
                  published.stream()
                      .filter(ceiling -> ceiling.format().equals(format))
                      .findFirst()
                      .orElseGet(
                          () ->
                              new CompressionLimit(
                                  format, ratio, OptionalDouble.empty(), 0, agency.get().source()));
              ceilings.remove(known);
              ceilings.add(known.askedBy(ratio, agency.get().source()));
            });
    return ceilings;
  }

  private static void check(
      ExaminedImage image, ImageHeader header, CompressionLimit ceiling, FindingLog log) {
    boolean told = header.quantizerRate().isPresent() && ceiling.bitsPerPixel().isPresent();
    double least = told ? ceiling.leastBitsPerPixel().getAsDouble() : GRAY_BITS / ceiling.most();
    Optional<Found> found = told ? setting(header) : spent(image, header);
    if (found.isEmpty() || found.get().bitsPerPixel() * UNCERTAINTY >= least) {
      return;
    }
    log.add(
        RULE,
        image.atData(),
        Observed.of(found.get().words()),
        told
            ? words("%.0f : 1, a setting of at least %.2f bit per pixel", ceiling.ratio(), least)
            : words("at most %.1f : 1 over the print", ceiling.most()),
        Optional.of(ceiling.source()),
        List.of(Measure.against("bits per pixel", found.get().bitsPerPixel(), "", least)));
  }

  private static Optional<Found> setting(ImageHeader header) {
    double rate = header.quantizerRate().getAsDouble();
    return Optional.of(new Found(rate, words("encoder set to %.2f bit per pixel", rate)));
  }

  /** The bits of the codestream for each pixel of print; bare ground counts as free. */
  private static Optional<Found> spent(ExaminedImage image, ImageHeader header) {
    Optional<GrayLevelStatistics> print = image.print();
    double area = print.map(facts -> facts.markedShare() * facts.all().total()).orElse(0.0);
    if (area <= 0) {
      return Optional.empty();
    }
    double rate = header.extent().length() * GRAY_BITS / area;
    return Optional.of(new Found(rate, words("%.1f : 1 over the print", GRAY_BITS / rate)));
  }

  private static String words(String text, Object... values) {
    return String.format(Locale.ROOT, text, values);
  }
}
