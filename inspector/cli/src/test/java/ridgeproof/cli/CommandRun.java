package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.StandardOutput;

/** What a command printed and ended with. */
public record CommandRun(int status, String out, String error) {

  public static CommandRun of(String... arguments) {
    return to(new ByteArrayOutputStream(), arguments);
  }

  /** Runs a command with that standard output. */
  static CommandRun to(OutputStream out, String... arguments) {
    ByteArrayOutputStream error = new ByteArrayOutputStream();
    Console console =
        new Console(
            StandardOutput.on(out), new PrintStream(error, true, StandardCharsets.UTF_8), false);
    int status = RidgeproofCommand.commandLine(console).execute(arguments);
    console.out().flush();
    String printed =
        out instanceof ByteArrayOutputStream kept ? kept.toString(StandardCharsets.UTF_8) : "";
    return new CommandRun(status, printed, error.toString(StandardCharsets.UTF_8));
  }

  /** Holds it to have failed with one line for the user. */
  void isOneLineOf(int expected, String words) {
    assertEquals(expected, status, error);
    List<String> lines = error.lines().filter(line -> !line.startsWith("try: ")).toList();
    assertEquals(1, lines.size(), error);
    assertTrue(lines.get(0).startsWith("ridgeproof: "), error);
    assertTrue(lines.get(0).contains(words), error);
  }
}
