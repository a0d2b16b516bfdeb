package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import ridgeproof.cli.io.Console;
import ridgeproof.examination.facts.Depth;
import ridgeproof.transaction.reader.ParseLimits;

/** The command line behaves as people know it of others. */
class UsageTest {

  private static final int READER_GONE = 141;

  @TempDir Path folder;

  static List<String> commands() {
    return List.of(
        "examine",
        "ticket",
        "compare",
        "explain",
        "layout",
        "images",
        "rules",
        "codes",
        "demo",
        "config",
        "completion",
        "convert",
        "desk",
        "gate",
        "ledger");
  }

  @Test
  void aNearOptionOrCommandIsSuggested() {
    CommandRun.of("examine", "--formt", "json", "x.an2").isOneLineOf(64, "did you mean --format?");
    CommandRun.of("examin", "x.an2")
        .isOneLineOf(64, "unknown command 'examin'; did you mean examine?");
    CommandRun.of("help", "tickt").isOneLineOf(64, "did you mean ticket?");
    CommandRun.of("layout", "a.an2", "b.an2").isOneLineOf(64, "unexpected argument 'b.an2'");
  }

  @ParameterizedTest
  @MethodSource("commands")
  void helpOfACommandIsTheSameBothWaysAndHasExamples(String command) {
    String help = CommandRun.of(command, "--help").out();
    assertEquals(help, CommandRun.of("help", command).out());
    assertTrue(help.startsWith("Usage: ridgeproof " + command), help);
    assertTrue(help.contains("Examples:"), help);
  }

  @Test
  void aCommandBelowACommandHasExamplesToo() {
    CommandLine line = RidgeproofCommand.commandLine(Console.system());
    for (String command : List.of("gate", "ledger")) {
      for (String below : line.getSubcommands().get(command).getSubcommands().keySet()) {
        String help = CommandRun.of(command, below, "--help").out();
        assertTrue(help.contains("Examples:"), help);
      }
    }
  }

  /** A sentence that ends at the edge of a source line looks cut off in a wider window. */
  @ParameterizedTest
  @MethodSource("commands")
  void aParagraphOfHelpIsWrappedByTheWindowAlone(String command) {
    CommandLine line = RidgeproofCommand.commandLine(Console.system());
    for (String text :
        line.getSubcommands().get(command).getCommandSpec().usageMessage().description()) {
      assertTrue(text.isEmpty() || text.matches("(?s).*[.:]"), text);
    }
  }

  /** An example that the command line itself would refuse helps nobody. */
  @ParameterizedTest
  @MethodSource("commands")
  void examplesCanBeRun(String command) {
    List<String> examples =
        CommandRun.of("help", command)
            .out()
            .lines()
            .filter(line -> line.startsWith("  ridgeproof " + command + " "))
            .toList();
    for (String example : examples) {
      String words = example.strip().replaceAll(" {2,}.*| > FILE.*", "");
      String[] arguments = words.substring("ridgeproof ".length()).split(" ");
      CommandLine line = RidgeproofCommand.commandLine(Console.system());
      assertEquals(command, line.parseArgs(arguments).subcommand().commandSpec().name(), example);
    }
  }

  @Test
  void aFileOnStandardInputIsExamined() {
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream(SmallTransaction.bytes()));
      CommandRun run = CommandRun.of("examine", "--depth", "structure", "-");
      assertTrue(run.out().contains("standard input"), run.out() + run.error());
      assertEquals(
          CommandRun.of("examine", "--depth", "structure", sound()).status(), run.status());
      System.setIn(new ByteArrayInputStream(SmallTransaction.bytes()));
      CommandRun.of("examine", "--max-file-size", "100", "-")
          .isOneLineOf(74, "more than the limit of 100 bytes");
      CommandRun.of("examine", "-", "-").isOneLineOf(64, "can be read only once");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      System.setIn(before);
    }
  }

  @Test
  void theOptionsUsedMostComeFirstAndHelpLast() {
    String help = CommandRun.of("examine", "--help").out();
    List<Integer> places =
        Stream.of("Output:", "--format", "What to check:", "--profile", "Limits", "Help:")
            .map(help::indexOf)
            .toList();
    assertEquals(places.stream().sorted().toList(), places, help);
    assertFalse(places.contains(-1), help);
  }

  @Test
  void optionsInGroupsStillReachTheirCommand() throws IOException {
    Path file = Files.write(folder.resolve("sound.an2"), SmallTransaction.bytes());
    CommandLine line =
        RidgeproofCommand.commandLine(new Console(System.out, System.err, false, false, false));
    OptionGroups.arrange(line.getSubcommands().get("examine").getCommandSpec());
    ExamineCommand command =
        (ExamineCommand)
            line.parseArgs("examine", "--depth", "images", "--max-records", "7", file.toString())
                .subcommand()
                .commandSpec()
                .userObject();
    assertEquals(Depth.IMAGES, command.choices.options(command.limits, ToldStories.TABLES).depth());
    assertEquals(7, command.limits.reading().maxRecords());
    assertEquals(
        new ParseLimits(
            ParseLimits.standard().maxBytes(),
            7,
            ParseLimits.standard().maxItems(),
            ParseLimits.standard().maxFindings()),
        command.limits.reading());
  }

  @Test
  void completionKnowsEveryCommandAndItsOptions() throws Exception {
    String script = CommandRun.of("completion").out();
    for (String command : commands()) {
      assertTrue(script.contains(command), command);
    }
    assertTrue(script.contains("--second-decoder"), "an option is missing");
    Path file = Files.writeString(folder.resolve("completion.bash"), script);
    Process check = new ProcessBuilder("bash", "-n", file.toString()).inheritIO().start();
    assertEquals(0, check.waitFor(), "bash cannot read the script");
  }

  @Test
  void aReaderThatStopsEndsTheCommandQuietly() throws Exception {
    OutputStream broken =
        new OutputStream() {
          @Override
          public void write(int value) throws IOException {
            throw new IOException("Broken pipe");
          }
        };
    for (String[] arguments :
        new String[][] {
          {"rules"},
          {"examine", sound()},
          {"examine", "--format", "json", sound()},
          {"examine", "--format", "csv", sound()},
          {"layout", sound()},
          {"completion"}
        }) {
      CommandRun run = CommandRun.to(broken, arguments);
      assertEquals(READER_GONE, run.status(), String.join(" ", arguments));
      assertEquals("", run.error());
    }
  }

  @Test
  void headMayStopReadingEarly() throws Exception {
    for (String[] arguments : new String[][] {{"rules", "--format", "json"}, {"--help"}}) {
      List<String> command =
          new ArrayList<>(
              List.of(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  Main.class.getName()));
      command.addAll(Arrays.asList(arguments));
      Path errors = folder.resolve("errors.txt");
      Process process = new ProcessBuilder(command).redirectError(errors.toFile()).start();
      try (BufferedReader reader = process.inputReader()) {
        reader.readLine();
      }
      int status = process.waitFor();
      assertTrue(status == READER_GONE || status == 0, "ended with " + status);
      assertEquals("", Files.readString(errors));
    }
  }

  private String sound() throws IOException {
    return Files.write(folder.resolve("sound.an2"), SmallTransaction.bytes()).toString();
  }
}
