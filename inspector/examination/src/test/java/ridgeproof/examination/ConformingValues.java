package ridgeproof.examination;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.ValueRule;

/** Values that satisfy everything that a row asks of a value. */
public final class ConformingValues {

  private static final int HEADER = 1;
  private static final int LONG_TAIL = 12;
  private static final int SEVERAL = 12;

  private final SpecTables tables;

  ConformingValues(SpecTables tables) {
    this.tables = tables;
  }

  /** A value that conforms in that version; fails where the row contradicts itself. */
  public String of(FieldRow row, int version) {
    return ownValue(row, version)
        .or(() -> candidates(row, version).filter(text -> conforms(row, text, version)).findFirst())
        .orElseThrow(
            () -> new AssertionError(row.number() + " " + row.item() + ": no value satisfies it"));
  }

  /** Some values that conform, where a condition asks for another one than the first. */
  List<String> several(FieldRow row, int version) {
    return candidates(row, version)
        .filter(text -> conforms(row, text, version))
        .distinct()
        .limit(SEVERAL)
        .toList();
  }

  boolean conforms(FieldRow row, String text, int version) {
    int length = text.codePointCount(0, text.length());
    return !text.isEmpty()
        && row.characters().allows(text)
        && length >= row.minLength().orElse(0)
        && length <= row.maxLength().orElse(Integer.MAX_VALUE)
        && row.values().map(rule -> matches(rule, text, version)).orElse(true);
  }

  private boolean matches(ValueRule rule, String text, int version) {
    return rule.matches(text, (table, code) -> tables.codes(table).find(code, version).isPresent());
  }

  /** Fields whose value other parts of the engine look at. */
  private static Optional<String> ownValue(FieldRow row, int version) {
    int field = row.number().field();
    if (row.number().recordType() == HEADER) {
      return Optional.ofNullable(
          switch (field) {
            case 2 -> "%04d".formatted(version);
            case 11, 12 -> "00.00";
            case 13 -> row.item().orElse(0) == 1 ? "NORAM" : null;
            default -> null;
          });
    }
    return field == 2 ? Optional.of(row.bytes().isEmpty() ? "01" : "1") : Optional.empty();
  }

  private Stream<String> candidates(FieldRow row, int version) {
    return row.values().isPresent()
        ? byRule(row.values().get(), version).flatMap(text -> padded(text, row))
        : Stream.of("1", "A", "-").map(c -> c.repeat(Math.max(1, row.minLength().orElse(1))));
  }

  private static Stream<String> padded(String text, FieldRow row) {
    int missing = row.minLength().orElse(0) - text.length();
    return missing > 0 ? Stream.of("0".repeat(missing) + text) : Stream.of(text);
  }

  private Stream<String> byRule(ValueRule rule, int version) {
    if (rule instanceof ValueRule.AnyOf any) {
      return any.rules().stream().flatMap(inner -> byRule(inner, version));
    }
    if (rule instanceof ValueRule.Literal literal) {
      return Stream.of(literal.text());
    }
    if (rule instanceof ValueRule.Range range) {
      double most = Double.isInfinite(range.most()) ? range.least() + 1 : range.most();
      return Stream.of(range.least(), most).map(ConformingValues::plain);
    }
    if (rule instanceof ValueRule.InTable table) {
      return tables.codes(table.table()).codes().stream()
          .filter(code -> code.versions().contains(version))
          .map(code -> code.code());
    }
    if (rule instanceof ValueRule.CalendarDate) {
      return Stream.of("20260302");
    }
    if (rule instanceof ValueRule.GreenwichTime) {
      return Stream.of("20260302101500Z");
    }
    String pattern = ((ValueRule.Matching) rule).pattern().pattern();
    return Stream.of(0, LONG_TAIL).map(times -> PatternWord.of(pattern, times));
  }

  static String plain(double number) {
    return number == Math.rint(number)
        ? Long.toString((long) number)
        : String.format(Locale.ROOT, "%s", number);
  }
}
