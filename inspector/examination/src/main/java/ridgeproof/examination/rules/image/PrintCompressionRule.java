package ridgeproof.examination.rules.image;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.spec.limit.DisallowedCompression;

/** Friction ridge images are compressed in the format that belongs to their resolution. */
final class PrintCompressionRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-012", "RP-IMG-023", "RP-IMG-024");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    List<DisallowedCompression> misuses = examinee.tables().agreements().printCompressions();
    for (ExaminedImage image : examinee.prints()) {
      for (DisallowedCompression misuse : misuses) {
        if (image.statedFormat().map(ImageFormat::name).filter(misuse.format()::equals).isPresent()
            && applies(misuse, image)) {
          log.add(
              misuse.rule(),
              image.layout().compression().map(image::at).orElse(image.location()),
              Observed.of(observed(image)),
              misuse.instead(),
              Optional.of(misuse.source()),
              List.of());
        }
      }
    }
  }

  private static boolean applies(DisallowedCompression misuse, ExaminedImage image) {
    return misuse.atAnyResolution()
        || image.density().filter(density -> misuse.covers(density.horizontalPpi())).isPresent();
  }

  private static String observed(ExaminedImage image) {
    String format = image.statedFormat().orElseThrow().label();
    return image
        .density()
        .map(
            density ->
                String.format(Locale.ROOT, "%s at %.0f ppi", format, density.horizontalPpi()))
        .orElse(format);
  }
}
