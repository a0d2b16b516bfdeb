package ridgeproof.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.cli.Canaries;
import ridgeproof.cli.CanaryFiles;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.CaptureOrigin;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

/** Nothing of a person, and nothing of an image, is in an archive. */
class ArchivePrivacyTest {

  private static final SpecTables TABLES = SpecTables.open();

  @TempDir Path folder;

  /** Of all canaries, in every field of every type of record, only the stations' own are kept. */
  @Test
  void noValueOfAFileIsInTheArchiveButTheStation() throws IOException {
    Path input = Files.createDirectory(folder.resolve("input"));
    Set<String> allowed = new HashSet<>();
    int number = 9000;
    for (Map.Entry<String, byte[]> file : CanaryFiles.all(TABLES).entrySet()) {
      // A name of a file can be the name of a person.
      Files.write(input.resolve("QZXW" + letters(number++) + ".an2"), file.getValue());
      allowed.addAll(stations(file.getValue()));
    }
    Path archive = folder.resolve("archive");
    ArchiveCalls.Call call =
        ArchiveCalls.call(
            "--input",
            input.toString(),
            "--output",
            archive.toString(),
            "--depth",
            "images",
            "--as-of",
            ArchiveCalls.DAY,
            "--platen");
    assertEquals(0, call.status(), call.error());
    Map<ArchiveTable, List<String>> rows = ArchiveCalls.rows(archive);
    assertTrue(rows.get(ArchiveTable.FILES).size() > 20, call.out());
    assertTrue(rows.get(ArchiveTable.FINGERS).size() > 5);
    Set<String> kept = new TreeSet<>();
    Set<String> stations = new TreeSet<>();
    rows.forEach(
        (table, list) ->
            list.forEach(
                row -> {
                  for (String found : Canaries.foundIn(row.replaceAll("[0-9a-f]{32,}", " "))) {
                    (allowed.contains(found) ? stations : kept).add(table + ": " + found);
                  }
                }));
    assertEquals(Set.of(), kept);
    assertTrue(!stations.isEmpty(), "the search finds what is kept");
    assertTrue(Canaries.foundIn(call.out() + call.error()).isEmpty(), call.out() + call.error());
  }

  /** An image of a print has tens of thousands of bytes; no value of a row has a hundred. */
  @Test
  void noValueOfARowIsLongEnoughForAnImage() throws IOException {
    Path archive = folder.resolve("archive");
    ArchiveCalls.examine(ArchiveCalls.manyFiles(folder), archive);
    ArchiveCalls.rows(archive)
        .values()
        .forEach(rows -> rows.forEach(row -> assertTrue(row.length() < 1000, row)));
  }

  private static String letters(int number) {
    StringBuilder text = new StringBuilder();
    for (int i = 0, left = number; i < 4; i++, left /= 26) {
      text.append((char) ('A' + left % 26));
    }
    return text.toString();
  }

  private static Set<String> stations(byte[] bytes) {
    Transaction transaction =
        new TransactionReader(TABLES, ParseLimits.standard()).read(ByteSource.of(bytes));
    Set<String> stations = new HashSet<>();
    for (CaptureOrigin origin : TABLES.captureOrigins()) {
      if (origin.kind() == CaptureOrigin.Kind.STATION) {
        transaction.recordsOfType(origin.field().recordType()).stream()
            .flatMap(record -> record.field(origin.field()).stream())
            .flatMap(field -> field.subfields().stream())
            .flatMap(subfield -> subfield.items().stream())
            .forEach(item -> stations.addAll(Canaries.foundIn(item.text())));
      }
    }
    return stations;
  }
}
