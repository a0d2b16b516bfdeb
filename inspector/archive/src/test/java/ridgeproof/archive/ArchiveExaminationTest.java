package ridgeproof.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.cli.CommandRun;

/** An archive holds what {@code examine} finds, whatever way the files come in. */
class ArchiveExaminationTest {

  @TempDir Path folder;

  private Path input;
  private Path archive;

  @BeforeEach
  void files() throws IOException {
    input = ArchiveCalls.manyFiles(folder);
    archive = folder.resolve("archive");
  }

  private Path reports(String day) {
    Path reports = folder.resolve("reports-" + day + ".json");
    CommandRun run =
        CommandRun.of(
            "examine",
            "--format",
            "json",
            "--depth",
            "structure",
            "--as-of",
            day,
            "--output",
            reports.toString(),
            input.toString());
    assertTrue(run.status() <= 3, run.error());
    return reports;
  }

  private ArchiveCalls.Call check(Path reports) {
    return ArchiveCalls.call(
        "check", "--archive", archive.toString(), "--reports", reports.toString());
  }

  @Test
  void theFindingsAreThoseOfExamine() {
    ArchiveCalls.examine(input, archive);
    ArchiveCalls.Call same = check(reports(ArchiveCalls.DAY));
    assertEquals(0, same.status(), same.out() + same.error());
    assertTrue(same.out().matches("\\d+ files and [\\d,]+ findings compared, 0 differences\\s*"));
    ArchiveCalls.Call other = check(reports("2001-01-01"));
    assertEquals(1, other.status(), "dates after the day of the examination are findings");
  }

  @Test
  void everyInputIsOneRowAndIsNotExaminedTwice() throws IOException {
    Files.writeString(input.resolve("letter.txt"), "Dear office, please find the cards enclosed.");
    Files.writeString(input.resolve("empty.an2"), "");
    Files.createSymbolicLink(input.resolve("round"), input);
    String told = ArchiveCalls.examine(input, archive);
    Map<ArchiveTable, List<String>> first = ArchiveCalls.rows(archive);
    assertEquals(2, first.get(ArchiveTable.QUARANTINE).size(), "the letter and the link");
    int files = first.get(ArchiveTable.FILES).size();
    assertEquals(
        files + " files examined, 2 files in quarantine, 0 files skipped as already in the archive",
        told);

    Files.copy(input.resolve("clean-flats.an2"), input.resolve("clean-flats-again.an2"));
    assertEquals(
        "1 file examined, 0 files in quarantine, "
            + (files + 2)
            + " files skipped as already in the archive",
        ArchiveCalls.examine(input, archive));
    Map<ArchiveTable, List<String>> second = ArchiveCalls.rows(archive);
    assertEquals(files + 1, second.get(ArchiveTable.FILES).size());
    assertEquals(first.get(ArchiveTable.FINDINGS), second.get(ArchiveTable.FINDINGS));
    assertEquals(first.get(ArchiveTable.FINGERS), second.get(ArchiveTable.FINGERS));
    assertEquals(
        1,
        ArchiveTables.of(ArchiveSession.open(), archive.toString())
            .of(ArchiveTable.FILES)
            .where("repeat and verdict = 'READY' or repeat and verdict = 'REVIEW'")
            .count());
  }

  @Test
  void filesWithTheSameBytesInOneBatchAreExaminedOnce() throws IOException {
    ArchiveCalls.examine(input, archive);
    Files.copy(input.resolve("clean-flats.an2"), input.resolve("one.an2"));
    Files.copy(input.resolve("clean-flats.an2"), input.resolve("two.an2"));
    Path other = folder.resolve("other");
    ArchiveCalls.examine(input, other);
    Map<ArchiveTable, List<String>> single = ArchiveCalls.rows(archive);
    Map<ArchiveTable, List<String>> doubled = ArchiveCalls.rows(other);
    assertEquals(single.get(ArchiveTable.FILES).size() + 2, doubled.get(ArchiveTable.FILES).size());
    assertEquals(single.get(ArchiveTable.FINDINGS), doubled.get(ArchiveTable.FINDINGS));
  }

  @Test
  void aListAndATableGiveTheSameRowsAsAFolder() throws IOException {
    ArchiveCalls.examine(input, archive);
    List<Path> files;
    try (Stream<Path> all = Files.walk(input)) {
      files = all.filter(Files::isRegularFile).toList();
    }
    Path list = folder.resolve("list.txt");
    Files.write(list, files.stream().map(Path::toString).toList());
    Path byList = folder.resolve("by-list");
    assertEquals(
        0,
        ArchiveCalls.call(
                "--list",
                list.toString(),
                "--output",
                byList.toString(),
                "--depth",
                "structure",
                "--as-of",
                ArchiveCalls.DAY)
            .status());
    Path table = folder.resolve("table");
    write(files, table);
    Path byTable = folder.resolve("by-table");
    for (String told : List.of(" examined, 0 files in quarantine, 0", "0 files examined")) {
      ArchiveCalls.Call call =
          ArchiveCalls.call(
              "--parquet",
              table.toString(),
              "--column",
              "bytes",
              "--id-column",
              "id",
              "--output",
              byTable.toString(),
              "--depth",
              "structure",
              "--as-of",
              ArchiveCalls.DAY);
      assertTrue(call.out().contains(told), call.out() + call.error());
    }
    Map<ArchiveTable, List<String>> rows = ArchiveCalls.rows(archive);
    for (Path other : List.of(byList, byTable)) {
      // Each archive has a key of its own, by which controls, images and inputs are hashed.
      assertEquals(
          rows.get(ArchiveTable.FINDINGS), ArchiveCalls.rows(other).get(ArchiveTable.FINDINGS));
      assertEquals(ArchiveCalls.sizes(rows), ArchiveCalls.sizes(ArchiveCalls.rows(other)));
    }
  }

  private static void write(List<Path> files, Path table) throws IOException {
    StructType schema =
        new StructType().add("id", DataTypes.StringType).add("bytes", DataTypes.BinaryType);
    SparkSession spark = ArchiveSession.open();
    List<org.apache.spark.sql.Row> rows = new java.util.ArrayList<>();
    for (Path file : files) {
      rows.add(RowFactory.create(file.getFileName().toString(), Files.readAllBytes(file)));
    }
    spark
        .createDataFrame(rows, schema)
        .repartition(3)
        .write()
        .mode(SaveMode.Overwrite)
        .parquet(table.toString());
  }

  @Test
  void anArchiveKeepsOneDepthAndOneKey() throws IOException {
    ArchiveCalls.examine(input, archive);
    ArchiveCalls.Call deeper =
        ArchiveCalls.call(
            "--input", input.toString(), "--output", archive.toString(), "--depth", "images");
    assertEquals(74, deeper.status());
    assertTrue(deeper.error().contains("begun with other settings"), deeper.error());
    ArchiveCalls.Call inside =
        ArchiveCalls.call("--input", input.toString(), "--output", input.resolve("x").toString());
    assertEquals(64, inside.status(), inside.error());
    Path full = Files.createDirectories(folder.resolve("full"));
    Files.writeString(full.resolve("notes.txt"), "not an archive");
    assertEquals(
        74, ArchiveCalls.call("--input", input.toString(), "--output", full.toString()).status());
    assertEquals(Set.of("notes.txt"), names(full));
  }

  private static Set<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return new TreeSet<>(files.map(path -> path.getFileName().toString()).toList());
    }
  }
}
