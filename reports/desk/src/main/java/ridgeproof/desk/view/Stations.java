package ridgeproof.desk.view;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Names the stations that captured the files: as the file does where the value is public, else by a
 * letter in the order in which they came.
 */
public final class Stations {

  private static final int LETTERS = 26;
  private static final int MOST = 500;

  private final Map<String, String> letters = new HashMap<>();

  /** What tells the station of a file, which is not to be shown; empty where nothing does. */
  public static Optional<String> key(FindingsReport report) {
    return origin(report).map(Origin::value);
  }

  /** The name to show; empty where the file tells no station. */
  public Optional<String> name(FindingsReport report) {
    return origin(report).map(this::name);
  }

  private record Origin(String value, boolean open) {}

  private synchronized String name(Origin origin) {
    if (origin.open()) {
      return TextSanitizer.of(origin.value());
    }
    if (letters.size() >= MOST && !letters.containsKey(origin.value())) {
      return "?";
    }
    return letters.computeIfAbsent(origin.value(), value -> letter(letters.size()));
  }

  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }

  private static Optional<Origin> origin(FindingsReport report) {
    List<FieldNumber> fields =
        report.tables().captureOrigins().stream()
            .filter(origin -> origin.kind() == CaptureOrigin.Kind.STATION)
            .map(CaptureOrigin::field)
            .toList();
    for (FieldNumber number : fields) {
      for (LogicalRecord record : report.transaction().recordsOfType(number.recordType())) {
        Optional<String> text =
            record.field(number).flatMap(field -> record.text(number.field())).map(String::strip);
        if (text.isPresent() && !text.get().isEmpty()) {
          boolean open =
              report
                  .tables()
                  .layout(number.recordType())
                  .item(number, 1, report.transaction().version())
                  .filter(FieldRow::isPublic)
                  .isPresent();
          return Optional.of(new Origin(text.get(), open));
        }
      }
    }
    return Optional.empty();
  }

  /** Forgets all of them. */
  public synchronized void forget() {
    letters.clear();
  }
}
