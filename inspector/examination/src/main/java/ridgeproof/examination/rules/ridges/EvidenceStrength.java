package ridgeproof.examination.rules.ridges;

import java.util.Locale;
import ridgeproof.finding.Measure;

/** How strong the evidence of all prints of a card is, in words and as odds. */
final class EvidenceStrength {

  private static final double MODERATE = 1;
  private static final double STRONG = 2;
  private static final double VERY_STRONG = 4;

  /** What was fitted on some thousand pairs is good for no more. */
  private static final double MOST = 6;

  private EvidenceStrength() {}

  /**
   * For instance: strong evidence of all prints together, about 500 to 1.
   *
   * @param odds as a power of ten
   */
  static Measure measure(double odds) {
    String name = words(odds) + " evidence from all prints together, " + ratio(odds);
    return Measure.of(name + " (decimal logarithm)", odds, "");
  }

  private static String words(double odds) {
    if (odds >= VERY_STRONG) {
      return "very strong";
    }
    return odds >= STRONG ? "strong" : odds >= MODERATE ? "moderate" : "weak";
  }

  /** One digit is all that such odds are good for. */
  private static String ratio(double odds) {
    if (odds >= MOST) {
      return "more than 1,000,000 to 1";
    }
    double digit = Math.pow(10, Math.floor(odds));
    return String.format(
        Locale.ROOT, "about %,.0f to 1", Math.round(Math.pow(10, odds) / digit) * digit);
  }
}
