package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The gate as a person starts it, without a page. */
class GateCommandTest {

  private static final String REASON = "Finger injured, documented on the form";

  @TempDir Path folder;

  private CommandRun gate(String... more) throws IOException {
    Files.createDirectories(folder.resolve("from"));
    List<String> arguments = new ArrayList<>(List.of(more));
    for (String name : List.of("from", "ready", "hold")) {
      arguments.add("--" + name);
      arguments.add(folder.resolve(name).toString());
    }
    arguments.add("--profile");
    arguments.add(profile().toString());
    return CommandRun.of(arguments.toArray(String[]::new));
  }

  private Path profile() throws IOException {
    return Files.writeString(
        folder.resolve("pilots.toml"),
        "name = \"pilots\"\ntitle = \"Pilots\"\nrelease_reasons = [\"" + REASON + "\"]\n");
  }

  @Test
  void whatIsNotReadyIsHeldAndReleasedByAPerson() throws IOException {
    byte[] note = "tide table".getBytes(StandardCharsets.US_ASCII);
    Files.createDirectories(folder.resolve("from"));
    Files.write(folder.resolve("from/note.an2"), note);
    CommandRun run = gate("gate", "--once");
    assertEquals(2, run.status(), run.error());
    assertTrue(run.out().contains("UNREADABLE  note.an2  held"), run.out());
    assertArrayEquals(note, Files.readAllBytes(folder.resolve("hold/note.an2/note.an2")));
    assertTrue(Files.exists(folder.resolve("hold/note.an2/report.html")));
    assertTrue(gate("gate", "release").out().contains("note.an2"));
    CommandRun wrong = gate("gate", "release", "note.an2", "--reason", "because", "--by", "me");
    assertEquals(64, wrong.status());
    assertTrue(wrong.error().contains(REASON), wrong.error());
    CommandRun released =
        gate("gate", "release", "note.an2", "--reason", REASON, "--by", "Harbor Master");
    assertEquals(0, released.status(), released.error());
    assertArrayEquals(note, Files.readAllBytes(folder.resolve("ready/note.an2")));
    assertTrue(gate("gate", "release").out().contains("no files are held"));
  }

  @Test
  void aFolderThatIsNotThereIsWrongUsage() {
    String none = folder.resolve("none").toString();
    CommandRun run =
        CommandRun.of(
            "gate", "--once", "--from", none, "--ready", none + "-ready", "--hold", none + "-hold");
    assertEquals(64, run.status());
    assertTrue(run.error().contains("no such folder"), run.error());
  }

  @Test
  void aGateNeedsItsFolders() {
    CommandRun run = CommandRun.of("gate", "--once");
    assertEquals(64, run.status());
    assertTrue(run.error().contains("--from, --ready and --hold"), run.error());
  }

  @Test
  void theDeskExplainsItself() {
    CommandRun run = CommandRun.of("desk", "--help");
    assertEquals(0, run.status());
    assertTrue(run.out().contains("browser of this machine"), run.out());
  }
}
