package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {

  private static final String NAME = "SPECIMEN,ADA MARIA";

  @TempDir Path folder;
  private Path sound;

  @BeforeEach
  void writeASoundTransaction() throws IOException {
    sound = folder.resolve("sound.an2");
    Files.write(sound, SmallTransaction.bytes());
  }

  @Test
  void aFileIsExaminedAndTheVerdictIsTheExitStatus() throws IOException {
    CommandRun outcome = run("examine", sound.toString());
    assertEquals(0, outcome.status(), outcome.out());
    assertTrue(outcome.out().startsWith("READY  sound.an2"), outcome.out());

    Path cut = folder.resolve("cut.an2");
    byte[] whole = SmallTransaction.bytes();
    Files.write(cut, Arrays.copyOf(whole, whole.length - 3));
    assertEquals(2, run("examine", cut.toString()).status());

    Path picture = folder.resolve("picture.jpg");
    Files.write(picture, new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0});
    CommandRun unreadable = run("examine", picture.toString());
    assertEquals(3, unreadable.status());
    assertTrue(unreadable.out().contains("a JPEG image"), unreadable.out());
  }

  @Test
  void ofSeveralFilesTheWorstDecides() throws IOException {
    Path cut = folder.resolve("cut.an2");
    byte[] whole = SmallTransaction.bytes();
    Files.write(cut, Arrays.copyOf(whole, whole.length - 3));
    assertEquals(2, run("examine", sound.toString(), cut.toString()).status());
    CommandRun json = run("examine", "--format", "json", sound.toString(), cut.toString());
    assertTrue(json.out().startsWith("[{"), json.out());
  }

  @Test
  void aFolderIsSearchedForTransactions() throws IOException {
    Files.writeString(folder.resolve("notes.txt"), "nothing of ours");
    CommandRun outcome = run("examine", folder.toString());
    assertEquals(0, outcome.status());
    assertTrue(outcome.out().contains("sound.an2"));
    assertTrue(outcome.out().contains("notes.txt: not a transaction: looks like text"));
  }

  @Test
  void aPatternThatTheShellLeftIsExpanded() {
    assertEquals(0, run("examine", folder.resolve("*.an2").toString()).status());
    run("examine", folder.resolve("*.eft").toString()).isOneLineOf(74, "no file matches");
  }

  @Test
  void badUsageIsOneLine() {
    run().isOneLineOf(64, "no command given");
    run("examine").isOneLineOf(64, "FILE");
    run("examine", "--colour", sound.toString()).isOneLineOf(64, "--colour");
    run("examine", "--depth", "sea", sound.toString()).isOneLineOf(64, "sea");
    run("examine", "--max-file-size", "big", sound.toString()).isOneLineOf(64, "big");
    run("examine", "--profile", "none-such", sound.toString()).isOneLineOf(64, "none-such");
    run("rules", "RP-STR-999").isOneLineOf(64, "RP-STR-999");
    run("codes", "none-such").isOneLineOf(64, "none-such");
  }

  @Test
  void aMissingFileIsOneLine() {
    for (String command : List.of("examine", "layout")) {
      run(command, folder.resolve("gone.an2").toString()).isOneLineOf(74, "no such file");
    }
  }

  @Test
  void aFolderWithoutTransactionsIsOneLine() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    run("examine", empty.toString()).isOneLineOf(74, "no transaction file in this folder");
    run("layout", empty.toString()).isOneLineOf(74, "is a folder");
  }

  @Test
  void anUnreadableFileIsOneLine() {
    Assumptions.assumeTrue(sound.toFile().setReadable(false) && !Files.isReadable(sound));
    run("examine", sound.toString()).isOneLineOf(74, "permission denied");
  }

  @Test
  void aFileBeyondTheLimitIsOneLine() {
    run("examine", "--max-file-size", "10", sound.toString()).isOneLineOf(74, "--max-file-size");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--max-file-size",
        "--max-records",
        "--max-items",
        "--max-findings",
        "--max-pixels",
        "--image-time"
      })
  void aLimitBelowOneIsWrongUsage(String limit) {
    for (String value : List.of("0", "-1", "-9999999999", "9999999999", "", "1.5")) {
      run("examine", limit + "=" + value, sound.toString()).isOneLineOf(64, limit);
    }
  }

  @Test
  void anEndlessDeviceIsReadUpToTheLimitAndNoFurther() {
    Path zeros = Path.of("/dev/zero");
    Assumptions.assumeTrue(Files.isReadable(zeros));
    run("examine", "--max-file-size", "3M", zeros.toString()).isOneLineOf(74, "--max-file-size");
    run("layout", "--max-file-size", "3M", zeros.toString()).isOneLineOf(74, "--max-file-size");
  }

  @Test
  void aNameCannotActOnTheTerminal() {
    String name = folder.resolve("no\u001B[31m\u202Esuch.an2").toString();
    run("examine", name).isOneLineOf(74, "no\\x1B[31m\\u202Esuch.an2: no such file");
    run("layout", sound.toString(), "\u001B[31m").isOneLineOf(64, "\\x1B[31m");
  }

  @Test
  void aFullDiskIsOneLine() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int value) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    CommandRun.to(full, "examine", sound.toString())
        .isOneLineOf(74, "cannot write to standard output");
    run("examine", "--output", "/dev/full/report.txt", sound.toString())
        .isOneLineOf(74, "cannot write");
  }

  @Test
  void anOutputFileIsWrittenWholeAndNeverOverAnotherUnasked() throws IOException {
    Path report = folder.resolve("report.txt");
    String[] arguments = {"examine", "--output", report.toString(), sound.toString()};
    assertEquals(0, run(arguments).status());
    assertTrue(Files.readString(report).startsWith("READY"));
    run(arguments).isOneLineOf(74, "--overwrite");
    assertEquals(
        0, run("examine", "--overwrite", "--output", report.toString(), sound.toString()).status());
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(2, files.count());
    }
  }

  @Test
  void anInputIsNeverWrittenTo() throws IOException {
    byte[] before = Files.readAllBytes(sound);
    run("examine", "--overwrite", "--output", sound.toString(), sound.toString())
        .isOneLineOf(64, "input files are never changed");
    assertArrayEquals(before, Files.readAllBytes(sound));
  }

  @Test
  void valuesThatTellOfAPersonAreMaskedUnlessAskedFor() {
    for (String[] command :
        new String[][] {{"layout"}, {"examine"}, {"examine", "--format", "json"}}) {
      String[] masked = with(command, sound.toString());
      assertFalse(run(masked).out().contains("SPECIMEN"), String.join(" ", masked));
    }
    assertTrue(run("layout", "--show-personal", sound.toString()).out().contains(NAME));
  }

  @Test
  void theLayoutOfAFileShowsEveryFieldWithItsOffset() {
    CommandRun outcome = run("layout", sound.toString());
    assertEquals(0, outcome.status());
    assertTrue(outcome.out().contains("1.004   TOT  NAR"), outcome.out());
    assertTrue(outcome.out().contains("Record 2: Type-2 IDC 00"), outcome.out());
  }

  @Test
  void rulesAndCodesAreListedAndExplained() {
    assertTrue(run("rules").out().contains("RP-STR-004"));
    assertTrue(run("rules", "STR").out().contains("RP-STR-004"));
    assertFalse(run("rules", "STR").out().contains("RP-IMG-001"));
    CommandRun one = run("rules", "rp-str-004");
    assertEquals(0, one.status());
    assertTrue(one.out().contains("remedy"), one.out());
    assertFalse(one.out().contains("{"), one.out());
    assertTrue(run("codes").out().contains("finger-positions"));
    assertTrue(run("codes", "finger-positions", "thumb").out().contains("right thumb"));
    assertTrue(run("codes", "--find", "tattoo").out().contains("image-types"));
  }

  @Test
  void helpIsThereForEveryCommand() {
    assertEquals(0, run("--help").status());
    for (String command : List.of("examine", "layout", "images", "rules", "codes")) {
      CommandRun outcome = run(command, "--help");
      assertEquals(0, outcome.status());
      assertTrue(outcome.out().contains("ridgeproof " + command), outcome.out());
    }
  }

  private static String[] with(String[] command, String file) {
    String[] all = Arrays.copyOf(command, command.length + 1);
    all[command.length] = file;
    return all;
  }

  private static CommandRun run(String... arguments) {
    return CommandRun.of(arguments);
  }
}
