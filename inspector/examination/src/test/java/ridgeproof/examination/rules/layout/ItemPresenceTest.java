package ridgeproof.examination.rules.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.CharacterType;

/** What a row may ask of an item, also where no row of today's tables asks it. */
class ItemPresenceTest {

  /** The rules told of a field with these items, where the second is under that condition. */
  private static List<String> told(String condition, String... items) {
    return SpecimenRows.found(
            SpecimenRows.field(CharacterType.ANY, OptionalInt.empty(), OptionalInt.empty(), false),
            List.of(SpecimenRows.item(1, "mandatory"), SpecimenRows.item(2, condition)),
            items)
        .stream()
        .map(Finding::ruleId)
        .toList();
  }

  @Test
  void aForbiddenItemIsToldOnlyWhereItsConditionHolds() {
    assertEquals(List.of("RP-FLD-009"), told("forbidden if item 1 = A", "A", "1"));
    assertEquals(List.of(), told("forbidden if item 1 = A", "D", "1"));
    assertEquals(List.of(), told("forbidden if item 1 = A", "A"));
  }

  @Test
  void aDeprecatedItemIsToldWhereItIsGiven() {
    assertEquals(List.of("RP-FLD-010"), told("deprecated if version >= 0500", "A", "1"));
    assertEquals(List.of(), told("deprecated if version >= 0500", "A"));
    assertEquals(List.of(), told("deprecated if version < 0500", "A", "1"));
  }

  @Test
  void aMandatoryItemIsToldWhereItSaysNothing() {
    assertEquals(List.of("RP-FLD-002"), told("mandatory if item 1 = D", "D", ""));
    assertEquals(List.of(), told("mandatory if item 1 = D", "A", ""));
  }
}
