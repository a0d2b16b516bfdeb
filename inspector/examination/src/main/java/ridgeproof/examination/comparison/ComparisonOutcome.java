package ridgeproof.examination.comparison;

import ridgeproof.examination.Verdict;

/** What the second file comes to beside the first, for whoever corrected it. */
public enum ComparisonOutcome {
  /** Nothing that counts differs. */
  SAME,
  /** Every problem is resolved and none is new. */
  RESOLVED,
  /** Problems are resolved, and some are still present or new. */
  BETTER,
  /** The same problems as before. */
  STILL_PRESENT,
  /** Problems are new, and none is resolved or the verdict is worse. */
  WORSE,
  /** They differ, and the problems say nothing of which is better. */
  DIFFERENT;

  static ComparisonOutcome of(boolean same, Verdict first, Verdict second, FindingChanges changes) {
    if (same) {
      return SAME;
    }
    boolean resolved = !FindingChanges.problems(changes.resolved()).isEmpty();
    boolean present = !FindingChanges.problems(changes.present()).isEmpty();
    boolean added = !FindingChanges.problems(changes.added()).isEmpty();
    int step = second.compareTo(first);
    if (step > 0 || step == 0 && added && !resolved) {
      return WORSE;
    }
    if (resolved && !added && !present) {
      return RESOLVED;
    }
    if (step < 0 || resolved && !added) {
      return BETTER;
    }
    return present && !added ? STILL_PRESENT : DIFFERENT;
  }
}
