package ridgeproof.examination.safecopy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.descriptive.NumberRule;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.ValueRule;

/**
 * Values in the place of others: of the same length and form, right where they were right and wrong
 * where they were wrong, and the same for the same everywhere in the file.
 */
final class SyntheticValues {

  private static final int ATTEMPTS = 400;
  private static final int MIN_ATTEMPTS = 4;

  /** Characters that are made up at most in place of one value: a long text has any short word. */
  private static final int MAX_TRIED = 200_000;

  /** Of fewer codes another than the one that was there would tell which it was. */
  private static final int MIN_TO_EXCLUDE = 4;

  private static final Pattern DATE = Pattern.compile("[0-9]{8}");
  private static final Pattern TIME = Pattern.compile("[0-9]{14}Z");

  private final SpecTables tables;
  private final RetainedValues kept;
  private final KeyedRandom secret;
  private final SyntheticDates dates;
  private final OriginalWords known;

  SyntheticValues(
      SpecTables tables,
      RetainedValues kept,
      KeyedRandom secret,
      SyntheticDates dates,
      OriginalWords known) {
    this.tables = tables;
    this.kept = kept;
    this.secret = secret;
    this.dates = dates;
    this.known = known;
  }

  /**
   * Another value.
   *
   * @param bytes how many the value takes in the file
   * @param attempt from 0; another gives another value
   */
  String inPlaceOf(String value, int bytes, FieldNumber number, int item, int attempt) {
    if (value.isBlank() || value.chars().allMatch(c -> c == '0')) {
      return value;
    }
    Optional<FieldRow> row = kept.layoutRow(number, item);
    Optional<ValueRule> rule = row.flatMap(FieldRow::values);
    if (rule.filter(SyntheticValues::isOfDates).isPresent()) {
      if (DATE.matcher(value).matches()) {
        return dates.inPlaceOf(value);
      }
      if (TIME.matcher(value).matches()) {
        return dates.inPlaceOf(value.substring(0, 8))
            + dates.clockInPlaceOf(value.substring(8, 14))
            + "Z";
      }
    }
    Random random = secret.random("value", value, attempt);
    CharacterType characters = row.map(FieldRow::characters).orElse(CharacterType.ANY);
    return rule.flatMap(allowed -> code(value, allowed, random))
        .orElseGet(
            () -> text(value, new SyntheticText(value, bytes, characters), number, rule, random));
  }

  private static boolean isOfDates(ValueRule rule) {
    return rule instanceof ValueRule.CalendarDate
        || rule instanceof ValueRule.GreenwichTime
        || rule instanceof ValueRule.AnyOf any
            && any.rules().stream().anyMatch(SyntheticValues::isOfDates);
  }

  /** Another code of the tables and sets that know this one. */
  private Optional<String> code(String value, ValueRule rule, Random random) {
    List<String> codes = new ArrayList<>();
    collect(value, rule, codes);
    codes.removeIf(code -> code.length() != value.length());
    if (!codes.contains(value)) {
      return Optional.empty();
    }
    List<String> others =
        codes.stream().filter(code -> !code.equals(value) && !known.occurIn(code)).toList();
    List<String> choice = others.size() + 1 < MIN_TO_EXCLUDE ? codes : others;
    return Optional.of(choice.get(random.nextInt(choice.size())));
  }

  private void collect(String value, ValueRule rule, List<String> codes) {
    if (rule instanceof ValueRule.AnyOf any) {
      any.rules().forEach(inner -> collect(value, inner, codes));
    } else if (rule instanceof ValueRule.Literal literal) {
      codes.add(literal.text());
    } else if (rule instanceof ValueRule.InTable inTable && kept.knows(inTable.table(), value)) {
      tables.codes(inTable.table()).codes().stream()
          .map(Code::code)
          .filter(code -> kept.knows(inTable.table(), code))
          .distinct()
          .forEach(codes::add);
    }
  }

  private String text(
      String value,
      SyntheticText texts,
      FieldNumber number,
      Optional<ValueRule> rule,
      Random random) {
    List<Boolean> wanted = verdicts(value, number, rule);
    String unlike = null;
    int attempts =
        Math.max(MIN_ATTEMPTS, Math.min(ATTEMPTS, MAX_TRIED / Math.max(1, value.length())));
    for (int i = 0; i < attempts; i++) {
      String made =
          i < attempts / 2 || wanted.isEmpty()
              ? texts.like(value, random)
              : texts.ofItsOwn(value, random);
      if (!known.occurIn(made)) {
        if (verdicts(made, number, rule).equals(wanted)) {
          return made;
        }
        unlike = unlike == null ? made : unlike;
      }
    }
    return unlike == null ? texts.filler(value) : unlike;
  }

  /** What the tables hold of a value: the same is to hold of the one in its place. */
  private List<Boolean> verdicts(String value, FieldNumber number, Optional<ValueRule> rule) {
    List<Boolean> verdicts = new ArrayList<>();
    rule.ifPresent(
        allowed -> {
          verdicts.add(allowed.matches(value, kept::knows));
          if (allowed instanceof ValueRule.AnyOf any) {
            any.rules().stream()
                .filter(inner -> inner instanceof ValueRule.Matching)
                .forEach(inner -> verdicts.add(inner.matches(value, kept::knows)));
          }
        });
    for (NumberRule numbers : tables.particulars().numberRules()) {
      if (numbers.field().equals(number)) {
        verdicts.add(numbers.matches(value));
      }
    }
    return verdicts;
  }
}
