package ridgeproof.report;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.masked.LikelyMistake;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

/**
 * What findings observed, masked where the rule says that it tells of a person, and where the words
 * repeat a value that no row calls public.
 */
public final class ObservedText {

  /** A field with more repetitions is not searched: what was observed there is masked. */
  private static final int MAX_SEARCHED = 100;

  private static final int FIRST_VALUES = 3;

  private static final String TO_SEE_IT =
      " The value is masked in this report. To see it, repeat the examination on this machine with"
          + " --show-personal.";
  private static final String TO_SEE_THEM =
      " The values are masked in this report. To see them, repeat the examination on this machine"
          + " with --show-personal.";

  /** Rules that say that a value is not of the form that its field asks for. */
  private static final Set<String> OF_FORM =
      Set.of("RP-FLD-003", "RP-FLD-004", "RP-FLD-005", "RP-FLD-008", "RP-COD-001");

  private final List<LogicalRecord> records;
  private final FieldValues values;
  private final boolean showPersonal;

  public ObservedText(FindingsReport report, boolean showPersonal) {
    this.records = report.transaction().records();
    this.values = new FieldValues(report.tables(), report.transaction().version(), showPersonal);
    this.showPersonal = showPersonal;
  }

  /** What was found; of a repeated fault the first few values that differ. */
  public String of(Finding finding) {
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
    return isMasked(finding)
        ? TextSanitizer.MASKED + likelyMistake(finding).map(likely -> " " + likely).orElse("")
        : TextSanitizer.of(finding.observed().text());
  }

  /**
   * What a step adds about values that are masked: what is likely wrong with them, and how to see
   * them; empty text where none is.
   */
  public String aboutMasked(RecommendedAction action) {
    List<Finding> masked =
        action.findings().stream()
            .flatMap(finding -> Stream.concat(Stream.of(finding), finding.repeats().stream()))
            .filter(this::isMasked)
            .toList();
    if (masked.isEmpty()) {
      return "";
    }
    String likely =
        masked.stream()
            .flatMap(finding -> likelyMistake(finding).stream())
            .distinct()
            .limit(FIRST_VALUES)
            .map(sentence -> " " + sentence)
            .collect(Collectors.joining());
    boolean several = masked.stream().map(ObservedText::item).distinct().count() > 1;
    return likely + (several ? TO_SEE_THEM : TO_SEE_IT);
  }

  /** Several rules may object to one item. */
  private static String item(Finding finding) {
    Location place = finding.location();
    return place.record() + " " + place.field() + " " + place.subfield() + " " + place.item();
  }

  private Optional<String> likelyMistake(Finding finding) {
    Location place = finding.location();
    int ordinal = place.record().orElse(0);
    if (!OF_FORM.contains(finding.ruleId())
        || place.field().isEmpty()
        || place.subfield().isEmpty()
        || ordinal < 1
        || ordinal > records.size()) {
      return Optional.empty();
    }
    int item = place.item().orElse(1);
    FieldNumber number = place.field().get();
    Optional<String> text =
        records.get(ordinal - 1).field(number).stream()
            .flatMap(field -> field.subfields().stream().skip(place.subfield().getAsInt() - 1L))
            .findFirst()
            .map(subfield -> subfield.text(item));
    return text.flatMap(
        value -> values.row(number, item).flatMap(row -> LikelyMistake.of(value, row)));
  }

  public boolean isMasked(Finding finding) {
    return !showPersonal && (finding.observed().personal() || repeatsPersonal(finding));
  }

  private boolean repeatsPersonal(Finding finding) {
    Optional<FieldNumber> number = finding.location().field();
    int ordinal = finding.location().record().orElse(0);
    if (number.isEmpty() || ordinal < 1 || ordinal > records.size()) {
      return false;
    }
    Optional<Field> field = records.get(ordinal - 1).field(number.get());
    return field.isPresent() && repeats(field.get(), finding.observed().text());
  }

  /** Whether the words hold a value of the field that is masked. */
  private boolean repeats(Field field, String text) {
    if (field.subfields().size() > MAX_SEARCHED && values.isPrivate(field.number())) {
      return true;
    }
    return field.subfields().stream().anyMatch(subfield -> repeats(field, subfield, text));
  }

  private boolean repeats(Field field, Subfield subfield, String text) {
    for (int item = 1; item <= subfield.items().size(); item++) {
      String value = subfield.text(item);
      if (!value.isEmpty() && text.contains(value) && values.isPrivate(field.number(), item)) {
        return true;
      }
    }
    return false;
  }
}
