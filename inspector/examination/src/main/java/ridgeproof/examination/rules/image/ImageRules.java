package ridgeproof.examination.rules.image;

import java.util.List;
import ridgeproof.examination.rules.Rule;

/** Codestreams and gray levels. */
public final class ImageRules {

  private ImageRules() {}

  /** The rules of this package, in the order in which they run. */
  public static List<Rule> all() {
    return List.of(
        new ImageAgreementRule(),
        new ImageSoundnessRule(),
        new ImageLimitsRule(),
        new CompressionRule(),
        new ImageHistoryRule(),
        new BlankImageRule(),
        new GrayRangeRule(),
        new ImageGroundRule(),
        new SecondDecoderRule(),
        new PrintCompressionRule());
  }
}
