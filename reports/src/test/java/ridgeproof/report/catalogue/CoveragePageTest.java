package ridgeproof.report.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import ridgeproof.report.Reports;

class CoveragePageTest {

  private static final Path PAGE = Path.of("../docs/coverage.md");

  @Test
  void thePageInTheRepositoryIsWhatTheTablesSay() throws IOException {
    assertEquals(
        new CoveragePage(Reports.TABLES).markdown(),
        Files.readString(PAGE),
        "docs/coverage.md is not in step with the tables; run"
            + " ./ridgeproof rules --coverage --overwrite --output docs/coverage.md");
  }

  @Test
  void thePageIsTheSameEachTimeItIsWritten() {
    CoveragePage page = new CoveragePage(Reports.TABLES);
    assertEquals(page.markdown(), page.markdown());
  }
}
