package ridgeproof.examination.comparison;

import java.util.Optional;
import ridgeproof.ridges.matching.PrintAlignment;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Whether the print that each of two images has of a finger is of one finger.
 *
 * @param finger the name that both prints bear
 * @param similarity of the two, the larger of both directions; 0 where they were not compared
 * @param other the other finger that one of them clearly is of, where it is of one
 * @param otherSimilarity with the print of that finger; 0 without one
 * @param alignment how the second lies on the first, where they match
 */
public record PrintComparison(
    FingerPosition finger,
    Answer answer,
    Reason reason,
    double similarity,
    Optional<FingerPosition> other,
    double otherSimilarity,
    Optional<PrintAlignment> alignment) {

  /** The three answers. */
  public enum Answer {
    SAME_FINGER,
    /** Only on the evidence that one print matches another finger. */
    DIFFERENT_FINGER,
    CANNOT_BE_TOLD
  }

  /** Why an answer is what it is. */
  public enum Reason {
    ALIKE("the prints match"),
    SECOND_MATCHES_ANOTHER("the print in the second file matches another finger of the first file"),
    FIRST_MATCHES_ANOTHER("the print in the first file matches another finger of the second file"),
    NOT_ALIKE(
        "the prints do not match each other or another finger; a poor capture can cause this"),
    SEVERAL_ALIKE("one of the prints matches several fingers"),
    TOO_FEW_MINUTIAE("one of the prints has too few minutiae"),
    NO_PRINT_IN_FIRST("no print found in the first file"),
    NO_PRINT_IN_SECOND("no print found in the second file"),
    DECLARED_MISSING_IN_FIRST("the first file annotates the finger as missing"),
    DECLARED_MISSING_IN_SECOND("the second file annotates the finger as missing"),
    UNUSABLE_RESOLUTION("the resolution is not stated or not usable");

    private final String words;

    Reason(String words) {
      this.words = words;
    }

    /** In plain words. */
    public String words() {
      return words;
    }
  }

  static PrintComparison same(
      FingerPosition finger, double similarity, Optional<PrintAlignment> alignment) {
    return new PrintComparison(
        finger, Answer.SAME_FINGER, Reason.ALIKE, similarity, Optional.empty(), 0, alignment);
  }

  static PrintComparison different(
      FingerPosition finger,
      Reason reason,
      double similarity,
      FingerPosition other,
      double otherSimilarity) {
    return new PrintComparison(
        finger,
        Answer.DIFFERENT_FINGER,
        reason,
        similarity,
        Optional.of(other),
        otherSimilarity,
        Optional.empty());
  }

  static PrintComparison untold(FingerPosition finger, Reason reason, double similarity) {
    return new PrintComparison(
        finger, Answer.CANNOT_BE_TOLD, reason, similarity, Optional.empty(), 0, Optional.empty());
  }

  boolean is(Answer wanted) {
    return answer == wanted;
  }
}
