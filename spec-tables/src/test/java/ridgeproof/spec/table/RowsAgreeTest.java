package ridgeproof.spec.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.spec.PatternExtent;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.layout.ValueRule.AnyOf;
import ridgeproof.spec.layout.ValueRule.CalendarDate;
import ridgeproof.spec.layout.ValueRule.GreenwichTime;
import ridgeproof.spec.layout.ValueRule.InTable;
import ridgeproof.spec.layout.ValueRule.Literal;
import ridgeproof.spec.layout.ValueRule.Matching;
import ridgeproof.spec.layout.ValueRule.Range;

/** What a row allows by its values, it does not refuse by its length or its characters. */
class RowsAgreeTest {

  private static final SpecTables TABLES = SpecTables.open();

  static IntStream types() {
    return IntStream.rangeClosed(1, 99).filter(type -> TABLES.recordType(type).isPresent());
  }

  @ParameterizedTest
  @MethodSource("types")
  void noRowRefusesByLengthOrCharactersWhatItsValuesAllow(int type) {
    assertEquals(List.of(), TABLES.layout(type).rows().stream().flatMap(this::faults).toList());
  }

  private Stream<String> faults(FieldRow row) {
    List<String> faults = new ArrayList<>();
    String place =
        row.number()
            + (row.item().isPresent() ? "/" + row.item().getAsInt() : "")
            + " of "
            + row.versions()
            + ": ";
    Consumer<String> report = fault -> faults.add(place + fault);
    if (row.minLength().orElse(0) > row.maxLength().orElse(Integer.MAX_VALUE)) {
      report.accept("the shortest is longer than the longest");
    }
    row.values().ifPresent(values -> check(row, values, report));
    return faults.stream();
  }

  private void check(FieldRow row, ValueRule rule, Consumer<String> report) {
    if (rule instanceof AnyOf any) {
      any.rules().forEach(each -> check(row, each, report));
    } else if (rule instanceof Literal literal) {
      word(row, literal.text(), report);
    } else if (rule instanceof InTable table) {
      codes(row, table.table(), report);
    } else if (rule instanceof CalendarDate) {
      word(row, "20260302", report);
    } else if (rule instanceof GreenwichTime) {
      word(row, "20260302101500Z", report);
    } else if (rule instanceof Range range) {
      number(row, range.least(), report);
      number(row, range.most(), report);
    } else if (rule instanceof Matching matching) {
      pattern(row, PatternExtent.of(matching.pattern().pattern()), report);
    }
  }

  /** Every code of an edition in which the row holds. */
  private static void codes(FieldRow row, String table, Consumer<String> report) {
    for (Code code : TABLES.codes(table).codes()) {
      if (overlap(code.versions(), row.versions())) {
        word(row, code.code(), fault -> report.accept("table " + table + ", " + fault));
      }
    }
  }

  private static boolean overlap(VersionRange one, VersionRange other) {
    return TABLES.codes("versions").codes().stream()
        .mapToInt(version -> Integer.parseInt(version.code()))
        .anyMatch(version -> one.contains(version) && other.contains(version));
  }

  private static void word(FieldRow row, String word, Consumer<String> report) {
    if (row.bytes().isPresent()) {
      number(row, Double.parseDouble(word), report);
      return;
    }
    if (word.length() < row.minLength().orElse(0)
        || word.length() > row.maxLength().orElse(Integer.MAX_VALUE)) {
      report.accept(word + " has " + word.length() + " characters");
    }
    if (!row.characters().allows(word)) {
      report.accept(word + " has others than " + row.characters().inWords());
    }
  }

  /** A number may be led by zeros, so that only the longest can be too long. */
  private static void number(FieldRow row, double number, Consumer<String> report) {
    if (Double.isInfinite(number)) {
      return;
    }
    if (row.bytes().isPresent()) {
      if (number < 0 || number >= Math.pow(256, row.bytes().getAsInt())) {
        report.accept(number + " does not fit " + row.bytes().getAsInt() + " bytes");
      }
      return;
    }
    String word =
        number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    if (word.length() > row.maxLength().orElse(Integer.MAX_VALUE)) {
      report.accept(word + " has " + word.length() + " characters");
    }
    if (!row.characters().allows(word)) {
      report.accept(word + " has others than " + row.characters().inWords());
    }
  }

  private static void pattern(FieldRow row, PatternExtent extent, Consumer<String> report) {
    // An expression without an end leaves the length to the other cells.
    boolean bounded = extent.longest() < PatternExtent.ENDLESS;
    if (bounded && extent.shortest() < row.minLength().orElse(0)) {
      report.accept("the pattern allows " + extent.shortest() + " characters");
    }
    if (bounded && extent.longest() > row.maxLength().orElse(Integer.MAX_VALUE)) {
      report.accept("the pattern allows " + extent.longest() + " characters");
    }
    for (int character : extent.characters()) {
      if (!row.characters().allows(Character.toString(character))) {
        report.accept("the pattern allows " + Character.toString(character));
      }
    }
  }

  @Test
  void anExpressionIsMeasured() {
    assertEquals(
        new PatternExtent(3, 6, Set.of((int) ',', (int) '1', (int) '2')),
        PatternExtent.of("[1-2]{1,3},(1|22)"));
    assertEquals(new PatternExtent(1, 1, Set.of()), PatternExtent.of("(?!ab)."));
    assertEquals(PatternExtent.ENDLESS, PatternExtent.of("A\\.[^B]*").longest());
    assertEquals(2, PatternExtent.of("A\\d?(BC)+").shortest() - 1);
  }

  @Test
  void aRowThatContradictsItselfIsFound() {
    String head =
        "field,item,mnemonic,name,condition,characters,min_length,max_length,min_occurs,"
            + "max_occurs,values,bytes,public,since,until,source,known\n";
    for (String cells :
        List.of(
            "N,1,2,,,0..100",
            "N,1,4,,,-10..10",
            "A,2,2,,,\"{A, BB}\"",
            "N,4,6,,,\"pattern [0-9]{1,3},[0-9]\"",
            "ANS,4,6,,,\"pattern [0-9]{1,3},[0-9]\"",
            "N,7,7,,,date",
            "A,3,3,,,table impressions")) {
      Table table =
          Table.read(
              "t.csv", head + "14.777,,XYZ,Example,," + cells + ",,,,,ITL2015,from memory\n");
      FieldRow row = FieldRow.of(table.rows().get(0), 14);
      assertTrue(faults(row).findAny().isPresent(), cells);
    }
  }
}
