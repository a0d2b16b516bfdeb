package ridgeproof.cli.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.cli.RidgeproofCommand;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;

class NamedProfileTest {

  private static final SpecTables TABLES = SpecTables.open();

  @TempDir Path folder;

  private static ExaminationOptions apply(String name) {
    return NamedProfile.applyTo(ExaminationOptions.standard(), name, TABLES);
  }

  private static String failure(String name) {
    CommandFailure failure = assertThrows(CommandFailure.class, () -> apply(name));
    assertEquals(ExitStatus.USAGE, failure.status());
    assertEquals(1, failure.getMessage().lines().count());
    return failure.getMessage();
  }

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("pilots.toml"), text).toString();
  }

  @Test
  void aProfileThatComesWithRidgeproofIsFoundByName() {
    assertEquals("rolled-card", apply("rolled-card").profile().orElseThrow().name());
  }

  @Test
  void anAgencysProfileIsReadFromItsFile() throws IOException {
    String name = file("name = \"pilots\"\ntitle = \"Tidewater Harbour Pilots\"\n");
    assertEquals("pilots", apply(name).agency().orElseThrow().name());
  }

  @Test
  void anUnknownNameIsAnsweredWithThoseThatThereAre() {
    assertTrue(failure("card").startsWith("no profile card; available: rolled-card, "));
  }

  @Test
  void aFileThatIsNotThereIsWrongUsage() {
    assertEquals("none/pilots.toml: no such file or folder", failure("none/pilots.toml"));
  }

  @Test
  void whatCannotBeUsedIsNamedWithFileLineAndColumn() throws IOException {
    String name = file("name = \"pilots\"\ntitle = \"Tidewater\"\n  nmae = 1\n");
    assertTrue(failure(name).startsWith(name + ":3:3: unknown key nmae"), failure(name));
  }

  @Test
  void whatIsNoTomlIsNamedWithFileLineAndColumn() throws IOException {
    String name = file("name = \"pilots\"\ntitle = Tidewater\n");
    assertTrue(failure(name).startsWith(name + ":2:9: "), failure(name));
  }

  @Test
  void whatIsNotUtf8IsWrongUsage() throws IOException {
    Path path = Files.write(folder.resolve("p.toml"), new byte[] {'n', (byte) 0xFF});
    assertEquals(path + ": is not encoded in UTF-8", failure(path.toString()));
  }

  @Test
  void whatIsTooLargeIsWrongUsage() throws IOException {
    Path path = Files.write(folder.resolve("p.toml"), new byte[1024 * 1024 + 1]);
    assertEquals(path + ": exceeds the size limit of a profile, 1 MiB", failure(path.toString()));
  }

  @Test
  void anUnreadableProfileEndsTheCommandBeforeAnyFileIsRead() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream error = new ByteArrayOutputStream();
    Console console = new Console(new PrintStream(out), new PrintStream(error), false);
    String profile = file("name = 1");
    int status =
        RidgeproofCommand.commandLine(console)
            .execute("examine", "--profile", profile, folder.resolve("no.an2").toString());
    assertEquals(ExitStatus.USAGE, status);
    assertEquals("", out.toString());
    assertEquals(1, error.toString().lines().count(), error.toString());
    assertTrue(error.toString().startsWith("ridgeproof: " + profile + ":1:"), error.toString());
  }
}
