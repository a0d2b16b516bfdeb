package ridgeproof.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.archive.store.ArchiveTable;

/** A run that was killed and started again neither loses nor doubles a row. */
class KilledRunTest {

  @TempDir Path folder;

  private Path input;
  private Path key;
  private Map<ArchiveTable, List<String>> wanted;

  @BeforeEach
  void undisturbedRun() throws IOException {
    input = ArchiveCalls.manyFiles(folder);
    Path archive = folder.resolve("undisturbed");
    ArchiveCalls.examine(input, archive);
    key = folder.resolve("undisturbed.key");
    wanted = ArchiveCalls.rows(archive);
  }

  private void assertWhole(Path archive) throws IOException {
    assertEquals(wanted, ArchiveCalls.rows(archive));
    try (Stream<Path> staged = Files.list(archive.resolve("_staging"))) {
      assertEquals(List.of(), staged.toList());
    }
  }

  @Test
  void processesThatAreKilledAtAnyTimeLeaveAnArchiveThatTheNextOneCompletes()
      throws IOException, InterruptedException {
    Path archive = folder.resolve("killed");
    int committed = 0;
    // After each number of commits once, in the middle of what follows.
    for (int round = 1; round <= 3; round++) {
      Process process = start(archive);
      Path log = archive.resolve("_commits");
      while (process.isAlive() && count(log) < committed + 1) {
        Thread.sleep(20);
      }
      Thread.sleep(150L * round);
      process.destroyForcibly().waitFor();
      committed = count(log);
    }
    assertTrue(committed >= 3, "commits: " + committed);
    run(archive);
    assertWhole(archive);
  }

  @Test
  void aBatchThatWasCommittedAndNotMovedIsCompleted() throws IOException {
    Path archive = folder.resolve("committed");
    run(archive);
    // As if the process had died after the commit of the last batch: its files are in staging
    // still.
    Path log = archive.resolve("_commits");
    String batch = String.format(Locale.ROOT, "%08d", count(log));
    List<String> files = Files.readAllLines(log.resolve(batch + ".txt"));
    assertTrue(files.size() >= 3, files.toString());
    for (String file : files.subList(1, files.size())) {
      Path staged = archive.resolve("_staging").resolve(batch).resolve(file);
      Files.createDirectories(staged.getParent());
      Files.move(archive.resolve(file), staged);
    }
    run(archive);
    assertWhole(archive);
  }

  @Test
  void aBatchThatWasStagedAndNotCommittedIsExaminedAgain() throws IOException {
    Path archive = folder.resolve("staged");
    run(archive);
    Path log = archive.resolve("_commits");
    String batch = String.format(Locale.ROOT, "%08d", count(log));
    List<String> files = Files.readAllLines(log.resolve(batch + ".txt"));
    for (String file : files) {
      Path staged = archive.resolve("_staging").resolve(batch).resolve(file);
      Files.createDirectories(staged.getParent());
      Files.move(archive.resolve(file), staged);
    }
    Files.delete(log.resolve(batch + ".txt"));
    run(archive);
    assertWhole(archive);
  }

  private void run(Path archive) {
    ArchiveCalls.examine(input, archive, "--key", key.toString(), "--batch-files", "5");
  }

  private Process start(Path archive) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "@src/main/jvm/options",
                "-Xmx1g",
                "-cp",
                System.getProperty("java.class.path"),
                ArchiveProgram.class.getName()));
    command.addAll(
        List.of(
            "--input",
            input.toString(),
            "--output",
            archive.toString(),
            "--key",
            key.toString(),
            "--batch-files",
            "5",
            "--depth",
            "structure",
            "--as-of",
            ArchiveCalls.DAY));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("process.log").toFile())
        .start();
  }

  private static int count(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return 0;
    }
    int[] files = new int[1];
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            files[0] += file.getFileName().toString().matches("[0-9]{8}\\.txt") ? 1 : 0;
            return FileVisitResult.CONTINUE;
          }
        });
    return files[0];
  }
}
