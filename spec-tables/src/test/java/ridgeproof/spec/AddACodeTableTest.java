package ridgeproof.spec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.testing.ChangedFolder;

/** A code table is added by a file, and a line in the index beside it. */
class AddACodeTableTest {

  private static final String TABLE =
      """
      code,name,since,until,source,known
      PIER,at the pier,,,DESIGN,common practice
      DECK,on deck,,,DESIGN,common practice
      """;
  private static final String LINE =
      "boarding-places,Where a pilot boards,2.9102,DESIGN,common practice\n";

  @TempDir Path empty;

  /** Runs with the changed folder; the codes of a table with their names. */
  public static final class Codes implements Function<String, List<String>> {

    @Override
    public List<String> apply(String table) {
      SpecTables tables = SpecTables.open();
      return tables.codes(table).codes().stream()
          .map(code -> code.code() + " " + code.name())
          .toList();
    }
  }

  @Test
  void oneFolderIsEnough() throws Exception {
    ChangedFolder folder =
        ChangedFolder.of(Path.of("src/main/resources"), "ridgeproof/spec/codes", empty)
            .add("boarding-places.csv", TABLE)
            .insert("index.csv", "table,title,used_by,source,known\n", LINE);
    assertEquals(
        List.of("PIER at the pier", "DECK on deck"), folder.run(Codes.class, "boarding-places"));
    assertFalse(SpecTables.open().hasCodeTable("boarding-places"));
  }
}
