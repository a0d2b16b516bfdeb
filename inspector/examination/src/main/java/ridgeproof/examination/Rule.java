package ridgeproof.examination;

import java.util.Set;
import ridgeproof.finding.FindingLog;

/** A requirement that needs more than a row of a layout. */
interface Rule {

  /** The rows of the catalogue that it can report. */
  Set<String> ids();

  void check(Examinee examinee, FindingLog log);
}
