package ridgeproof.examination.cause.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.facts.SequenceComparison.SeenFinger;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Reason;

/**
 * Rolled and plain prints of different people: one clear pair that does not match may show parts of
 * a finger that do not overlap, but not all clear pairs of a card, nor all of a hand.
 */
public final class StrangersPrintsCause implements CauseRule {

  private static final String RULE = "RP-SEQ-028";
  private static final String NO_MATCH = "RP-SEQ-008";
  private static final String UNVERIFIED = "RP-SEQ-007";

  /** Fingers of one slap, of which none matches. */
  private static final int OF_A_HAND = 3;

  private static final Set<Reason> MATCHING =
      Set.of(Reason.MATCHES_OWN_ROLL, Reason.MATCHES_ANOTHER_ROLL, Reason.MATCHES_SEVERAL_ROLLS);

  /** Prints that match nothing, for each that is only more alike than all others. */
  private static final int FOR_EACH_ALIKE = 4;

  /** Fingers of a card, of which none matches. */
  private static final int OF_A_CARD = 4;

  @Override
  public Set<String> ids() {
    return Set.of(RULE);
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    if (examinee.sequence().isEmpty()) {
      return;
    }
    SequenceComparison sequence = examinee.sequence().get();
    List<Finding> unmatched =
        found.stream()
            .filter(finding -> finding.ruleId().equals(NO_MATCH))
            .filter(
                finding ->
                    causes.causes().stream().noneMatch(c -> c.consequences().include(finding)))
            .toList();
    List<FingerMatchResult> answers = sequence.answers().answers();
    boolean inOrder = sequence.answers().irregularities().isEmpty();
    if (inOrder && unmatched.size() >= OF_A_CARD && isRefuted(answers, unmatched.size())) {
      report(Location.file(), "", unmatched, causes);
      return;
    }
    Map<ExaminedImage, List<Finding>> bySlap = new LinkedHashMap<>();
    for (Finding finding : unmatched) {
      examinee.prints().stream()
          .filter(image -> image.location().record().equals(finding.location().record()))
          .filter(image -> image.ridges().flatMap(RidgeAnalysis::slap).isPresent())
          .forEach(image -> bySlap.computeIfAbsent(image, i -> new ArrayList<>()).add(finding));
    }
    bySlap.forEach(
        (image, findings) -> {
          if (findings.size() >= OF_A_HAND && isRefuted(of(image, sequence), findings.size())) {
            report(image.location(), " of this hand", findings, causes);
          }
        });
  }

  /** Whether none of these matches; one among many may be alike by chance, but not as a match. */
  private static boolean isRefuted(List<FingerMatchResult> answers, int unmatched) {
    long alike = answers.stream().filter(a -> a.reason() == Reason.MOST_LIKE_OWN_ROLL).count();
    return answers.stream().map(FingerMatchResult::reason).noneMatch(MATCHING::contains)
        && alike * FOR_EACH_ALIKE <= unmatched;
  }

  private static List<FingerMatchResult> of(ExaminedImage image, SequenceComparison sequence) {
    return sequence.answers().answers().stream()
        .filter(
            answer -> {
              SeenFinger plain = sequence.plains().get(answer.position());
              return plain != null && plain.image() == image;
            })
        .toList();
  }

  private static void report(
      Location place, String which, List<Finding> unmatched, CauseLog causes) {
    Set<Integer> fingers =
        unmatched.stream()
            .flatMapToInt(finding -> finding.location().position().stream())
            .boxed()
            .collect(Collectors.toSet());
    Consequences others = Consequences.ofRules(NO_MATCH, UNVERIFIED);
    causes.add(
        RULE,
        place,
        Observed.of(
            String.format(
                Locale.ROOT,
                "%d clear plain prints%s match no rolled print",
                unmatched.size(),
                which)),
        "rolled and plain prints of one person",
        unmatched.get(0).evidence(),
        place.record().isEmpty()
            ? others
            : Consequences.exactly(unmatched).or(others.atPositions(fingers)));
  }
}
