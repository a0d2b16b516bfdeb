package ridgeproof.examination.comparison;

import java.util.Optional;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Whether the print that each of two images has of a finger is of one finger.
 *
 * @param finger the name that both prints bear
 * @param similarity of the two, the larger of both directions; 0 where they were not compared
 * @param other the other finger that one of them clearly is of, where it is of one
 * @param otherSimilarity with the print of that finger; 0 without one
 */
public record PrintComparison(
    FingerPosition finger,
    Answer answer,
    Reason reason,
    double similarity,
    Optional<FingerPosition> other,
    double otherSimilarity) {

  /** The three answers. */
  public enum Answer {
    SAME_FINGER,
    /** Only on the evidence that one print matches another finger. */
    DIFFERENT_FINGER,
    CANNOT_BE_TOLD
  }

  /** Why an answer is what it is. */
  public enum Reason {
    ALIKE("the two prints match"),
    SECOND_MATCHES_ANOTHER(
        "the print in the second file matches another finger of the first file, not this one"),
    FIRST_MATCHES_ANOTHER(
        "the print in the first file matches another finger of the second file, not this one"),
    NOT_ALIKE(
        "the two prints do not match, and neither matches another finger; a poor capture of the"
            + " same finger can also give this result"),
    SEVERAL_ALIKE("one of the prints matches several fingers"),
    TOO_FEW_MINUTIAE("one of the prints has too few minutiae to compare"),
    NO_PRINT_IN_FIRST("no print was found in the first file"),
    NO_PRINT_IN_SECOND("no print was found in the second file"),
    DECLARED_MISSING_IN_FIRST("the first file annotates the finger as missing"),
    DECLARED_MISSING_IN_SECOND("the second file annotates the finger as missing"),
    UNUSABLE_RESOLUTION("a resolution is not stated or cannot be used");

    private final String words;

    Reason(String words) {
      this.words = words;
    }

    /** In plain words. */
    public String words() {
      return words;
    }
  }

  static PrintComparison same(FingerPosition finger, double similarity) {
    return new PrintComparison(
        finger, Answer.SAME_FINGER, Reason.ALIKE, similarity, Optional.empty(), 0);
  }

  static PrintComparison different(
      FingerPosition finger,
      Reason reason,
      double similarity,
      FingerPosition other,
      double otherSimilarity) {
    return new PrintComparison(
        finger, Answer.DIFFERENT_FINGER, reason, similarity, Optional.of(other), otherSimilarity);
  }

  static PrintComparison untold(FingerPosition finger, Reason reason, double similarity) {
    return new PrintComparison(
        finger, Answer.CANNOT_BE_TOLD, reason, similarity, Optional.empty(), 0);
  }

  boolean is(Answer wanted) {
    return answer == wanted;
  }
}
