package ridgeproof.finding;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;

/**
 * One thing that a file departs in, or that is worth knowing of it.
 *
 * @param rule the row of the catalogue
 * @param severity the rule's, or what a profile made of it
 * @param required what the source asks for
 * @param explanation why it matters
 * @param remedy what to do next
 * @param source the place that asks for it
 * @param evidence the numbers it rests on
 * @param explains of a cause: how many other findings are only its consequences
 * @param causedBy the cause that this finding is only a consequence of
 * @param repeats the same fault at further places; empty where it is at one
 */
public record Finding(
    RuleRow rule,
    Severity severity,
    Location location,
    Observed observed,
    String required,
    String explanation,
    String remedy,
    Source source,
    List<Measure> evidence,
    OptionalInt explains,
    Optional<CausedBy> causedBy,
    List<Finding> repeats) {

  public Finding {
    evidence = List.copyOf(evidence);
    repeats = List.copyOf(repeats);
  }

  /** A finding by itself: no cause, no consequence, no repetition. */
  public Finding(
      RuleRow rule,
      Severity severity,
      Location location,
      Observed observed,
      String required,
      String explanation,
      String remedy,
      Source source,
      List<Measure> evidence) {
    this(
        rule,
        severity,
        location,
        observed,
        required,
        explanation,
        remedy,
        source,
        evidence,
        OptionalInt.empty(),
        Optional.empty(),
        List.of());
  }

  /** The same finding as a profile judges it. */
  public Finding withSeverity(Severity other) {
    return copy(other, location, explains, causedBy, repeats);
  }

  /** The same finding of a copy of the file in which it is elsewhere. */
  public Finding at(Location other) {
    return copy(severity, other, explains, causedBy, repeats);
  }

  /** The same finding as a cause that explains others. */
  public Finding explaining(int others) {
    return copy(severity, location, OptionalInt.of(others), causedBy, repeats);
  }

  /** The same finding as a consequence. */
  public Finding causedBy(CausedBy cause) {
    return copy(severity, location, explains, Optional.of(cause), repeats);
  }

  /** The same finding, which is repeated at these further places. */
  public Finding repeatedAt(List<Finding> places) {
    return copy(severity, location, explains, causedBy, places);
  }

  /** The same finding with what helps in its case. */
  public Finding withRemedy(String other) {
    return new Finding(
        rule,
        severity,
        location,
        observed,
        required,
        explanation,
        other,
        source,
        evidence,
        explains,
        causedBy,
        repeats);
  }

  public String ruleId() {
    return rule.id();
  }

  /** How many places it speaks of, at least 1. */
  public int count() {
    return 1 + repeats.size();
  }

  private Finding copy(
      Severity newSeverity,
      Location newLocation,
      OptionalInt newExplains,
      Optional<CausedBy> newCause,
      List<Finding> newRepeats) {
    return new Finding(
        rule,
        newSeverity,
        newLocation,
        observed,
        required,
        explanation,
        remedy,
        source,
        evidence,
        newExplains,
        newCause,
        newRepeats);
  }
}
