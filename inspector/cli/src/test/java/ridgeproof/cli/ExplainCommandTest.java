package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class ExplainCommandTest {

  @Test
  void aCodeIsExplainedWithItsRulesAndWhatToDo() {
    CommandRun run = CommandRun.of("explain", "E0004");
    assertEquals(0, run.status(), run.error());
    assertTrue(run.out().startsWith("E0004  Record cannot be read"), run.out());
    assertTrue(run.out().contains("RP-STR-004"), run.out());
    assertTrue(run.out().contains("what to do"), run.out());
    assertTrue(run.out().contains("(published)"), run.out());
  }

  @Test
  void theWordsOfAMessageMayComeWithoutQuotes() {
    CommandRun run = CommandRun.of("explain", "fingerprint", "sequence", "error");
    assertEquals(0, run.status(), run.error());
    assertTrue(run.out().contains("Fingers are in the wrong boxes"), run.out());
    assertTrue(run.out().contains("(common practice)"), run.out());
  }

  @Test
  void anUnknownMessageIsSaidToBeOne() {
    CommandRun run = CommandRun.of("explain", "come", "back", "later");
    assertEquals(1, run.status());
    assertTrue(run.out().contains("No explanation is known"), run.out());
  }

  @Test
  void aCodeOutsideTheListIsExplainedByItsFirstLetterAndSaysSo() {
    CommandRun run = CommandRun.of("explain", "L0118");
    assertEquals(0, run.status());
    assertTrue(run.out().contains("L0118 is not in the published list"), run.out());
    assertTrue(run.out().contains("(from memory)"), run.out());
  }

  @Test
  void jsonSaysTheSame() throws IOException {
    JsonNode json =
        new ObjectMapper().readTree(CommandRun.of("explain", "--format", "json", "L0008").out());
    assertEquals("L0008", json.at("/explanations/0/code").asText());
    assertEquals("published", json.at("/explanations/0/known").asText());
    assertTrue(json.get("known").asBoolean());
  }

  @Test
  void withoutAMessageAllAreListed() {
    CommandRun run = CommandRun.of("explain");
    assertEquals(0, run.status());
    assertTrue(run.out().contains("A0001"), run.out());
    assertTrue(run.out().lines().count() > 25, run.out());
  }
}
