package ridgeproof.calibration.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/** What a person said of prints in the public reference transactions, looking at each image. */
public record ManualAssessments(List<Judgement> rows) {

  private static final String RESOURCE = "/ridgeproof/calibration/by-eye.csv";

  /** Their four-finger images are those of the card; no limit is fitted on the card itself. */
  public static final List<String> WIDENING = List.of("type-4-slaps.an2", "type-9-4-iafis.an2");

  public static final String CARD = "type-4-tpcard.an2";

  /** Of one finger in one image. */
  public record Judgement(String file, int box, int finger, Set<String> accepted, String words) {}

  /** A measured print and what was said of it. */
  public record Seen(MeasuredPrint print, Judgement judgement) {}

  public ManualAssessments {
    rows = List.copyOf(rows);
  }

  public static ManualAssessments load() {
    return new ManualAssessments(
        Csv.resource(RESOURCE).stream().map(ManualAssessments::judgement).toList());
  }

  private static Judgement judgement(CSVRecord row) {
    Set<String> accepted =
        Arrays.stream(row.get("accepted").split(" "))
            .filter(rule -> !rule.isBlank())
            .collect(Collectors.toUnmodifiableSet());
    return new Judgement(
        row.get("file"),
        Integer.parseInt(row.get("box")),
        Integer.parseInt(row.get("finger")),
        accepted,
        row.get("words"));
  }

  /** The prints of one file that something was said of. */
  public List<Seen> seen(Path folder, String file) throws IOException {
    List<Seen> seen = new ArrayList<>();
    for (MeasuredPrint print : ReferencePrints.of(folder.resolve(file))) {
      for (Judgement row : rows) {
        if (row.file().equals(file)
            && row.box() == print.box()
            && row.finger() == print.finger().code()) {
          seen.add(new Seen(print, row));
        }
      }
    }
    return seen;
  }
}
