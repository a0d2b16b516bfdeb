package ridgeproof.calibration.evaluation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import ridgeproof.calibration.print.Csv;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;

/** Which rules name a defect rightly: those that tell the technician what to do about it. */
public final class DefectRules {

  private static final String RESOURCE = "/ridgeproof/calibration/defect-rules.csv";

  private record Key(CaptureDefect defect, Impression kind) {}

  private final Map<Key, Set<String>> rules = new HashMap<>();

  public DefectRules() {
    for (CSVRecord row : Csv.resource(RESOURCE)) {
      CaptureDefect defect = CaptureDefect.valueOf(row.get("defect").toUpperCase(Locale.ROOT));
      Set<String> named =
          Arrays.stream(row.get("rules").split(" ")).collect(Collectors.toUnmodifiableSet());
      for (String kind : row.get("impression").split(" ")) {
        rules.put(new Key(defect, Impression.ofKey(kind)), named);
      }
    }
  }

  public Set<String> of(CaptureDefect defect, Impression kind) {
    return rules.getOrDefault(new Key(defect, kind), Set.of());
  }
}
