package ridgeproof.examination.rules;

import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.FindingLog;

/** A requirement that needs more than a row of a layout. */
public interface Rule {

  /** The rows of the catalogue that it can report. */
  Set<String> ids();

  void check(ExaminationInput examinee, FindingLog log);
}
