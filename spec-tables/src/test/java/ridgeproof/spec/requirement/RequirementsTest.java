package ridgeproof.spec.requirement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordLayout;

class RequirementsTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final List<Requirement> ALL = new Requirements(TABLES).all();
  private static final int TRIES = 4000;

  @Test
  void everyRequirementHasAnIdOfItsOwnAndARuleOfTheCatalogue() {
    assertEquals(ALL.size(), ALL.stream().map(Requirement::id).distinct().count());
    ALL.forEach(r -> assertTrue(TABLES.catalogue().find(r.rule()).isPresent(), r.id()));
  }

  @Test
  void everyRequirementHoldsInSomeEditionOfItsRecordType() {
    assertEquals(
        List.of(), ALL.stream().filter(r -> r.versions().isEmpty()).map(Requirement::id).toList());
  }

  @Test
  void idsNameFieldItemAndEdition() {
    List<String> ids = ALL.stream().map(Requirement::id).toList();
    assertTrue(ids.contains("98.003/min-length"), "a field of one row");
    assertTrue(ids.contains("1.003.1/max-length"), "an item of one row");
    assertTrue(ids.contains("10.999@to0500/mandatory"), "a row that ended with an edition");
    assertTrue(ids.contains("10.999@0501/forbidden"), "a row that an edition began");
  }

  @Test
  void noValueOfAllowedCharactersAndLengthIsRefusedWhereValuesDoNotCount() {
    Random random = new Random(20260302);
    for (Requirement requirement : ALL) {
      FieldRow row = requirement.row();
      if (requirement.kind() != RequirementKind.VALUES
          || requirement.isObservable()
          || row.bytes().isPresent()) {
        continue;
      }
      int[] characters =
          IntStream.rangeClosed(0x20, 0x7E)
              .filter(c -> row.characters().allows(Character.toString(c)))
              .toArray();
      int least = Math.max(1, row.minLength().orElse(1));
      int most = row.maxLength().orElse(least + 10);
      for (int i = 0; i < TRIES; i++) {
        StringBuilder text = new StringBuilder();
        int length = least + random.nextInt(most - least + 1);
        random.ints(length, 0, characters.length).forEach(k -> text.append((char) characters[k]));
        assertTrue(
            row.values()
                .orElseThrow()
                .matches(
                    text.toString(),
                    (table, code) ->
                        TABLES.codes(table).find(code, requirement.versions().get(0)).isPresent()),
            requirement.id() + " refuses \"" + text + "\"");
      }
    }
  }

  @Test
  void itemsThatRepeatStandLastAndEquallyOften() {
    for (Requirement requirement : ALL) {
      RecordLayout layout = TABLES.layout(requirement.recordType());
      for (int version : requirement.versions()) {
        List<FieldRow> items = layout.items(requirement.row().number(), version);
        List<Integer> times = items.stream().map(item -> item.maxOccurs().orElse(1)).toList();
        List<Integer> sorted = times.stream().sorted().toList();
        assertEquals(sorted, times, requirement.id());
        assertTrue(times.stream().filter(n -> n > 1).distinct().count() <= 1, requirement.id());
      }
    }
  }

  @Test
  void aFieldWithItemsLeavesCharactersLengthsAndValuesToThem() {
    for (Requirement requirement : ALL) {
      FieldRow row = requirement.row();
      boolean hasItems =
          requirement.versions().stream()
              .anyMatch(
                  version ->
                      !TABLES
                          .layout(requirement.recordType())
                          .items(row.number(), version)
                          .isEmpty());
      if (row.item().isEmpty() && hasItems) {
        assertTrue(
            row.values().isEmpty() && row.minLength().isEmpty() && row.maxLength().isEmpty(),
            requirement.id());
      }
    }
  }
}
