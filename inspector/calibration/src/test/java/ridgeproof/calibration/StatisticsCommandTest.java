package ridgeproof.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import ridgeproof.calibration.print.ManualAssessments;
import ridgeproof.calibration.statistics.PublishedFigure;
import ridgeproof.testing.ReferenceFiles;

@Tag("slow")
class StatisticsCommandTest {

  private static final int LEAST = 2;
  private static final int MOST = 10;
  private static final int BELOW_THE_LIMIT = 11;

  @TempDir static Path folder;

  private static String document;

  @BeforeAll
  static void drawTwoCards() throws IOException {
    document = statisticsOf("first.md", "--seed", "7", "--cards", "2");
  }

  private static String statisticsOf(String name, String... options) throws IOException {
    Path report = folder.resolve(name);
    StringWriter error = new StringWriter();
    assertEquals(0, run(error, report, options), error.toString());
    return Files.readString(report);
  }

  private static int run(StringWriter error, Path report, String... options) {
    CommandLine line = CalibrationCommand.commandLine();
    line.setErr(new PrintWriter(error, true));
    List<String> arguments = new ArrayList<>(List.of("statistics"));
    arguments.addAll(List.of(options));
    arguments.addAll(List.of("--report", report.toString()));
    return line.execute(arguments.toArray(String[]::new));
  }

  /** The cells of the first table row that begins so. */
  private static List<String> row(String text, String begin) {
    String row =
        text.lines().filter(line -> line.startsWith("| " + begin + " |")).findFirst().orElseThrow();
    return Arrays.stream(row.substring(2).split("\\|")).map(String::strip).toList();
  }

  private static double cell(String text, String begin, int column) {
    return Double.parseDouble(row(text, begin).get(column));
  }

  @Test
  void theSameOptionsGiveTheSameBytes() throws IOException {
    assertEquals(document, statisticsOf("second.md", "--seed", "7", "--cards", "2"));
  }

  @Test
  void aSeedOfTheEvaluationIsRefused() {
    StringWriter error = new StringWriter();
    Path report = folder.resolve("refused.md");
    assertNotEquals(0, run(error, report, "--seed", "1000000", "--cards", "1"));
    assertTrue(error.toString().contains("not for training"), error.toString());
    assertFalse(Files.exists(report));
  }

  @Test
  void printsOfOneFingerAreMoreAlikeThanAnyOthers() {
    double least = cell(document, "same finger", LEAST);
    assertTrue(least > cell(document, "other fingers of the subject", MOST), document);
    assertTrue(least > cell(document, "fingers of another subject", MOST), document);
    assertEquals(0, cell(document, "same finger", BELOW_THE_LIMIT));
    assertEquals(100, cell(document, "other fingers of the subject", BELOW_THE_LIMIT));
  }

  @Test
  void everyRollAndEveryPlainPrintIsCountedOnceInWhatItIsCalled() {
    for (String kind : List.of("rolled", "plain")) {
      String table = document.substring(document.indexOf("| " + kind + " | arch |"));
      double sum = 0;
      for (String pattern :
          List.of(
              "plain arch",
              "tented arch",
              "left loop",
              "right loop",
              "plain whorl",
              "double loop")) {
        for (int column = 1; column <= 7; column++) {
          sum += cell(table, pattern, column);
        }
      }
      assertEquals(20, sum, kind);
    }
  }

  @Test
  void theSharesOfThePatternsMakeAWhole() {
    double sum = 0;
    for (int column = 2; column <= 7; column++) {
      sum += cell(document, "**all**", column);
    }
    assertEquals(20, cell(document, "**all**", 1));
    assertEquals(100, sum, 0.4);
  }

  @Test
  void theRidgesCodeMeasuresThePeriodThatFingersAreGrownWith() {
    String period = document.substring(document.indexOf("## Ridge period"));
    List<String> all = row(period, "**all**");
    double grown = Double.parseDouble(all.get(1).split(" ")[0]);
    assertEquals(grown, Double.parseDouble(all.get(2).split(" ")[0]), 0.03);
    assertEquals(grown, Double.parseDouble(all.get(3).split(" ")[0]), 0.03);
    assertTrue(grown > 0.38 && grown < 0.54, all.toString());
  }

  @Test
  void everyPublishedFigureNamesItsSourceAndStandsInTheDocument() {
    for (PublishedFigure figure : PublishedFigure.all()) {
      assertFalse(figure.source().isBlank(), figure.key());
      assertTrue(
          List.of("published", "from memory", "common practice").contains(figure.known()),
          figure.key());
      assertTrue(figure.low() <= figure.most(), figure.key());
      assertTrue(
          document.contains("| " + figure.source() + " | " + figure.known() + " |"), figure.key());
      assertFalse(row(document, figure.about()).get(6).isEmpty(), figure.key());
    }
  }

  @Test
  void whatIsNotNaturalIsSaidAtTheEnd() {
    String end = document.substring(document.indexOf("## Where they differ"));
    for (PublishedFigure figure : PublishedFigure.all()) {
      boolean natural = row(document, figure.about()).get(6).equals("yes");
      assertEquals(!natural, end.contains("- " + figure.about() + ":"), figure.key());
    }
  }

  @Test
  void theRealCardStandsBesideTheDrawnOnesWithItsTenFingers() throws IOException {
    Path reference = ReferenceFiles.path(ManualAssessments.CARD).getParent();
    String text =
        statisticsOf("real.md", "--seed", "7", "--cards", "1", "--reference", reference.toString());
    assertEquals(10, cell(text, "rolled: real card, seen", 1));
    assertEquals(10, cell(text, "plain: real card, seen", 1));
    assertEquals(10, cell(text, "real card: same finger", 1));
    assertEquals(90, cell(text, "real card: other fingers of the subject", 1));
    assertEquals(100, cell(text, "real card: other fingers of the subject", BELOW_THE_LIMIT));
    assertTrue(
        cell(text, "real card: same finger", 6)
            > cell(text, "real card: other fingers of the subject", MOST),
        "median of one finger against the most of others");
  }
}
