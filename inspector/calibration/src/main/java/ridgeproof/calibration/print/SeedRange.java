package ridgeproof.calibration.print;

import java.util.Locale;

/** Which seeds limits may be fitted on, and which they may be judged by; none serves for both. */
public enum SeedRange {
  TRAINING(1, 999_999),
  EVALUATION(1_000_000, 1_999_999);

  private final long first;
  private final long last;

  SeedRange(long first, long last) {
    this.first = first;
    this.last = last;
  }

  /**
   * The seed itself.
   *
   * @throws IllegalArgumentException when it belongs to the other
   */
  public long checked(long seed) {
    if (seed < first || seed > last) {
      throw new IllegalArgumentException(
          "seed "
              + seed
              + " is not for "
              + name().toLowerCase(Locale.ROOT)
              + ": "
              + first
              + " to "
              + last);
    }
    return seed;
  }
}
