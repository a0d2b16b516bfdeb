package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.testing.ReferenceFiles;

/** What a run of the command line loads, as its own JVM tells. */
@Tag("slow")
class LoadedLibrariesTest {

  private static final Map<String, String> LIBRARIES =
      Map.ofEntries(
          Map.entry("org.jnbis.", "jnbis"),
          Map.entry("jj2000.", "jj2000"),
          Map.entry("com.github.jaiimageio.", "jai-imageio"),
          Map.entry("com.twelvemonkeys.", "imageio-jpeg"),
          Map.entry("javax.imageio.", "Image I/O"),
          Map.entry("org.apache.pdfbox.", "pdfbox"),
          Map.entry("org.apache.fontbox.", "fontbox"),
          Map.entry("com.openhtmltopdf.", "openhtmltopdf"),
          // Read for a profile or a configuration file alone.
          Map.entry("com.fasterxml.jackson.dataformat.toml.", "TOML"),
          Map.entry("me.tongfei.", "progressbar"),
          Map.entry("org.jline.", "jline"),
          Map.entry("io.javalin.", "javalin"),
          Map.entry("org.eclipse.jetty.", "jetty"),
          Map.entry("kotlin.", "kotlin"),
          Map.entry("ridgeproof.desk.", "desk"),
          Map.entry("org.sqlite.", "sqlite-jdbc"),
          Map.entry("org.postgresql.", "postgresql"),
          Map.entry("ridgeproof.ledger.", "the ledger"));

  private static Set<String> loadedBy(String... arguments)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    command.addAll(List.of(arguments));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    Set<String> loaded = new TreeSet<>();
    boolean ownClass = false;
    for (String line : process.inputReader().lines().toList()) {
      ownClass |= line.contains(" " + Main.class.getName() + " source:");
      LIBRARIES.forEach(
          (prefix, library) -> {
            if (line.contains(" " + prefix)) {
              loaded.add(library);
            }
          });
    }
    assertTrue(process.waitFor() <= 3, "the command line failed");
    assertTrue(ownClass, "the JVM does not tell what it loads");
    return loaded;
  }

  private static String reference(String name) {
    return ReferenceFiles.path(name).toString();
  }

  @Test
  void wsqImagesNeedNoLibrary() throws Exception {
    assertEquals(Set.of(), loadedBy("examine", reference("type-4-slaps.an2")));
  }

  @Test
  void uncompressedImagesNeedNoLibrary() throws Exception {
    assertEquals(
        Set.of(), loadedBy("examine", "--depth", "images", reference("type-9-4-iafis.an2")));
  }

  @Test
  void noImageIsOpenedAtStructureDepth() throws Exception {
    assertEquals(
        Set.of(), loadedBy("examine", "--depth", "structure", reference("type-10-sap10.an2")));
  }

  @Test
  void theSecondDecoderIsLoadedWhenAskedFor() throws Exception {
    assertEquals(
        Set.of("jnbis"),
        loadedBy(
            "examine", "--depth", "images", "--second-decoder", reference("type-4-slaps.an2")));
  }

  @Test
  void whatPrintsAPdfIsLoadedWhenAskedFor(@TempDir Path folder) throws Exception {
    String pdf = folder.resolve("report.pdf").toString();
    Path card = Files.write(folder.resolve("card.an2"), SmallTransaction.bytes());
    assertTrue(
        loadedBy("examine", "--format", "pdf", "--output", pdf, card.toString())
            .containsAll(Set.of("pdfbox", "fontbox", "openhtmltopdf")));
  }

  @Test
  void whereNobodyWatchesNoProgressIsShown(@TempDir Path folder) throws Exception {
    for (String name : List.of("a.an2", "b.an2")) {
      Files.write(folder.resolve(name), SmallTransaction.bytes());
    }
    String out = folder.resolve("out.txt").toString();
    assertEquals(Set.of(), loadedBy("examine", "--output", out, folder.toString()));
  }

  @Test
  void aLedgerInAFileLoadsItsDriverAlone(@TempDir Path folder) throws Exception {
    Path card = Files.write(folder.resolve("card.an2"), SmallTransaction.bytes());
    assertEquals(
        Set.of("sqlite-jdbc", "the ledger"),
        loadedBy("examine", "--ledger", folder.resolve("ledger.db").toString(), card.toString()));
  }
}
