package ridgeproof.desk.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * Names the stations that captured the files: as the file does where the values are public, such as
 * make and model, and where others tell stations apart, such as a serial number, also by a letter
 * in the order in which they came.
 */
public final class Stations {

  private static final int LETTERS = 26;
  private static final int MAX_LETTERED = 500;
  private static final int ITEMS = 3;

  private final Map<String, String> letters = new HashMap<>();

  /** What tells the station of a file, which is not to be shown; empty where nothing does. */
  public static Optional<String> key(FindingsReport report) {
    return origin(report).map(Origin::value);
  }

  /** The name to show; empty where the file tells no station. */
  public Optional<String> name(FindingsReport report) {
    return origin(report).map(this::name);
  }

  /**
   * What a file says of its station.
   *
   * @param value all of it, which is not to be shown
   * @param shown what may be
   */
  private record Origin(String value, String shown) {}

  private synchronized String name(Origin origin) {
    if (origin.shown().equals(origin.value())) {
      return TextSanitizer.of(origin.shown());
    }
    return (TextSanitizer.of(origin.shown()) + " " + letterOf(origin.value())).strip();
  }

  private String letterOf(String value) {
    if (letters.size() >= MAX_LETTERED && !letters.containsKey(value)) {
      return "?";
    }
    return letters.computeIfAbsent(value, key -> letter(letters.size()));
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
        Optional<Origin> origin =
            record
                .field(number)
                .filter(field -> !field.isData())
                .map(field -> origin(field, number, report))
                .filter(found -> !found.value().isEmpty());
        if (origin.isPresent()) {
          return origin;
        }
      }
    }
    return Optional.empty();
  }

  /** Make, model and serial number, or the one number of a device. */
  private static Origin origin(Field field, FieldNumber number, FindingsReport report) {
    List<String> all = new ArrayList<>();
    List<String> shown = new ArrayList<>();
    RecordLayout layout = report.tables().layout(number.recordType());
    for (int item = 1; item <= ITEMS; item++) {
      String text = field.subfields().get(0).text(item).strip();
      if (!text.isEmpty()) {
        all.add(text);
        if (layout
            .item(number, item, report.transaction().version())
            .filter(FieldRow::isPublic)
            .isPresent()) {
          shown.add(text);
        }
      }
    }
    return new Origin(String.join(" ", all), String.join(" ", shown));
  }

  /** Forgets all of them. */
  public synchronized void forget() {
    letters.clear();
  }
}
