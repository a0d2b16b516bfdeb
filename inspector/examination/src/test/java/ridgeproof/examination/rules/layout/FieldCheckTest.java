package ridgeproof.examination.rules.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.spec.layout.FieldRow;

/** A field without items, checked against rows that today's tables do not all have. */
class FieldCheckTest {

  private static final OptionalInt OPEN = OptionalInt.empty();

  private static List<String> told(FieldRow row, String... items) {
    return SpecimenRows.found(row, List.of(), items).stream()
        .map(finding -> finding.ruleId() + " " + finding.required())
        .toList();
  }

  private static OptionalInt length(int number) {
    return number < 0 ? OPEN : OptionalInt.of(number);
  }

  @ParameterizedTest(name = "{0} to {1}: {2}")
  @CsvSource({
    "3, -1, AB, RP-FLD-003 at least 3 characters",
    "-1, 3, ABCD, RP-FLD-004 at most 3 characters",
    "-1, 1, AB, RP-FLD-004 at most 1 character",
    "3, 4, AB, RP-FLD-003 3 to 4 characters",
    "3, 4, ABCDE, RP-FLD-004 3 to 4 characters",
    "3, 3, AB, RP-FLD-003 3 characters",
    "1, 1, AB, RP-FLD-004 1 character",
  })
  void aValueOfTheWrongLengthIsToldWithTheBoundsThatTheRowHas(
      int least, int most, String value, String expected) {
    FieldRow row = SpecimenRows.field(CharacterType.AN, length(least), length(most), true);
    assertEquals(List.of(expected), told(row, value));
  }

  @ParameterizedTest(name = "{0} to {1}: {2}")
  @CsvSource({"3, -1, ABC", "-1, 3, ABC", "3, 4, ABC", "3, 4, ABCD"})
  void aValueOfABoundsLengthIsNotTold(int least, int most, String value) {
    FieldRow row = SpecimenRows.field(CharacterType.AN, length(least), length(most), true);
    assertEquals(List.of(), told(row, value));
  }

  @Test
  void aFieldWithoutItemsHasOne() {
    FieldRow row = SpecimenRows.field(CharacterType.AN, OPEN, OPEN, true);
    assertEquals(List.of("RP-FLD-012 one item"), told(row, "AB", "CD"));
    assertEquals(List.of(), told(row, "AB", ""));
  }

  @Test
  void aFieldOfWhichNothingIsSaidMayHaveItems() {
    FieldRow row = SpecimenRows.field(CharacterType.ANY, OPEN, OPEN, true);
    assertEquals(List.of(), told(row, "AB", "CD"));
  }

  @Test
  void onlyAValueThatReportsMayShowIsShownUnmasked() {
    OptionalInt most = OptionalInt.of(3);
    assertEquals(List.of("\"ADAM\" masked"), shown(field(most, false), "ADAM"));
    assertEquals(List.of("\"ADAM\""), shown(field(most, true), "ADAM"));
  }

  private static FieldRow field(OptionalInt most, boolean isPublic) {
    return SpecimenRows.field(CharacterType.A, OPEN, most, isPublic);
  }

  private static List<String> shown(FieldRow row, String value) {
    return SpecimenRows.found(row, List.of(), value).stream()
        .map(Finding::observed)
        .map(observed -> observed.text() + (observed.personal() ? " masked" : ""))
        .toList();
  }
}
