package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.Progress;
import ridgeproof.cli.io.ProgressLines;
import ridgeproof.cli.reporting.ParallelExamination;
import ridgeproof.cli.reporting.ParallelExamination.Result;

/** What holds of a run over many files. */
class FolderRunTest {

  @TempDir Path folder;

  private static List<Path> paths(int count) {
    return IntStream.range(0, count).mapToObj(i -> Path.of("card-" + i + ".an2")).toList();
  }

  private static Result failed(Path path) {
    return new Result.Failed(CommandFailure.inputOutput(path.toString()));
  }

  private static String name(Result result) {
    return ((Result.Failed) result).failure().getMessage();
  }

  @Test
  void reportsComeInTheOrderOfTheFilesAndNoMoreAreUnderWayThanAsked() {
    AtomicInteger underWay = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    List<Path> paths = paths(30);
    List<String> names = new ArrayList<>();
    try (ParallelExamination results =
        new ParallelExamination(
            paths,
            path -> {
              most.accumulateAndGet(underWay.incrementAndGet(), Math::max);
              Thread.yield();
              underWay.decrementAndGet();
              return failed(path);
            },
            3)) {
      paths.forEach(path -> names.add(name(results.next())));
    }
    assertEquals(paths.stream().map(Path::toString).toList(), names);
    assertTrue(most.get() <= 3, most.toString());
  }

  @Test
  void whatDoesNotFitIntoMemoryBesideOthersIsTriedOnceMoreAlone() {
    AtomicInteger tries = new AtomicInteger();
    List<Path> paths = paths(2);
    try (ParallelExamination results =
        new ParallelExamination(
            paths,
            path -> {
              if (path.equals(paths.get(0)) && tries.incrementAndGet() == 1) {
                throw new OutOfMemoryError();
              }
              return failed(path);
            },
            2)) {
      assertEquals("card-0.an2", name(results.next()));
      assertEquals("card-1.an2", name(results.next()));
    }
    assertEquals(2, tries.get());
  }

  @Test
  void aFileThatNeverFitsIsAFailureAndADefectIsNot() {
    List<Path> paths = paths(1);
    try (ParallelExamination results =
        new ParallelExamination(
            paths,
            path -> {
              throw new OutOfMemoryError();
            },
            1)) {
      assertTrue(name(results.next()).contains("memory"));
    }
    try (ParallelExamination results =
        new ParallelExamination(
            paths,
            path -> {
              throw new IllegalStateException();
            },
            1)) {
      assertThrows(IllegalStateException.class, results::next);
    }
  }

  @Test
  void aLogHasALineEveryTenSecondsAndNoneAtTheEnd() {
    ByteArrayOutputStream error = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(error, true, StandardCharsets.UTF_8);
    AtomicLong now = new AtomicLong();
    Console console = new Console(stream, stream, false);
    try (Progress progress = new ProgressLines(console, "examine", 8, now::get)) {
      for (int i = 0; i < 8; i++) {
        now.addAndGet(6_000_000_000L);
        progress.step();
      }
    }
    assertEquals(
        List.of(
            "ridgeproof: examine: 2 of 8 files",
            "ridgeproof: examine: 4 of 8 files",
            "ridgeproof: examine: 6 of 8 files"),
        error.toString(StandardCharsets.UTF_8).lines().toList());
  }

  private String[] arguments(String... more) {
    List<String> arguments =
        new ArrayList<>(List.of("examine", "--depth", "structure", "--format", "csv"));
    arguments.addAll(List.of(more));
    arguments.add(folder.toString());
    return arguments.toArray(String[]::new);
  }

  @Test
  void theStatusFollowsTheLevelThatIsAskedFor() throws IOException {
    // The second use of a control number is LIKELY to be rejected.
    Files.write(folder.resolve("first.an2"), SmallTransaction.bytes());
    Files.write(folder.resolve("second.an2"), SmallTransaction.bytes());
    assertEquals(1, CommandRun.of(arguments()).status());
    assertEquals(1, CommandRun.of(arguments("--fail-on", "LIKELY")).status());
    assertEquals(0, CommandRun.of(arguments("--fail-on", "BLOCKING")).status());
    Files.write(folder.resolve("torn.an2"), new byte[] {1, 2});
    assertEquals(3, CommandRun.of(arguments("--fail-on", "BLOCKING")).status());
  }

  @Test
  void aSheetHasOneRowForEachFileWhenAskedFor() throws IOException {
    Files.write(folder.resolve("a.an2"), SmallTransaction.bytes());
    Files.write(folder.resolve("b.an2"), SmallTransaction.bytes());
    CommandRun run = CommandRun.of(arguments("--per-file"));
    assertEquals(3, run.out().lines().count(), run.out());
    CommandRun.of("examine", "--per-file", "x.an2").isOneLineOf(64, "--format csv");
  }
}
