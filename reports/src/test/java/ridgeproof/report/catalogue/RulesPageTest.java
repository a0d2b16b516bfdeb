package ridgeproof.report.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import ridgeproof.report.Reports;

class RulesPageTest {

  private static final Path PAGE = Path.of("../docs/rules.md");

  @Test
  void thePageInTheRepositoryIsWhatTheTablesSay() throws IOException {
    String page = new RulesPage(Reports.TABLES).markdown();
    if (Boolean.getBoolean("ridgeproof.write-rules-page")) {
      Files.writeString(PAGE, page);
    }
    assertTrue(Files.exists(PAGE), "no " + PAGE.toAbsolutePath());
    assertEquals(
        page,
        Files.readString(PAGE),
        "docs/rules.md is not in step with the tables; run"
            + " mvn -pl reports -am test -Dtest=RulesPageTest"
            + " -Dsurefire.failIfNoSpecifiedTests=false -Dridgeproof.write-rules-page=true");
  }
}
