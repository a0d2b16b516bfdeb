package ridgeproof.ridges.matching;

import java.util.List;
import java.util.Map;
import ridgeproof.spec.layout.FingerPosition;

/** How alike the prints of one card are, each pair asked for no sooner than it matters. */
public interface CardScores {

  /** The fingers of which there is a roll, and how many minutiae it has. */
  Map<FingerPosition, Integer> rolls();

  /** The fingers of which there is a plain print, and how many minutiae it has. */
  Map<FingerPosition, Integer> plains();

  /** Of a plain print with rolls, then with other plain prints. */
  double[] ofPlain(
      FingerPosition plain, List<FingerPosition> rolls, List<FingerPosition> otherPlains);

  /** Of a roll with other rolls. */
  double[] ofRoll(FingerPosition roll, List<FingerPosition> others);

  /**
   * Of a plain print with rolls, by a second template of the plain print; 0 where there is none.
   */
  double[] ofPlainAgain(FingerPosition plain, List<FingerPosition> rolls);

  /**
   * Of a plain print with rolls, by second templates of the rolls; the greater one of both
   * templates of the plain print counts, and 0 where there is none.
   */
  double[] ofRollsAgain(FingerPosition plain, List<FingerPosition> rolls);
}
