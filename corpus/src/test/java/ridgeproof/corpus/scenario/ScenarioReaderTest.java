package ridgeproof.corpus.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.corpus.composition.ComposedTransaction;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.impression.CaptureDefect;

class ScenarioReaderTest {

  private final ScenarioReader reader = new ScenarioReader();

  @Test
  void aStoryNeedsNoMoreThanOneLine() {
    Scenario scenario = reader.read("short", "story = \"A card\"");
    assertEquals("short", scenario.name());
    assertEquals(14, scenario.prints().boxes().size());
    assertEquals(4, scenario.prints().record());
    assertEquals("SPECIMEN,ADA", scenario.subject().name());
    assertEquals("READY", scenario.expects().verdict());
  }

  @Test
  void theExampleInTheDescriptionCanBeReadAndComposed() throws IOException {
    String readme = Files.readString(readme());
    int start = readme.indexOf("```toml\n") + "```toml\n".length();
    Scenario scenario =
        reader.read("example", readme.substring(start, readme.indexOf("```", start)));
    assertEquals(List.of(new PrintDefect(13, CaptureDefect.TOO_DRY, 0.8)), scenario.defects());
    assertEquals(1, scenario.missing().size());
    ComposedTransaction composed = new TransactionComposer(new SubjectCache()).compose(scenario);
    assertEquals(scenario.expects().findings(), Expected.rules(Expected.compared(composed)));
    assertEquals(scenario.expects().verdict(), Expected.verdict(Expected.compared(composed)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "text = \"no story\"",
        "story = \"x\"\ncolour = \"red\"",
        "story = \"x\"\n[transaction]\nversion = \"0100\"",
        "story = \"x\"\n[transaction]\nversion = \"five\"",
        "story = \"x\"\n[prints]\nrecord = 13",
        "story = \"x\"\n[prints]\nboxes = [16]",
        "story = \"x\"\n[prints]\nslap_frame = [1600]",
        "story = \"x\"\n[[defects]]\nbox = 3\nkind = \"too_dry\"\nstrength = 1.5",
        "story = \"x\"\n[[defects]]\nbox = 3\nkind = \"too_cold\"\nstrength = 0.5",
        "story = \"x\"\n[[mistakes]]\nkind = \"finger_twice\"\nbox = 3",
        "story = \"x\"\n[[mistakes]]\nkind = \"retake_kept\"",
        "story = \"x\"\n[[missing]]\nfinger = 11",
        "story = \"x\"\n[[palms]]\nposition = 5",
        "story = \"x\"\n[[changes]]\nrecord = 2\nfield = \"POB\"",
        "story = \"x\"\n[[damages]]\nkind = \"length_off\"\nrecord = 2",
        "story = \"x\"\n[[damages]]\nkind = \"tail_cut\"",
        "story = \"x\"\n[expects]\nareas = [\"STR\"]\nfindings = [\"RP-RDG-001\"]",
        "story = \"x"
      })
  void whatMeansNothingIsRefusedByName(String toml) {
    ScenarioError error = assertThrows(ScenarioError.class, () -> reader.read("odd", toml));
    assertTrue(error.getMessage().startsWith("odd"), error::getMessage);
  }

  @ParameterizedTest
  @CsvSource({
    "'[prints]\nruled = 1', prints.ruled: no such key",
    "'[[missing]]\nfinger = 1\n[[missing]]\nfinger = 11', 'missing[2]: finger is 11, not 1 to 10'",
    "'[prints]\nset = ', line 3"
  })
  void aRefusalNamesThePlaceAndTheReason(String body, String expected) {
    ScenarioError error =
        assertThrows(
            ScenarioError.class, () -> reader.read("odd", "story = \"x\"\n" + body + "\n"));
    assertTrue(error.getMessage().contains(expected), error::getMessage);
  }

  private static Path readme() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("corpus/README.md"))) {
      folder = folder.getParent();
    }
    return folder.resolve("corpus/README.md");
  }
}
