package ridgeproof.examination;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.examination.cause.Cause;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.finding.Finding;

/** The causes that are looked for, those that reach furthest first: the file, the card, a print. */
final class CauseSet {

  private static final List<CauseRule> RULES =
      List.of(
          new ScaleCauses(),
          new RidgePeriodCause(),
          new InvertedImages(),
          new CardCauses(),
          new OtherHandCause());

  private CauseSet() {}

  /** Every row of the catalogue that some cause can report. */
  static Set<String> ids() {
    Set<String> ids = new TreeSet<>();
    RULES.forEach(rule -> ids.addAll(rule.ids()));
    return ids;
  }

  static List<Cause> establish(Examinee examinee, List<Finding> found) {
    CauseLog causes = new CauseLog(examinee.tables());
    RULES.forEach(rule -> rule.establish(examinee, found, causes));
    return causes.causes();
  }
}
