package ridgeproof.ridges.matching;

import java.util.List;

/**
 * What a sequence check found.
 *
 * @param answers one for each finger that has a roll or a plain print, by its code
 * @param irregularities named, the surest first
 * @param threshold the similarity that counted as a match
 */
public record SequenceResult(
    List<FingerMatchResult> answers, List<SequenceError> irregularities, double threshold) {

  public SequenceResult {
    answers = List.copyOf(answers);
    irregularities = List.copyOf(irregularities);
  }
}
