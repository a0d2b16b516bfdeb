package ridgeproof.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.gate.GatePassage.Outcome;

/** A gate on a disk that has no room left, and that goes on when there is room again. */
class GateFullDiskTest {

  private static final int DISK_BYTES = 4 * 1024 * 1024;
  private static final int CARDS = 4;

  @TempDir Path folder;

  /** A disk of the operating system, which only its administrator can make. */
  @Test
  void aDiskOfTheSystemThatIsFullLosesNothing() throws Exception {
    Path disk = Files.createDirectories(folder.resolve("disk"));
    boolean mounted =
        run("mount", "-t", "tmpfs", "-o", "size=" + DISK_BYTES, "tmpfs", disk.toString());
    if (!mounted) {
      System.out.println(
          "skipped: a full disk of the system, which needs the right to mount one; the disk in"
              + " memory is tested");
    }
    Assumptions.assumeTrue(mounted, "no right to mount a disk");
    try {
      fillAndGoOn(disk);
    } finally {
      run("umount", disk.toString());
    }
  }

  @Test
  void aDiskInMemoryThatIsFullLosesNothing() throws IOException {
    Configuration configuration =
        Configuration.unix().toBuilder().setMaxSize(DISK_BYTES).setBlockSize(4096).build();
    try (FileSystem disk = Jimfs.newFileSystem(configuration)) {
      fillAndGoOn(disk.getPath("/harbor"));
    }
  }

  /**
   * The room that is left shrinks from pass to pass, so that the gate is stopped in one step after
   * the other: in its record, with a folder, within a report.
   */
  private static void fillAndGoOn(Path disk) throws IOException {
    Harbor harbor = new Harbor(disk);
    for (int number = 0; number < CARDS; number++) {
      harbor.export("ready-" + number + ".an2", HarborFiles.ready(number));
      harbor.export("held-" + number + ".an2", HarborFiles.held(number));
    }
    Path ballast = disk.resolve("ballast");
    int problems = 0;
    for (int room : new int[] {0, 100, 4_096, 8_192, 20_000}) {
      fill(ballast, room);
      try (Gate gate =
          Gate.open(harbor.folders(), HarborFiles.examination(), HarborFiles.settings())) {
        for (GatePassage passage : gate.pass()) {
          problems += passage.outcome() == Outcome.PROBLEM ? 1 : 0;
        }
      } catch (GateFailure failure) {
        // Without room for its lock a gate does not even open.
        problems++;
      }
      harbor.assertEachInputIsInOnePlace(room + " bytes were left");
    }
    assertTrue(problems > 0, "the disk was never full");
    Files.delete(ballast);
    try (Gate gate =
        Gate.open(harbor.folders(), HarborFiles.examination(), HarborFiles.settings())) {
      for (int pass = 0; pass < 3; pass++) {
        for (GatePassage passage : gate.pass()) {
          assertTrue(passage.outcome() != Outcome.PROBLEM, "" + passage);
        }
      }
      assertEquals(CARDS, gate.held().list().size());
      for (HeldFile held : gate.held().list()) {
        String report = gate.held().report(held.entry()).orElseThrow();
        assertTrue(report.contains("</html>"), held.entry() + " has half a report");
      }
    }
    harbor.assertEachInputIsInOnePlace("there is room again");
    assertEquals(List.of(), Harbor.filesBelow(harbor.from));
    assertEquals(CARDS, Harbor.filesBelow(harbor.ready).size());
  }

  /** Writes until nothing more can be written, then gives back so many bytes. */
  private static void fill(Path ballast, int room) throws IOException {
    Files.deleteIfExists(ballast);
    long size = 0;
    try (FileChannel channel =
        FileChannel.open(ballast, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      for (int chunk = 64 * 1024; chunk > 0; chunk /= 2) {
        try {
          while (true) {
            size += channel.write(ByteBuffer.allocate(chunk), size);
          }
        } catch (IOException full) {
          // A smaller piece may still fit.
        }
      }
      channel.truncate(Math.max(0, channel.size() - room));
    }
  }

  private static boolean run(String... command) throws IOException, InterruptedException {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException noSuchProgram) {
      return false;
    }
  }
}
