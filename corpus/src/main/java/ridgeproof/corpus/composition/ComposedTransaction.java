package ridgeproof.corpus.composition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.scenario.Mistake;
import ridgeproof.corpus.scenario.Scenario;

/**
 * A story as a file, and what is true of its images.
 *
 * @param labels one for each fingerprint image, in the order of the file
 */
public record ComposedTransaction(Scenario scenario, byte[] bytes, List<Label> labels) {

  public ComposedTransaction {
    labels = List.copyOf(labels);
  }

  /**
   * What is true of one image.
   *
   * @param position the position code that it is filed under
   * @param defects what went wrong with the capture, with its strength from 0 to 1
   * @param mistake what went wrong with the box
   */
  public record Label(
      int position, Map<CaptureDefect, Double> defects, Optional<Mistake.Kind> mistake) {

    public Label {
      defects = Map.copyOf(defects);
    }
  }
}
