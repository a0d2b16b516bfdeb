package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringWriter;
import java.lang.ref.WeakReference;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.Progress;
import ridgeproof.cli.reporting.ReportFormat;
import ridgeproof.cli.reporting.ReportWriter;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.report.FileAccount;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** However many files there are, no report on one is kept, and no output is left half-written. */
@Tag("slow")
class BoundedMemoryTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final int FILES = 60;
  private static final int FILE_BYTES = 1_000_000;

  @TempDir Path folder;

  private static FindingsReport examine(byte[] bytes) {
    return new Examiner(TABLES, ParseLimits.standard())
        .examine(ByteSource.of(bytes), ExaminationOptions.standard());
  }

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "pdf")
  void aReportIsWrittenWhenItIsAddedAndThenForgotten(ReportFormat format) throws IOException {
    StringWriter out = new StringWriter();
    ReportWriter assembly =
        ReportWriter.of(
            format, TABLES, RenderOptions.standard(), Optional.empty(), out, true, false);
    byte[] cut = Arrays.copyOf(SmallTransaction.bytes(), 300);
    List<WeakReference<FindingsReport>> reports = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      FindingsReport report = examine(cut);
      reports.add(new WeakReference<>(report));
      int before = out.getBuffer().length();
      assembly.add(new FileFacts("cut.an2", cut.length, "0".repeat(64)), report);
      assertTrue(out.getBuffer().length() > before, "the report waits for the next");
    }
    System.gc();
    assertEquals(0, reports.stream().filter(report -> report.get() != null).count());
    assembly.end(new FileAccount(1, List.of()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"json", "html"})
  void filesOfMoreBytesThanThereIsMemoryAreExaminedOneByOne(String format) throws Exception {
    Path in = Files.createDirectories(folder.resolve("in"));
    byte[] small = SmallTransaction.bytes();
    Path whole = Files.write(folder.resolve("whole"), Arrays.copyOf(small, FILE_BYTES));
    for (int i = 0; i < FILES; i++) {
      Files.createSymbolicLink(in.resolve(i + ".an2"), whole);
    }
    Path out = folder.resolve("out");
    Process process =
        command(
            "examine",
            "--format",
            format,
            format.equals("html") ? "--output-dir" : "--output",
            out.toString(),
            in.toString());
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor() <= 3, said);
    assertEquals(
        List.of(),
        said.lines()
            .filter(line -> !line.matches("ridgeproof: examine: \\d+ of 60 files"))
            .toList());
    assertTrue(Files.exists(out));
  }

  /** A verdict would depend on the machine; there is none. */
  @Test
  void tooLittleMemoryIsAFailureInOneSentenceAndNoVerdict() throws Exception {
    Path card = Files.write(folder.resolve("large.an2"), LargeImages.transaction(24));
    Path out = folder.resolve("report.json");
    Process process =
        command("examine", "--format", "json", "--output", out.toString(), card.toString());
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(74, process.waitFor(), said);
    assertEquals(1, said.lines().count(), said);
    assertTrue(said.contains("not enough memory"), said);
    assertFalse(Files.exists(out));
  }

  @Test
  void aRunThatIsBrokenOffLeavesNothingHalfWritten() throws Exception {
    Path pipe = folder.resolve("pipe");
    Assumptions.assumeTrue(made(pipe), "no mkfifo here");
    Path card = Files.write(folder.resolve("card.an2"), SmallTransaction.bytes());
    Path out = Files.createDirectories(folder.resolve("out"));
    Process process =
        command("examine", "--output", out.resolve("r.txt") + "", card.toString(), pipe.toString());
    // The pipe keeps the run waiting in the middle: its first report is written, its last is not.
    while (process.isAlive() && list(out).isEmpty()) {
      TimeUnit.MILLISECONDS.sleep(20);
    }
    assertTrue(process.isAlive(), "the run ended early");
    process.destroy();
    process.waitFor();
    assertEquals(List.of(), list(out));
  }

  private static boolean made(Path pipe) throws InterruptedException {
    try {
      return new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }

  /** Runs the command line with less memory than the files take. */
  private static Process command(String... arguments) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx40m",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command).redirectErrorStream(true).start();
  }

  @Test
  void aWatchedRunSaysHowFarItIsAndAnUnwatchedOneNothing() throws IOException {
    for (boolean watched : new boolean[] {true, false}) {
      ByteArrayOutputStream error = new ByteArrayOutputStream();
      PrintStream stream = new PrintStream(error, true, StandardCharsets.UTF_8);
      Console console = new Console(stream, stream, false, false, watched);
      try (Progress progress = Progress.of(console, "examine", 2)) {
        progress.step();
        progress.step();
      }
      String said = error.toString(StandardCharsets.UTF_8);
      assertEquals(watched, said.contains("2/2"), said);
      assertFalse(!watched && !said.isEmpty(), said);
    }
  }
}
