package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.finding.Finding;
import ridgeproof.testing.ChangedFolder;

/** A rule is added by a class with its row, and a line in the list of its package. */
class AddARuleTest {

  private static final String FOLDER = "ridgeproof/examination/rules/transaction";

  @TempDir Path empty;

  /** Runs with the changed folder; prints what is found in the conforming card. */
  public static final class Findings implements Function<Boolean, List<String>> {

    @Override
    public List<String> apply(Boolean whole) {
      SampleCard card = whole ? SampleCard.rolled() : SampleCard.rolled().without(16).without(15);
      return card.examine().findings().stream().map(Findings::line).toList();
    }

    private static String line(Finding finding) {
      return String.format(
          Locale.ROOT,
          "%s %s: %s, %s. %s",
          finding.severity(),
          finding.ruleId(),
          finding.observed().text(),
          finding.required(),
          finding.remedy());
    }
  }

  @Test
  void oneFolderIsEnough() throws Exception {
    ChangedFolder folder =
        ChangedFolder.of(Path.of("src/main/java"), FOLDER, empty)
            .add(Path.of("src/test/java", FOLDER, "SampleRule.java"))
            .insert("TransactionRules.java", "List.of(", "new SampleRule(), ")
            .compiled();
    assertEquals(
        List.of("ADVICE RP-TXN-990: 14 images, at most 10. Export only the ten rolled prints."),
        folder.run(Findings.class, true));
    assertEquals(List.of(), new Findings().apply(true), "the project itself has no such rule");
  }
}
