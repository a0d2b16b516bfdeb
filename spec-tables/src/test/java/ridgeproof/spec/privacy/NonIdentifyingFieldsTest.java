package ridgeproof.spec.privacy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordLayout;

class NonIdentifyingFieldsTest {

  /**
   * Not public because it is part of what tells of a person, though alone it tells no more than
   * which records are there: the finger that is missing.
   */
  private static final Set<String> TOLD_BY_THE_RECORDS = Set.of("2.084/1");

  private static final SpecTables TABLES = SpecTables.open();

  @Test
  void everyHarmlessFieldIsAFieldOfALayout() {
    List<NonIdentifyingField> rows = TABLES.harmless().fields();
    assertTrue(rows.size() > 200);
    for (NonIdentifyingField row : rows) {
      RecordLayout layout = TABLES.layout(row.number().recordType());
      assertTrue(
          layout.rows().stream()
              .anyMatch(
                  known ->
                      known.number().equals(row.number())
                          && (row.item().isEmpty() || known.item().equals(row.item()))),
          () -> row.number() + " " + row.item());
      assertTrue(TABLES.documents().containsKey(row.source().document()));
    }
  }

  @Test
  void noFieldThatTellsOfAPersonIsHarmless() {
    for (NonIdentifyingField row : TABLES.harmless().fields()) {
      for (FieldRow known : TABLES.layout(row.number().recordType()).rows()) {
        boolean meant =
            known.number().equals(row.number())
                && !known.isRange()
                && (row.item().isEmpty() || known.item().equals(row.item()));
        String name = row.number() + (row.item().isPresent() ? "/" + row.item().getAsInt() : "");
        assertFalse(meant && isPrivate(known) && !TOLD_BY_THE_RECORDS.contains(name), name);
      }
    }
  }

  /** The row of a field that has item rows says nothing for itself. */
  private static boolean isPrivate(FieldRow known) {
    RecordLayout layout = TABLES.layout(known.number().recordType());
    boolean hasItems =
        layout.rows().stream()
            .anyMatch(row -> row.number().equals(known.number()) && row.item().isPresent());
    return !known.isPublic() && !(hasItems && known.item().isEmpty());
  }

  @Test
  void aFieldWithoutARowIsNotHarmless() {
    assertEquals(List.of(), rows(2, 18));
    assertEquals(List.of(), rows(1, 9));
    assertEquals(List.of(), rows(2, 1777));
    assertEquals(1, rows(14, 13).size());
  }

  private static List<NonIdentifyingField> rows(int type, int field) {
    return TABLES.harmless().field(new FieldNumber(type, field), 1).stream().toList();
  }

  @Test
  void aCommentIsHarmlessOnlyWithAValueOfItsForm() {
    assertTrue(TABLES.harmless().isHarmlessComment("PPI", "500"));
    assertFalse(TABLES.harmless().isHarmlessComment("PPI", "500 SPECIMEN"));
    assertFalse(TABLES.harmless().isHarmlessComment("OPERATOR", "500"));
  }
}
