package ridgeproof.spec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.RecordLayout;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.layout.ValueRule;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.TableError;

class SpecTablesTest {

  private static final SpecTables TABLES = SpecTables.open();

  @TestFactory
  Stream<DynamicTest> everyLayoutCanBeReadAndContradictsItselfNowhere() {
    return TABLES.recordTypes().stream()
        .map(type -> DynamicTest.dynamicTest(type.name(), () -> checkLayout(type)));
  }

  private static void checkLayout(RecordTypeRow type) {
    RecordLayout layout = TABLES.layout(type.type());
    List<String> problems = new ArrayList<>();
    for (FieldRow row : layout.rows()) {
      String place = row.number() + (row.item().isPresent() ? "/" + row.item().getAsInt() : "");
      if (!TABLES.documents().containsKey(row.source().document())) {
        problems.add(place + ": no document " + row.source().document());
      }
      row.values().ifPresent(rule -> tablesOf(rule).forEach(t -> requireTable(t, place, problems)));
      layout.rows().stream()
          .filter(other -> other != row && other.number().equals(row.number()))
          .filter(other -> other.item().equals(row.item()))
          .filter(other -> other.versions().overlaps(row.versions()))
          .forEach(other -> problems.add(place + ": two rows for one version"));
    }
    assertEquals(List.of(), problems);
    type.imageField()
        .ifPresent(field -> assertTrue(layout.rows().isEmpty() || layout.knows(field)));
  }

  @Test
  void aLayoutThatIsListedAndMissingIsADefectAndNeverSilence() {
    assertThrows(TableError.class, () -> RecordLayout.load(55));
    assertThrows(TableError.class, () -> Table.resource("layouts/type-1.csv"));
    assertEquals(List.of(), TABLES.layout(55).rows(), "a type that the standard does not have");
  }

  @Test
  void everyListedTypeHasALayoutWithRows() {
    assertEquals(
        List.of(),
        TABLES.recordTypes().stream()
            .map(RecordTypeRow::type)
            .filter(type -> TABLES.layout(type).rows().isEmpty())
            .toList());
  }

  private static void requireTable(String table, String place, List<String> problems) {
    if (!TABLES.hasCodeTable(table)) {
      problems.add(place + ": no code table " + table);
    }
  }

  private static List<String> tablesOf(ValueRule rule) {
    if (rule instanceof ValueRule.AnyOf any) {
      return any.rules().stream().flatMap(inner -> tablesOf(inner).stream()).toList();
    }
    return rule instanceof ValueRule.InTable inTable ? List.of(inTable.table()) : List.of();
  }

  @TestFactory
  Stream<DynamicTest> everyListedCodeTableCanBeReadAndNamesEachCodeOnceAVersion() {
    return TABLES.codeTables().stream()
        .map(title -> DynamicTest.dynamicTest(title.table(), () -> checkCodes(title.table())));
  }

  private static void checkCodes(String table) {
    List<Code> codes = TABLES.codes(table).codes();
    assertTrue(!codes.isEmpty(), table + " is empty");
    for (Code code : codes) {
      long same =
          codes.stream()
              .filter(other -> other.code().equalsIgnoreCase(code.code()))
              .filter(other -> other.versions().overlaps(code.versions()))
              .count();
      assertEquals(1, same, table + " " + code.code());
      assertTrue(TABLES.documents().containsKey(code.source().document()), code.toString());
    }
  }

  @Test
  void everyRuleCitesAKnownDocument() {
    for (RuleRow rule : TABLES.catalogue().rules()) {
      assertTrue(TABLES.documents().containsKey(rule.source().document()), rule.id());
    }
  }

  @Test
  void limitsAndProfilesCanBeRead() {
    assertTrue(TABLES.imageSizes().size() > 15);
    assertTrue(TABLES.resolutionClasses().size() >= 2);
    assertTrue(TABLES.imageRecords().size() >= 10);
    assertEquals(14, profile("rolled-card").prints().size());
    assertEquals(3, profile("identification-flats").prints().size());
    Set<Integer> seen = new HashSet<>();
    TABLES.imageRecords().forEach(row -> assertTrue(seen.add(row.type())));
  }

  private static SubmissionProfile profile(String name) {
    return TABLES.profiles().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void aCellThatCannotBeReadIsReportedWithFileLineAndColumn() {
    String csv =
        "field,item,mnemonic,name,condition,characters,min_length,max_length,min_occurs,"
            + "max_occurs,values,bytes,public,since,until,source,known\n"
            + "14.001,,LEN,Record length,mandatory,N,,,,,,,,,,ITL2015,from memory\n"
            + "14.002,,IDC,IDC,mandatroy,N,,,,,,,,,,ITL2015,from memory\n";
    Table table = Table.read("layouts/type-14.csv", csv);
    TableError error =
        assertThrows(TableError.class, () -> table.rows().forEach(row -> FieldRow.of(row, 14)));
    assertTrue(
        error.getMessage().startsWith("layouts/type-14.csv, line 3, column condition"),
        error.getMessage());
  }

  @Test
  void anEditionThatEndsBeforeItBeginsIsReportedWithFileLineAndColumn() {
    Table table = Table.read("t.csv", "since,until\n0200,0300\n0500,0400\n");
    TableError error =
        assertThrows(TableError.class, () -> table.rows().forEach(Table.Row::versions));
    assertTrue(error.getMessage().startsWith("t.csv, line 3, column until"), error.getMessage());
  }

  @Test
  void aLineWithTooFewCellsIsReported() {
    TableError error = assertThrows(TableError.class, () -> Table.read("t.csv", "a,b\n1,2\n3\n"));
    assertTrue(error.getMessage().startsWith("t.csv, line 3"), error.getMessage());
  }

  @Test
  void everyFieldThatTellsTheOriginOfACaptureIsAFieldOfTheLayouts() {
    SpecTables tables = SpecTables.open();
    assertFalse(tables.captureOrigins().isEmpty());
    for (CaptureOrigin origin : tables.captureOrigins()) {
      FieldNumber number = origin.field();
      assertTrue(
          tables.layout(number.recordType()).field(number, 502).isPresent(), number.toString());
    }
  }
}
