package ridgeproof.examination.cause;

import java.util.List;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.Finding;

/**
 * Establishes what happened to a whole file, to a card or to a print. It runs after the rules, also
 * for a file that has no records, and takes from their findings what is only a consequence.
 */
public interface CauseRule {

  /** The rows of the catalogue that it can report. */
  Set<String> ids();

  /**
   * @param found what reading and the rules found
   */
  void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes);
}
