package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.requirement.Requirement;
import ridgeproof.spec.requirement.Requirements;

class RulesCommandTest {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream error = new ByteArrayOutputStream();

  private int run(String... arguments) {
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(error, true, StandardCharsets.UTF_8),
            false);
    return RidgeproofCommand.commandLine(console).execute(arguments);
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void theCountEndsWithTheNumberOfRequirementsThatTheWalkChecks() {
    long checked =
        new Requirements(SpecTables.open())
            .all().stream().filter(Requirement::isObservable).count();
    assertEquals(ExitStatus.OK, run("rules", "--count"));
    String last = printed().lines().reduce((first, second) -> second).orElseThrow();
    assertEquals("in all   %5d  requirements".formatted(checked), last);
  }

  @Test
  void aRuleIsExplainedAnAreaIsListed() {
    assertEquals(ExitStatus.OK, run("rules", "rp-fld-005"));
    assertTrue(printed().startsWith("RP-FLD-005  "), printed());
    out.reset();
    assertEquals(ExitStatus.OK, run("rules", "fld"));
    assertTrue(printed().lines().count() > 10, printed());
  }

  @Test
  void eachFormatListsTheSameRules() {
    assertEquals(ExitStatus.OK, run("rules", "STR", "--format", "csv"));
    long csv = printed().lines().filter(line -> line.startsWith("RP-STR-")).count();
    out.reset();
    assertEquals(ExitStatus.OK, run("rules", "STR", "--format", "json"));
    long json = printed().lines().filter(line -> line.contains("\"id\"")).count();
    out.reset();
    assertEquals(ExitStatus.OK, run("rules", "STR"));
    long text = printed().lines().filter(line -> line.startsWith("RP-STR-")).count();
    assertEquals(text, csv);
    assertEquals(text, json);
    assertTrue(text > 10);
  }

  @Test
  void aRuleThatIsNotThereIsAMistakeOfUse() {
    assertEquals(ExitStatus.USAGE, run("rules", "RP-FLD-999"));
    assertEquals(ExitStatus.USAGE, run("rules", "--count", "--format", "json"));
    assertEquals("", printed());
  }
}
