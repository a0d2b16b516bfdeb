package ridgeproof.report.summary;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.consistency.CaptureOrigin.Kind;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;

/** Counts of files by the agency, station or operator that captured them. */
final class OriginCounts {

  /** Values beyond these are counted together: hostile files could each bring another. */
  static final int MOST = 200;

  private static final int LONGEST = 120;
  private static final int MAX_ITEMS = 3;
  private static final int LETTERS = 26;

  /** A value as a report names it, and its counts. */
  record Origin(String name, boolean verbatim, Tally tally) {}

  private final Kind kind;
  private final List<FieldNumber> fields;
  private final Map<String, Tally> byValue = new LinkedHashMap<>();
  private final Tally others = new Tally();
  private final Tally silent = new Tally();

  /**
   * @param fields that tell it; the first that says something decides
   */
  OriginCounts(Kind kind, List<FieldNumber> fields) {
    this.kind = kind;
    this.fields = fields;
  }

  Kind kind() {
    return kind;
  }

  List<FieldNumber> fields() {
    return fields;
  }

  void add(FindingsReport report) {
    value(report).map(this::of).orElse(silent).add(report);
  }

  private Tally of(String value) {
    return byValue.size() < MOST || byValue.containsKey(value)
        ? byValue.computeIfAbsent(value, key -> new Tally())
        : others;
  }

  /** Which of the values of {@link #names} a file has; empty for none. */
  OptionalInt index(FindingsReport report) {
    List<String> values = List.copyOf(byValue.keySet());
    return value(report).map(values::indexOf).filter(i -> i >= 0).stream()
        .mapToInt(Integer::intValue)
        .findFirst();
  }

  /** The values in order of appearance, or names for them. */
  List<String> names(boolean showPersonal) {
    List<String> values = List.copyOf(byValue.keySet());
    return IntStream.range(0, values.size())
        .mapToObj(i -> showPersonal ? TextSanitizer.of(values.get(i)) : pseudonym(i))
        .toList();
  }

  boolean toldByAny() {
    return !byValue.isEmpty();
  }

  /**
   * In order of appearance, then those without.
   *
   * @param showPersonal whether the values stand as they are; else each has a letter or a number
   */
  List<Origin> origins(boolean showPersonal) {
    List<Origin> origins =
        byValue.keySet().stream()
            .map(
                value ->
                    new Origin(
                        showPersonal ? TextSanitizer.of(value) : "",
                        showPersonal,
                        byValue.get(value)))
            .collect(Collectors.toList());
    if (!showPersonal) {
      for (int i = 0; i < origins.size(); i++) {
        origins.set(i, new Origin(pseudonym(i), false, origins.get(i).tally()));
      }
    }
    if (others.files() > 0) {
      origins.add(new Origin("others", false, others));
    }
    if (silent.files() > 0) {
      origins.add(new Origin("not stated in the file", false, silent));
    }
    return List.copyOf(origins);
  }

  /** Such as "station A" or "operator 3", so that a person is not taken for a station. */
  private String pseudonym(int index) {
    return kind.label()
        + " "
        + (kind == Kind.OPERATOR ? Integer.toString(index + 1) : letter(index));
  }

  /** A to Z, then AA to AZ and so on. */
  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }

  private Optional<String> value(FindingsReport report) {
    for (FieldNumber number : fields) {
      for (LogicalRecord record : report.transaction().recordsOfType(number.recordType())) {
        Optional<String> value = record.field(number).map(OriginCounts::text);
        if (value.isPresent() && !value.get().isEmpty()) {
          return value;
        }
      }
    }
    return Optional.empty();
  }

  private static String text(Field field) {
    if (field.isData()) {
      return "";
    }
    String text =
        field.subfields().get(0).items().stream()
            .limit(MAX_ITEMS)
            .map(Item::text)
            .map(String::strip)
            .filter(item -> !item.isEmpty())
            .collect(Collectors.joining(" "));
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST);
  }
}
