package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.testing.ReferenceFiles;

/** The same file gets the same report, byte for byte, whatever machine examines it. */
@Tag("slow")
class SameOnEveryMachineTest {

  /** Settings of a JVM in which numbers, letters, dates, days, bytes or threads differ. */
  private static final List<List<String>> MACHINES =
      List.of(
          List.of("-Duser.language=ar", "-Duser.country=EG", "-Duser.timezone=Pacific/Kiritimati"),
          List.of("-Duser.language=tr", "-Duser.country=TR", "-XX:ActiveProcessorCount=1"),
          List.of(
              "-Duser.language=th",
              "-Duser.country=TH",
              "-Duser.extensions=u-ca-buddhist-nu-thai",
              "-Dfile.encoding=ISO-8859-1",
              "-Duser.timezone=Pacific/Pago_Pago"));

  @TempDir Path folder;

  @Test
  void referenceFilesHaveTheSameReport() throws Exception {
    // The examples are compared with their ridges too; doing so here doubles the time.
    compare(ReferenceFiles.all(), "images");
  }

  @Test
  void examplesHaveTheSameReport() throws Exception {
    compare(examples(), "ridges");
  }

  private void compare(List<Path> files, String depth) throws Exception {
    String expected =
        report(
            files,
            depth,
            List.of("-Duser.language=en", "-Duser.country=US", "-Duser.timezone=UTC"));
    assertTrue(expected.contains("\"verdict\""));
    for (List<String> machine : MACHINES) {
      assertEquals(expected, report(files, depth, machine), machine.toString());
    }
  }

  private static List<Path> examples() throws IOException {
    Path place = Path.of("").toAbsolutePath();
    while (!Files.isDirectory(place.resolve("docs/examples"))) {
      place = place.getParent();
    }
    try (Stream<Path> files = Files.list(place.resolve("docs/examples"))) {
      return files.filter(file -> file.toString().endsWith(".an2")).sorted().toList();
    }
  }

  /** The reports with the exit status, of a JVM with these settings. */
  private String report(List<Path> files, String depth, List<String> settings) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(settings);
    command.addAll(List.of("-Xmx1g", "-XX:+UseSerialGC"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    command.addAll(List.of("examine", "--format", "json", "--depth", depth));
    files.forEach(file -> command.add(file.toString()));
    Path said = folder.resolve("said");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(said.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    int status = process.waitFor();
    return Files.readString(said, StandardCharsets.UTF_8) + "\nexit status " + status;
  }
}
