package ridgeproof.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.spec.FieldNumber;
import ridgeproof.transaction.Field;
import ridgeproof.transaction.Item;
import ridgeproof.transaction.LogicalRecord;

/**
 * What findings observed, masked where it tells of a person: where the rule says so, and where the
 * words repeat a value of a personal field.
 */
final class ObservedText {

  /** A field with more repetitions is not searched: what was observed there is masked. */
  private static final int MOST_SEARCHED = 100;

  private static final int FIRST_VALUES = 3;

  private final List<LogicalRecord> records;
  private final FieldValues values;
  private final boolean showPersonal;

  ObservedText(FindingsReport report, boolean showPersonal) {
    this.records = report.transaction().records();
    this.values = new FieldValues(report.tables(), report.transaction().version(), showPersonal);
    this.showPersonal = showPersonal;
  }

  /** What was found; of a repeated fault the first few values that differ. */
  String of(Finding finding) {
    List<String> values =
        Stream.concat(Stream.of(finding), finding.repeats().stream())
            .map(this::single)
            .distinct()
            .toList();
    String first = values.stream().limit(FIRST_VALUES).collect(Collectors.joining("; "));
    int more = values.size() - FIRST_VALUES;
    return more <= 0 ? first : first + "; and " + more + " more";
  }

  private String single(Finding finding) {
    return isMasked(finding) ? SafeText.MASKED : SafeText.of(finding.observed().text());
  }

  boolean isMasked(Finding finding) {
    return !showPersonal && (finding.observed().personal() || repeatsPersonal(finding));
  }

  private boolean repeatsPersonal(Finding finding) {
    Optional<FieldNumber> number = finding.location().field();
    int ordinal = finding.location().record().orElse(0);
    if (number.isEmpty() || ordinal < 1 || ordinal > records.size()) {
      return false;
    }
    Optional<Field> field = records.get(ordinal - 1).field(number.get());
    return field.isPresent()
        && values.isPersonal(number.get())
        && repeats(field.get(), finding.observed().text());
  }

  private static boolean repeats(Field field, String text) {
    return field.subfields().size() > MOST_SEARCHED
        || field.subfields().stream()
            .flatMap(subfield -> subfield.items().stream().limit(MOST_SEARCHED))
            .map(Item::text)
            .anyMatch(value -> !value.isEmpty() && text.contains(value));
  }
}
