package ridgeproof.finding;

import java.util.List;
import ridgeproof.spec.RuleRow;
import ridgeproof.spec.Severity;
import ridgeproof.spec.Source;

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
    List<Measure> evidence) {

  public Finding {
    evidence = List.copyOf(evidence);
  }

  /** The same finding as a profile judges it. */
  public Finding withSeverity(Severity other) {
    return new Finding(
        rule, other, location, observed, required, explanation, remedy, source, evidence);
  }

  public String ruleId() {
    return rule.id();
  }
}
