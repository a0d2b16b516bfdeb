package ridgeproof.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import ridgeproof.calibration.print.MadeUpPrints;
import ridgeproof.calibration.print.MeasureTable;
import ridgeproof.calibration.print.SeedRange;

@Tag("slow")
class CalibrationCommandTest {

  @TempDir Path folder;

  private static int run(StringWriter error, String... arguments) {
    CommandLine line = CalibrationCommand.commandLine();
    line.setErr(new PrintWriter(error, true));
    return line.execute(arguments);
  }

  @Test
  void noSeedServesForBothSplits() {
    for (long seed : new long[] {1, 999_999, 1_000_000, 1_999_999}) {
      boolean training = seed < 1_000_000;
      SeedRange own = training ? SeedRange.TRAINING : SeedRange.EVALUATION;
      SeedRange other = training ? SeedRange.EVALUATION : SeedRange.TRAINING;
      assertEquals(seed, own.checked(seed));
      assertThrows(IllegalArgumentException.class, () -> other.checked(seed));
    }
  }

  @Test
  void limitsAreNotFittedOnSeedsOfTheEvaluation() {
    StringWriter error = new StringWriter();
    String file = folder.resolve("x").toString();
    assertNotEquals(0, run(error, "fit", "--seed", "1000000", "--limits", file, "--curves", file));
    assertTrue(error.toString().contains("not for training"), error.toString());
    assertEquals(List.of(), List.of(folder.toFile().list()));
  }

  @Test
  void limitsAreNotJudgedBySeedsTheyMayBeFittedOn() {
    StringWriter error = new StringWriter();
    String file = folder.resolve("x").toString();
    assertNotEquals(0, run(error, "evaluate", "--seed", "999999", "--report", file));
    assertTrue(error.toString().contains("not for evaluation"), error.toString());
    assertEquals(List.of(), List.of(folder.toFile().list()));
  }

  @Test
  void measuresOfAnotherSeedAreRefused() throws IOException {
    Path table = folder.resolve("measures.csv");
    StringBuilder written = new StringBuilder();
    MeasureTable.write(MadeUpPrints.dryAndClean(3), written);
    Files.writeString(table, written);
    StringWriter error = new StringWriter();
    String report = folder.resolve("report").toString();
    assertNotEquals(
        0,
        run(
            error,
            "fit",
            "--seed",
            "2",
            "--measures",
            table.toString(),
            "--limits",
            report,
            "--curves",
            report));
    assertTrue(error.toString().contains("is not of seed"), error.toString());
  }

  @Test
  void aDrawIsTheSameEachTime() throws IOException {
    StringWriter error = new StringWriter();
    List<Path> files = List.of(folder.resolve("first.csv"), folder.resolve("second.csv"));
    for (Path file : files) {
      String[] arguments = {
        "measure", "--seed", "2", "--cards", "1", "--defect-rate", "1", "--output", file.toString()
      };
      assertEquals(0, run(error, arguments), error.toString());
    }
    assertEquals(Files.readString(files.get(0)), Files.readString(files.get(1)));
    assertTrue(Files.readString(files.get(0)).lines().count() > 10);
  }

  @Test
  void anEvaluationReportsFilesAndExchanges() throws IOException {
    StringWriter error = new StringWriter();
    Path report = folder.resolve("report.md");
    String[] arguments = {
      "evaluate",
      "--seed",
      "1000002",
      "--cards",
      "1",
      "--defect-rate",
      "1",
      "--sequence-cards",
      "1",
      "--exchanges",
      "3",
      "--report",
      report.toString()
    };
    assertEquals(0, run(error, arguments), error.toString());
    String text = Files.readString(report);
    assertTrue(text.contains("1 cards and sets of flats"), text);
    assertTrue(text.contains("| clean | 10 |"), text);
    assertTrue(text.contains("exchanged, 3 times in all"), text);
  }
}
