package ridgeproof.examination.rules;

import java.util.List;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.FindingLog;
import ridgeproof.spec.rule.RuleRow;

/** A requirement that needs more than a row of a layout. */
public interface Rule {

  /** The rows of the catalogue that it can report. */
  Set<String> ids();

  /** Rows that come with the rule; none where the catalogue of the standard tables has them. */
  default List<RuleRow> rows() {
    return List.of();
  }

  void check(ExaminationInput examinee, FindingLog log);
}
