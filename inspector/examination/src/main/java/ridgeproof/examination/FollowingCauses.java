package ridgeproof.examination;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.finding.Finding;

/**
 * Findings that say once more what another one says: of bytes that were not read, of separators
 * that are gone throughout, and of one finger that is annotated in several fields.
 */
final class FollowingCauses implements CauseRule {

  private static final Set<String> NOT_READ = Set.of("RP-STR-012", "RP-STR-018");
  private static final String SEPARATOR = "RP-STR-007";
  private static final String ANNOTATED = "RP-TXN-005";

  /** Fewer separators that are wrong may be as many faults. */
  private static final int SEVERAL = 4;

  /** Prints that may be in the bytes that were not read, and what their records would change. */
  private static final Consequences OF_UNREAD =
      Consequences.ofRules(
          "RP-STR-014",
          "RP-STR-016",
          "RP-TXN-001",
          "RP-TXN-002",
          "RP-TXN-004",
          "RP-TXN-007",
          "RP-TXN-040",
          "RP-TXN-041",
          "RP-TXN-042",
          "RP-TXN-050");

  private static final Consequences OF_SEPARATORS =
      Consequences.ofRules(
          SEPARATOR,
          "RP-STR-004",
          "RP-STR-005",
          "RP-STR-006",
          "RP-STR-008",
          "RP-STR-009",
          "RP-STR-014",
          "RP-STR-017",
          "RP-STR-023",
          "RP-COD",
          "RP-FLD");

  @Override
  public Set<String> ids() {
    return Set.of();
  }

  @Override
  public void establish(Examinee examinee, List<Finding> found, CauseLog causes) {
    first(found, NOT_READ).ifPresent(finding -> causes.add(finding, OF_UNREAD));
    if (found.stream().filter(finding -> finding.ruleId().equals(SEPARATOR)).count() >= SEVERAL) {
      first(found, Set.of(SEPARATOR)).ifPresent(finding -> causes.add(finding, OF_SEPARATORS));
    }
    found.stream()
        .filter(finding -> finding.ruleId().equals(ANNOTATED))
        .forEach(finding -> causes.add(finding, ofAnnotation(finding)));
  }

  private static Optional<Finding> first(List<Finding> found, Set<String> rules) {
    return found.stream().filter(finding -> rules.contains(finding.ruleId())).findFirst();
  }

  /** The same annotation in 2.084 and 14.018, and the segment of a finger that is there. */
  private static Consequences ofAnnotation(Finding cause) {
    return Consequences.ofRules(ANNOTATED, "RP-TXN-022", "RP-TXN-035", "RP-TXN-054")
        .onlyWhere(
            other ->
                cause.location().position().isPresent()
                    && other.location().position().equals(cause.location().position()));
  }
}
