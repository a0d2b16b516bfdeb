package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.testing.ChangedFolder;

/** A form of a report is added by a class, its name in the list, and a line in the switch. */
class AddAReportFormTest {

  private static final String FOLDER = "ridgeproof/cli/reporting";

  @TempDir Path empty;

  /** Runs with the changed folder; what a command prints, or its complaint. */
  public static final class Printed implements Function<List<String>, String> {

    @Override
    public String apply(List<String> arguments) {
      CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
      return run.out() + run.error();
    }
  }

  @Test
  void oneFolderIsEnough(@TempDir Path cards) throws Exception {
    Path card = Files.write(cards.resolve("card.an2"), SmallTransaction.bytes());
    List<String> command =
        List.of("examine", "--depth", "structure", "--format", "verdicts", card.toString());
    ChangedFolder folder =
        ChangedFolder.of(Path.of("src/main/java"), FOLDER, empty)
            .add(Path.of("src/test/java", FOLDER, "SampleForm.java"))
            .insert("ReportFormat.java", "text,\n", "  verdicts,\n")
            .insert(
                "ReportWriter.java",
                "switch (format) {\n",
                "      case verdicts -> {\n"
                    + "        SampleForm form = new SampleForm(out);\n"
                    + "        yield new ReportWriter(form::add, form::end);\n"
                    + "      }\n")
            .compiled();
    assertEquals("card.an2 is READY\n1 in all\n", folder.run(Printed.class, command));
    assertEquals(
        "ridgeproof: Invalid value for option '--format'",
        new Printed().apply(command).lines().findFirst().orElse("").substring(0, 47));
  }
}
