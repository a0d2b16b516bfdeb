package ridgeproof.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.archive.store.ArchiveTable;

/** Files that try to break a run are rows of it. */
class HostileFilesTest {

  @TempDir Path folder;

  @Test
  void everyHostileFileIsJudgedOrInQuarantine() throws IOException, InterruptedException {
    Path input = Files.createDirectory(folder.resolve("input"));
    byte[] card = Files.readAllBytes(Path.of("../../docs/examples/clean-flats.an2"));
    Files.write(input.resolve("whole.an2"), card);
    Files.write(input.resolve("cut.an2"), Arrays.copyOf(card, card.length / 2));
    byte[] noise = new byte[200_000];
    new Random(5).nextBytes(noise);
    Files.write(input.resolve("noise.an2"), noise);
    Files.write(input.resolve("noise"), noise);
    Files.writeString(
        input.resolve("field.an2"),
        header() + "2.001:9999999\u001D2.018:" + "A\u001F".repeat(900_000));
    Files.writeString(
        input.resolve("records.an2"), header() + "2.001:11\u001D2.002:00\u001C".repeat(40_000));
    Files.write(input.resolve("large.an2"), new byte[3_000_000]);
    Files.createSymbolicLink(input.resolve("gone.an2"), input.resolve("nothing"));
    assertEquals(
        0, new ProcessBuilder("mkfifo", input.resolve("pipe.an2").toString()).start().waitFor());
    Path archive = folder.resolve("archive");
    String told = ArchiveCalls.examine(input, archive, "--max-file-size", "2M");
    Map<ArchiveTable, List<String>> rows = ArchiveCalls.rows(archive);
    assertEquals(5, rows.get(ArchiveTable.FILES).size(), told);
    List<String> quarantine = rows.get(ArchiveTable.QUARANTINE);
    assertEquals(4, quarantine.size(), quarantine.toString());
    for (String reason :
        List.of(
            "TOO_LARGE,more than 2097152 bytes",
            "NOT_A_TRANSACTION,",
            "NOT_READABLE,a pipe or device",
            "NOT_READABLE,a link that points nowhere")) {
      assertEquals(
          1,
          quarantine.stream().filter(row -> row.contains(reason)).count(),
          reason + " in " + quarantine);
    }
    long unreadable =
        rows.get(ArchiveTable.FILES).stream().filter(row -> row.contains("UNREADABLE")).count();
    assertEquals(1, unreadable, "noise under the name of a transaction");
  }

  private static String header() {
    return "1.001:30\u001D1.002:0502\u001D1.009:PILOT-1\u001C";
  }
}
