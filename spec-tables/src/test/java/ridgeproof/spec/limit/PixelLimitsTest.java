package ridgeproof.spec.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.TableError;

class PixelLimitsTest {

  private static final SpecTables TABLES = SpecTables.open();

  @Test
  void aLimitIsReadWithItsUnitAndSource() {
    PixelLimits.PixelLimit limit = TABLES.pixelLimits().limit("wanted-gray-range-share");
    assertEquals(80, limit.value());
    assertEquals(0.8, limit.share());
    assertEquals("percent", limit.unit());
    assertTrue(TABLES.documents().containsKey(limit.source().document()));
  }

  @Test
  void aNameThatTheTableLacksIsADefectThatNamesTheTable() {
    TableError error =
        assertThrows(TableError.class, () -> TABLES.pixelLimits().limit("no-such-limit"));
    assertEquals("limits/pixel-measures.csv: no row no-such-limit", error.getMessage());
  }

  @Test
  void aGreaterSimilarityNeverWeighsLess() {
    List<MatchLikelihood> rows = TABLES.matchLikelihoods();
    assertTrue(rows.get(0).weight() < 0);
    assertTrue(rows.get(rows.size() - 1).weight() > 0);
    Table falling =
        Table.read(
            "x.csv",
            """
            similarity,weight,source,known
            0,-1,DESIGN,common practice
            9,-2,DESIGN,common practice
            """);
    TableError error = assertThrows(TableError.class, () -> MatchLikelihood.read(falling));
    assertTrue(error.getMessage().contains("never weighs less"), error.getMessage());
  }
}
