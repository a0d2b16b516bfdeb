package ridgeproof.corpus.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import ridgeproof.corpus.composition.ComposedTransaction;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.scenario.FileDamage;

/**
 * What is true of one image, or of one file.
 *
 * @param position position code of the image; empty for the file as a whole
 * @param defect what went wrong with the capture; empty for nothing
 * @param strength 0 to 1; empty where there is no defect
 * @param mistake what went wrong with the box or the file; empty for nothing
 */
record LabelRow(String file, String position, String defect, String strength, String mistake) {

  static final String[] COLUMNS = {"file", "position", "defect", "strength", "mistake"};

  /** One row for each defect of each image, one for an image without, one for each damage. */
  static List<LabelRow> of(String file, ComposedTransaction composed) {
    List<LabelRow> rows = new ArrayList<>();
    for (ComposedTransaction.Label label : composed.labels()) {
      String position = Integer.toString(label.position());
      String mistake = label.mistake().map(LabelRow::word).orElse("");
      if (label.defects().isEmpty()) {
        rows.add(new LabelRow(file, position, "", "", mistake));
      }
      for (Map.Entry<CaptureDefect, Double> d : new TreeMap<>(label.defects()).entrySet()) {
        String strength = String.format(Locale.ROOT, "%.2f", d.getValue());
        rows.add(new LabelRow(file, position, word(d.getKey()), strength, mistake));
      }
    }
    for (FileDamage damage : composed.scenario().damages()) {
      rows.add(new LabelRow(file, "", "", "", word(damage.kind())));
    }
    return rows;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  Object[] cells() {
    return new Object[] {file, position, defect, strength, mistake};
  }
}
