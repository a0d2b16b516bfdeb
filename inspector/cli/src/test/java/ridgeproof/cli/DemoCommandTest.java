package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.cli.io.Console;
import ridgeproof.corpus.scenario.DemonstrationSet;

class DemoCommandTest {

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream error = new ByteArrayOutputStream();

  private int run(String... arguments) {
    PrintStream printed = new PrintStream(out, true, StandardCharsets.UTF_8);
    PrintStream complained = new PrintStream(error, true, StandardCharsets.UTF_8);
    return RidgeproofCommand.commandLine(new Console(printed, complained, false))
        .execute(arguments);
  }

  @Test
  void eachStoryIsWrittenAndToldWithItsVerdictAndMainFinding() {
    Path target = folder.resolve("new/demo");
    int status =
        run("demo", "--output=" + target, "--story=length-off-by-one", "--story=one-hand-missing");
    String text = out.toString(StandardCharsets.UTF_8);
    assertEquals(0, status);
    assertTrue(Files.exists(target.resolve("length-off-by-one.an2")));
    assertTrue(Files.exists(target.resolve("one-hand-missing.an2")));
    assertTrue(
        text.contains("A manual edit left a record length off by one    HOLD        RP-STR-004"),
        text);
    assertTrue(
        text.contains("Identification flats without the left hand       HOLD        RP-TXN-040"),
        text);
    String complaints = error.toString(StandardCharsets.UTF_8);
    // A slow machine says how far it is.
    assertEquals("", complaints.replaceAll("ridgeproof: demo: \\d of 2 files\\R", ""));
  }

  @Test
  void aFileThatIsThereStopsItBeforeTheWork() throws IOException {
    Files.writeString(folder.resolve("clean-flats.an2"), "mine");
    assertEquals(74, run("demo", "--output=" + folder));
    assertEquals("mine", Files.readString(folder.resolve("clean-flats.an2")));
    assertFalse(Files.exists(folder.resolve("clean-card.an2")));
  }

  @Test
  void anUnknownStoryIsWrongUsageAndTheOthersAreNamed() {
    assertEquals(64, run("demo", "--output=" + folder, "--story=nothing"));
    assertTrue(error.toString(StandardCharsets.UTF_8).contains("clean-card, clean-flats"));
  }

  @Test
  void noLineOfTheTableIsWiderThanATerminal() {
    DemonstrationSet.scenarios()
        .forEach(
            scenario ->
                assertTrue(
                    scenario.story().length() <= 47,
                    () -> String.format(Locale.ROOT, "%s: %s", scenario.name(), scenario.story())));
  }
}
