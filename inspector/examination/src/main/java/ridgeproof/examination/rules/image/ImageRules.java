package ridgeproof.examination.rules.image;

import java.util.List;
import ridgeproof.examination.rules.Rule;

/** Codestreams and gray levels. */
public final class ImageRules {

  private ImageRules() {}

  /** The rules of this package, in the order in which they run. */
  public static List<Rule> all() {
    return List.of(
        new ImageHeaderConsistencyRule(),
        new ImageIntegrityRule(),
        new ImageLimitsRule(),
        new CompressionRule(),
        new RecompressionRule(),
        new BlankImageRule(),
        new GrayRangeRule(),
        new ImageBackgroundRule(),
        new SecondDecoderRule(),
        new PrintCompressionRule());
  }
}
