package ridgeproof.examination.safecopy;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.finding.CausedBy;
import ridgeproof.finding.Finding;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Which finger each print of a file shows, as far as the examination found it to be another than
 * its position names.
 *
 * @param plains the finger that a plain print shows, by position code
 * @param rolls the finger that a rolled print shows, by position code
 * @param strangers rolled prints of another person, by position code
 */
record ShownFingers(
    Map<Integer, Integer> plains, Map<Integer, Integer> rolls, Set<Integer> strangers) {

  private static final String NO_MATCH = "RP-SEQ-008";
  private static final String STRANGERS = "RP-SEQ-028";
  private static final String OTHER_HAND = "RP-SEQ-010";
  private static final String OTHER_HANDS = "RP-SEQ-027";

  private static final Set<String> OF_WHOLE_IMAGES =
      Set.of("RP-SEQ-020", "RP-SEQ-021", "RP-SEQ-022", "RP-SEQ-025");

  /** The finger at the same place from the left in the slap of the other hand. */
  private static final Map<Integer, Integer> IN_SLAP_ORDER =
      Map.of(2, 10, 3, 9, 4, 8, 5, 7, 7, 5, 8, 4, 9, 3, 10, 2);

  private static final Map<Integer, List<Integer>> SLAPS =
      Map.of(13, List.of(2, 3, 4, 5), 14, List.of(7, 8, 9, 10));

  ShownFingers {
    plains = Map.copyOf(plains);
    rolls = Map.copyOf(rolls);
    strangers = Set.copyOf(strangers);
  }

  static ShownFingers of(FindingsReport report) {
    Map<Integer, Integer> plains = new HashMap<>();
    Map<Integer, Integer> rolls = new HashMap<>();
    // Of images that are turned or mirrored as a whole no finger is in another's place.
    boolean turned =
        report.unexplained().stream().map(Finding::ruleId).anyMatch(OF_WHOLE_IMAGES::contains);
    if (!turned) {
      report.sequence().ifPresent(sequence -> compared(sequence, plains, rolls));
    }
    Set<Integer> strangers = new HashSet<>();
    for (Finding finding : report.everyFinding()) {
      switch (finding.ruleId()) {
        case NO_MATCH -> {
          if (finding.causedBy().map(CausedBy::ruleId).orElse(STRANGERS).equals(STRANGERS)) {
            finding.location().position().ifPresent(strangers::add);
          }
        }
        case OTHER_HANDS -> plains.putAll(IN_SLAP_ORDER);
        case OTHER_HAND -> {
          if (finding.causedBy().isEmpty()) {
            otherHand(finding, report, plains);
          }
        }
        default -> {}
      }
    }
    return new ShownFingers(plains, rolls, strangers);
  }

  private static void otherHand(
      Finding finding, FindingsReport report, Map<Integer, Integer> plains) {
    finding.location().record().stream()
        .mapToObj(report.imagesByRecord()::get)
        .flatMap(image -> image.positions().stream())
        .flatMap(position -> SLAPS.getOrDefault(position, List.of()).stream())
        .forEach(finger -> plains.put(finger, IN_SLAP_ORDER.get(finger)));
  }

  private static void compared(
      SequenceComparison sequence, Map<Integer, Integer> plains, Map<Integer, Integer> rolls) {
    Map<FingerPosition, FingerMatchResult> answers = new HashMap<>();
    sequence.answers().answers().forEach(answer -> answers.put(answer.position(), answer));
    boolean hands = false;
    Set<FingerPosition> placed = new HashSet<>();
    for (SequenceError found : sequence.answers().irregularities()) {
      placed.addAll(found.positions());
      switch (found.kind()) {
        case HANDS_EXCHANGED -> hands = true;
        case ROLLED_TWICE -> twice(found.positions(), answers, rolls);
        case PLAIN_TWICE -> twice(found.positions(), answers, plains);
        case EXCHANGED, THUMBS_EXCHANGED -> {
          rolls.put(code(found.positions().get(0)), code(found.positions().get(1)));
          rolls.put(code(found.positions().get(1)), code(found.positions().get(0)));
        }
        case ROTATED, SHIFTED -> ring(found.positions(), answers, rolls);
        case FOUND_ELSEWHERE -> placed.removeAll(found.positions());
        default -> {}
      }
    }
    for (FingerMatchResult answer : answers.values()) {
      Optional<FingerPosition> other = elsewhere(answer);
      if (other.isPresent() && (hands || !placed.contains(answer.position()))) {
        plains.put(code(answer.position()), code(other.get()));
      }
    }
  }

  private static Optional<FingerPosition> elsewhere(FingerMatchResult answer) {
    return answer.verdict() == Verdict.CONTRADICTED ? answer.other() : Optional.empty();
  }

  /**
   * The print that is known to be where it belongs shows its own finger; the other shows it too.
   */
  private static void twice(
      List<FingerPosition> pair,
      Map<FingerPosition, FingerMatchResult> answers,
      Map<Integer, Integer> prints) {
    FingerMatchResult second = answers.get(pair.get(1));
    boolean secondIsRight = second != null && second.verdict() == Verdict.CONFIRMED;
    int right = code(pair.get(secondIsRight ? 1 : 0));
    prints.put(code(pair.get(secondIsRight ? 0 : 1)), right);
  }

  /** A roll shows the finger whose plain print matches it; a faint print closes the ring. */
  private static void ring(
      List<FingerPosition> positions,
      Map<FingerPosition, FingerMatchResult> answers,
      Map<Integer, Integer> rolls) {
    Set<Integer> open = new HashSet<>();
    positions.forEach(position -> open.add(code(position)));
    Set<Integer> fingers = new HashSet<>(open);
    for (FingerPosition position : positions) {
      Optional<FingerPosition> other =
          Optional.ofNullable(answers.get(position)).flatMap(ShownFingers::elsewhere);
      if (other.isPresent() && open.remove(code(other.get()))) {
        rolls.put(code(other.get()), code(position));
        fingers.remove(code(position));
      }
    }
    if (open.size() == 1) {
      rolls.put(open.iterator().next(), fingers.iterator().next());
    }
  }

  private static int code(FingerPosition position) {
    return position.code();
  }
}
