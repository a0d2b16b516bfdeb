package ridgeproof.examination.cause;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import java.util.function.Predicate;
import ridgeproof.finding.Finding;

/**
 * Which findings a cause explains. Say it as narrowly as the cause is proved: a finding that would
 * be there without the cause has to stay.
 */
public final class Consequences {

  private final Predicate<Finding> reach;

  private Consequences(Predicate<Finding> reach) {
    this.reach = reach;
  }

  /** The cause explains nothing but itself. */
  public static Consequences none() {
    return new Consequences(finding -> false);
  }

  /** Every other finding: for a file that is something else, or wrapped in something else. */
  public static Consequences all() {
    return new Consequences(finding -> true);
  }

  /** The findings of which this holds. */
  public static Consequences where(Predicate<Finding> condition) {
    return new Consequences(condition);
  }

  /** These findings and no equal ones: for a cause that was proved by undoing it. */
  public static Consequences exactly(Collection<Finding> findings) {
    Set<Finding> explained = Collections.newSetFromMap(new IdentityHashMap<>());
    explained.addAll(findings);
    return new Consequences(explained::contains);
  }

  /** The findings of these rules ({@code RP-SEQ-002}) or areas of rules ({@code RP-SEQ}). */
  public static Consequences ofRules(String... rulesOrAreas) {
    Set<String> wanted = Set.of(rulesOrAreas);
    return new Consequences(
        finding ->
            wanted.contains(finding.ruleId()) || wanted.contains("RP-" + finding.rule().area()));
  }

  /** Only those of the records with these ordinals. */
  public Consequences inRecords(Set<Integer> ordinals) {
    return onlyWhere(
        finding ->
            finding.location().record().isPresent()
                && ordinals.contains(finding.location().record().getAsInt()));
  }

  /** Only those that name one of these friction ridge positions. */
  public Consequences atPositions(Set<Integer> positions) {
    return onlyWhere(
        finding ->
            finding.location().position().isPresent()
                && positions.contains(finding.location().position().getAsInt()));
  }

  /** Only those of the record of this finding, or without a record where it has none. */
  public Consequences inRecordOf(Finding cause) {
    return onlyWhere(other -> other.location().record().equals(cause.location().record()));
  }

  /** Only those that weigh no more: one that does is no mere consequence. */
  public Consequences noWorseThan(Finding cause) {
    return onlyWhere(other -> !other.severity().worseThan(cause.severity()));
  }

  /** Only those of which this holds too. */
  public Consequences onlyWhere(Predicate<Finding> condition) {
    return new Consequences(reach.and(condition));
  }

  /** Those of either. */
  public Consequences or(Consequences other) {
    return new Consequences(reach.or(other.reach));
  }

  /** Whether it is one of them. */
  public boolean include(Finding finding) {
    return reach.test(finding);
  }
}
