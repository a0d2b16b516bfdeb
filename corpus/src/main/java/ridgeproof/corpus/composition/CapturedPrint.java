package ridgeproof.corpus.composition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.scenario.Mistake;
import ridgeproof.spec.layout.FingerPosition;

/**
 * One image as it was taken, and what is true of it.
 *
 * @param box the position code it is filed under
 * @param shown the fingers that it shows, in the order of the impression's boxes
 * @param labels the fingers that it is said to show, in the same order
 * @param labelledPpi pixels per inch that the record states
 * @param mistake what went wrong with the box
 */
public record CapturedPrint(
    int box,
    List<FingerPosition> shown,
    List<FingerPosition> labels,
    Impression impression,
    int labelledPpi,
    Map<CaptureDefect, Double> defects,
    Optional<Mistake.Kind> mistake) {

  private static final int FIRST_PLAIN = 11;

  public CapturedPrint {
    shown = List.copyOf(shown);
    labels = List.copyOf(labels);
    defects = Map.copyOf(defects);
  }

  /** Whether the box is one of the ten for rolled fingers. */
  public boolean isRolled() {
    return box < FIRST_PLAIN;
  }

  /** Whether the box is for several fingers. */
  public boolean showsSeveral() {
    return box > FIRST_PLAIN + 1;
  }
}
