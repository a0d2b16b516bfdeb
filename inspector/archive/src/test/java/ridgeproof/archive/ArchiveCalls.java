package ridgeproof.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.spark.sql.Row;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.cli.CanaryFiles;
import ridgeproof.cli.io.Console;
import ridgeproof.spec.SpecTables;

/** Runs the program for archives in this process, and reads what it wrote. */
final class ArchiveCalls {

  /** All examinations of these tests are of this day. */
  static final String DAY = "2026-03-02";

  private ArchiveCalls() {}

  /** What a call printed and ended with. */
  record Call(int status, String out, String error) {}

  static Call call(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream error = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(error, true, StandardCharsets.UTF_8),
            false);
    int status = ArchiveProgram.commandLine(console).execute(arguments);
    return new Call(
        status, out.toString(StandardCharsets.UTF_8), error.toString(StandardCharsets.UTF_8));
  }

  /** Examines a folder at structure depth. */
  static String examine(Path input, Path output, String... more) {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "--input",
                input.toString(),
                "--output",
                output.toString(),
                "--depth",
                "structure",
                "--as-of",
                DAY));
    arguments.addAll(List.of(more));
    Call call = call(arguments.toArray(String[]::new));
    assertEquals(0, call.status(), call.error());
    return call.out().strip();
  }

  /** The rows of every table in order, without the time of the examination. */
  static Map<ArchiveTable, List<String>> rows(Path archive) {
    ArchiveTables tables = ArchiveTables.of(ArchiveSession.open(), archive.toString());
    Map<ArchiveTable, List<String>> rows = new TreeMap<>();
    for (ArchiveTable table : ArchiveTable.values()) {
      rows.put(
          table,
          tables.of(table).drop("examined", "modified").collectAsList().stream()
              .map(Row::toString)
              .sorted()
              .toList());
    }
    return rows;
  }

  /** The number of rows of every table. */
  static Map<ArchiveTable, Integer> sizes(Map<ArchiveTable, List<String>> rows) {
    Map<ArchiveTable, Integer> sizes = new TreeMap<>();
    rows.forEach((table, list) -> sizes.put(table, list.size()));
    return sizes;
  }

  /** The examples of the project, and files with a value of their own in every field. */
  static Path manyFiles(Path folder) throws IOException {
    Path input = Files.createDirectories(folder.resolve("input"));
    try (Stream<Path> examples = Files.list(Path.of("../../docs/examples"))) {
      for (Path example : examples.filter(path -> path.toString().endsWith(".an2")).toList()) {
        Files.copy(example, input.resolve(example.getFileName()));
      }
    }
    Path below = Files.createDirectories(input.resolve("some/where"));
    for (Map.Entry<String, byte[]> file : CanaryFiles.all(SpecTables.open()).entrySet()) {
      Files.write(below.resolve(file.getKey() + ".an2"), file.getValue());
    }
    return input;
  }
}
