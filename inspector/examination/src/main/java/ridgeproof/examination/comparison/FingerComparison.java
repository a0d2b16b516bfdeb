package ridgeproof.examination.comparison;

import java.util.List;
import ridgeproof.examination.comparison.PrintComparison.Answer;

/**
 * What the ridges of two images say.
 *
 * @param prints one for each finger that both positions name, from left to right; none where they
 *     do not name the same ones of the ten fingers
 */
public record FingerComparison(List<PrintComparison> prints) {

  public FingerComparison {
    prints = List.copyOf(prints);
  }

  /** One answer for all fingers: the same only where each is, different where one is. */
  public Answer answer() {
    if (prints.stream().anyMatch(print -> print.is(Answer.DIFFERENT_FINGER))) {
      return Answer.DIFFERENT_FINGER;
    }
    return !prints.isEmpty() && prints.stream().allMatch(print -> print.is(Answer.SAME_FINGER))
        ? Answer.SAME_FINGER
        : Answer.CANNOT_BE_TOLD;
  }
}
