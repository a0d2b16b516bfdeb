package ridgeproof.examination.comparison;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.comparison.PrintComparison.Reason;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.matching.SequenceCheck;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Asks whether two images show the same fingers. Lack of a match says nothing; only a clear match
 * with another finger of the other transaction says that a finger is a different one. The order of
 * the transactions makes no difference to the answer.
 */
final class FingerComparator {

  private final TransactionPrints first;
  private final TransactionPrints second;
  private final SequenceLimits limits;

  /**
   * @param limits from which similarity two prints count as of one finger
   */
  FingerComparator(TransactionPrints first, TransactionPrints second, SequenceLimits limits) {
    this.first = first;
    this.second = second;
    this.limits = limits;
  }

  FingerComparison answer(ExaminedImage left, ExaminedImage right) {
    List<FingerPosition> named = TransactionPrints.named(left);
    List<FingerPosition> fingers =
        named.stream()
            .filter(TransactionPrints.named(right)::contains)
            .filter(finger -> !first.isMissing(finger) || !second.isMissing(finger))
            .toList();
    Map<FingerPosition, PrintComparison> answers = new EnumMap<>(FingerPosition.class);
    Map<FingerPosition, Double> unlike = new EnumMap<>(FingerPosition.class);
    for (FingerPosition finger : fingers) {
      Optional<Reason> obstacle = obstacle(finger, left, right);
      if (obstacle.isPresent()) {
        answers.put(finger, PrintComparison.untold(finger, obstacle.get(), 0));
        continue;
      }
      double similarity = similarity(first.of(left).get(finger), second.of(right).get(finger));
      if (similarity >= limits.threshold()) {
        answers.put(
            finger,
            PrintComparison.same(
                finger,
                similarity,
                first.of(left).get(finger).alignment(second.of(right).get(finger))));
      } else {
        unlike.put(finger, similarity);
      }
    }
    if (!unlike.isEmpty()) {
      answers.putAll(amongOthers(unlike, left, right));
    }
    return new FingerComparison(fingers.stream().map(answers::get).toList());
  }

  private Optional<Reason> obstacle(
      FingerPosition finger, ExaminedImage left, ExaminedImage right) {
    if (TransactionPrints.ppi(left).isEmpty() || TransactionPrints.ppi(right).isEmpty()) {
      return Optional.of(Reason.UNUSABLE_RESOLUTION);
    }
    if (!first.of(left).containsKey(finger)) {
      return Optional.of(
          first.isMissing(finger) ? Reason.DECLARED_MISSING_IN_FIRST : Reason.NO_PRINT_IN_FIRST);
    }
    if (!second.of(right).containsKey(finger)) {
      return Optional.of(
          second.isMissing(finger) ? Reason.DECLARED_MISSING_IN_SECOND : Reason.NO_PRINT_IN_SECOND);
    }
    return Optional.empty();
  }

  private static double similarity(Minutiae left, Minutiae right) {
    return Math.max(right.similarities(List.of(left))[0], left.similarities(List.of(right))[0]);
  }

  /** Each print held against all prints of the other transaction. */
  private List<Map<FingerPosition, FingerMatchResult>> held(
      Map<FingerPosition, Double> unlike, ExaminedImage left, ExaminedImage right) {
    Map<FingerPosition, Minutiae> ofLeft = new EnumMap<>(first.of(left));
    Map<FingerPosition, Minutiae> ofRight = new EnumMap<>(second.of(right));
    ofLeft.keySet().retainAll(unlike.keySet());
    ofRight.keySet().retainAll(unlike.keySet());
    return List.of(
        byFinger(SequenceCheck.check(first.all(left), ofRight, limits).answers()),
        byFinger(SequenceCheck.check(second.all(right), ofLeft, limits).answers()));
  }

  private static Map<FingerPosition, FingerMatchResult> byFinger(List<FingerMatchResult> answers) {
    Map<FingerPosition, FingerMatchResult> byFinger = new EnumMap<>(FingerPosition.class);
    answers.forEach(answer -> byFinger.put(answer.position(), answer));
    return byFinger;
  }

  private Map<FingerPosition, PrintComparison> amongOthers(
      Map<FingerPosition, Double> unlike, ExaminedImage left, ExaminedImage right) {
    List<Map<FingerPosition, FingerMatchResult>> held = held(unlike, left, right);
    Map<FingerPosition, PrintComparison> answers = new EnumMap<>(FingerPosition.class);
    unlike.forEach(
        (finger, similarity) ->
            answers.put(
                finger,
                answer(finger, similarity, held.get(0).get(finger), held.get(1).get(finger))));
    return answers;
  }

  private static PrintComparison answer(
      FingerPosition finger,
      double similarity,
      FingerMatchResult ofSecond,
      FingerMatchResult ofFirst) {
    if (ofSecond.verdict() == Verdict.CONTRADICTED) {
      return different(finger, Reason.SECOND_MATCHES_ANOTHER, similarity, ofSecond);
    }
    if (ofFirst.verdict() == Verdict.CONTRADICTED) {
      return different(finger, Reason.FIRST_MATCHES_ANOTHER, similarity, ofFirst);
    }
    List<FingerMatchResult.Reason> reasons = List.of(ofSecond.reason(), ofFirst.reason());
    Reason reason =
        reasons.contains(FingerMatchResult.Reason.MATCHES_SEVERAL_ROLLS)
            ? Reason.SEVERAL_ALIKE
            : reasons.contains(FingerMatchResult.Reason.TOO_FEW_MINUTIAE)
                ? Reason.TOO_FEW_MINUTIAE
                : Reason.NOT_ALIKE;
    return PrintComparison.untold(finger, reason, similarity);
  }

  private static PrintComparison different(
      FingerPosition finger, Reason reason, double similarity, FingerMatchResult answer) {
    return PrintComparison.different(
        finger, reason, similarity, answer.other().orElseThrow(), answer.otherScore());
  }
}
