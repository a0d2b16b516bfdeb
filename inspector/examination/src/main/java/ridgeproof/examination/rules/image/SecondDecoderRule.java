package ridgeproof.examination.rules.image;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.facts.SecondDecoding;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.measure.PixelDifference;
import ridgeproof.spec.limit.PixelLimits.PixelLimit;

/** Another decoder, where one was asked, gives the same image as ours. */
final class SecondDecoderRule implements Rule {

  @Override
  public Set<String> ids() {
    return Set.of("RP-IMG-041", "RP-IMG-042", "RP-IMG-043");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    for (ExaminedImage image : examinee.images()) {
      image
          .pixels()
          .flatMap(PixelStatistics::second)
          .ifPresent(second -> check(image, second, examinee, log));
    }
  }

  private static void check(
      ExaminedImage image, SecondDecoding second, ExaminationInput examinee, FindingLog log) {
    if (second.difference().isEmpty()) {
      log.add(
          "RP-IMG-042",
          image.atData(),
          Observed.of("no image of the same size"),
          "an image from both decoders");
      return;
    }
    PixelLimit most = examinee.tables().pixelLimits().limit("decoder-difference");
    PixelDifference difference = second.difference().get();
    log.add(
        difference.largest() > most.value() ? "RP-IMG-041" : "RP-IMG-043",
        image.atData(),
        Observed.of(
            String.format(
                Locale.ROOT,
                "largest difference %s, mean %.5f gray levels",
                difference.largest(),
                difference.mean())),
        String.format(Locale.ROOT, "at most %.0f gray level", most.value()),
        Optional.of(most.source()),
        List.of(
            Measure.against(
                "largest difference", difference.largest(), "gray levels", most.value()),
            Measure.of("mean difference", difference.mean(), "gray levels")));
  }
}
