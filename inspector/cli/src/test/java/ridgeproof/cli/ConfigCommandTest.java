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
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import ridgeproof.cli.configuration.ConfigCommand;
import ridgeproof.cli.configuration.UserDefaults;
import ridgeproof.cli.io.Console;

/** A user's defaults apply where the command line names nothing, and can be looked at. */
class ConfigCommandTest {

  private static final String AGENCY =
      "name = \"harbor\"\ntitle = \"Harbor office\"\nbase = \"rolled-card\"\n";

  @TempDir Path folder;
  private Path file;
  private Path card;

  @BeforeEach
  void writeCard() throws IOException {
    file = folder.resolve("config.toml");
    card = Files.write(folder.resolve("card.an2"), SmallTransaction.bytes());
  }

  private void configure(String... lines) throws IOException {
    Files.writeString(file, String.join("\n", lines) + "\n");
  }

  private CommandRun run(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream error = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(error, true, StandardCharsets.UTF_8),
            false);
    CommandLine line = RidgeproofCommand.commandLine(console);
    UserDefaults.of(file).ifPresent(line::setDefaultValueProvider);
    int status = line.execute(arguments);
    return new CommandRun(
        status, out.toString(StandardCharsets.UTF_8), error.toString(StandardCharsets.UTF_8));
  }

  private String checkedAs(String... options) {
    List<String> arguments = new ArrayList<>(List.of("examine", "--depth", "structure"));
    arguments.addAll(List.of(options));
    arguments.add(card.toString());
    CommandRun run = run(arguments.toArray(String[]::new));
    assertEquals("", run.error());
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void aProfileOfTheUserAppliesUnlessTheCommandLineNamesOne() throws IOException {
    assertFalse(checkedAs().contains("Checked as: Rolled tenprint card"), "implied already");
    configure("profile = \"rolled-card\"");
    assertTrue(checkedAs().contains("Checked as: Rolled tenprint card"), checkedAs());
    String named = checkedAs("--profile", "identification-flats");
    assertTrue(named.contains("Checked as: Identification flats"), named);
  }

  @Test
  void anAgencyOfTheUserIsFoundBesideTheFile() throws IOException {
    Files.writeString(folder.resolve("harbor.toml"), AGENCY);
    configure("agency = \"harbor.toml\"");
    assertTrue(checkedAs().contains("Checked as: Harbor office"), checkedAs());
  }

  @Test
  void aFormatOfTheUserIsThatOfExamineAlone() throws IOException {
    configure("format = \"json\"");
    assertTrue(checkedAs().startsWith("{"), checkedAs());
    assertFalse(checkedAs("--format", "text").startsWith("{"));
    assertFalse(run("rules", "STR").out().startsWith("["));
  }

  @Test
  void whatIsSetIsShownWithItsPlace() throws IOException {
    configure("format = \"html\"");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Console console =
        new Console(new PrintStream(out, true, StandardCharsets.UTF_8), System.err, false);
    assertEquals(0, new CommandLine(new ConfigCommand(console, file)).execute());
    assertEquals(
        "Configuration file: "
            + file
            + "\n\n"
            + "Setting  Value                        From\n"
            + "profile  inferred from each file      default\n"
            + "format   html                         configuration file\n"
            + "agency   none                         default\n",
        out.toString(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "profil = 'rolled-card'|unknown key 'profil'; did you mean profile?",
        "formats = 'json'|unknown key 'formats'; did you mean format?",
        "format = 'htlm'|no format 'htlm'; available: text, json, html, csv, sarif, pdf",
        "format = 3|format must be a text in quotes",
        "profile = 'pilots'|no profile 'pilots'; available: rolled-card, identification-flats",
        "profile = |not valid TOML, line 1",
        "agency = 'none.toml'|no such file or folder"
      })
  void whatCannotBeUsedIsAPlainUsageError(String line, String words) throws IOException {
    configure(line.replace('\'', '"'));
    CommandRun run = run("examine", card.toString());
    run.isOneLineOf(64, words);
    assertTrue(run.error().contains(folder.toString()), run.error());
  }

  @Test
  void aProfileAndAnAgencyExcludeEachOther() throws IOException {
    configure("profile = \"rolled-card\"", "agency = \"harbor.toml\"");
    run("examine", card.toString()).isOneLineOf(64, "profile and agency cannot be combined");
  }

  /** The whole program, with the environment of a user. */
  @Test
  void theProgramReadsTheFileOfItsUser() throws Exception {
    CommandRun without = program("config");
    assertTrue(without.out().contains("This file does not exist"), without.out());
    Path settings = Files.createDirectories(folder.resolve("settings/ridgeproof"));
    Files.writeString(settings.resolve("config.toml"), "format = \"json\"\n");
    CommandRun run = program("examine", "--depth", "structure", card.toString());
    assertEquals("", run.error());
    assertTrue(run.out().startsWith("{"), run.out());
    CommandRun shown = program("config");
    assertTrue(shown.out().startsWith("Configuration file: " + settings), shown.out());
  }

  private CommandRun program(String... arguments) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    command.addAll(List.of(arguments));
    Path error = folder.resolve("error.txt");
    ProcessBuilder process = new ProcessBuilder(command).redirectError(error.toFile());
    process.environment().put("XDG_CONFIG_HOME", folder.resolve("settings").toString());
    process.environment().put("APPDATA", folder.resolve("settings").toString());
    Process started = process.start();
    String out = new String(started.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new CommandRun(started.waitFor(), out, Files.readString(error));
  }
}
