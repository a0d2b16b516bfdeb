package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/** A large file in XML is read with less memory than it takes. */
class XmlMemoryTest {

  private static final int WIDTH = 2000;
  private static final int HEIGHT = 2680;
  private static final int IMAGES = 14;
  private static final long MEGABYTES = 1_000_000;

  /** Tables, classes and reports take 40 MB of it; the file is mapped, not read. */
  private static final String HEAP = "-Xmx96m";

  @TempDir Path folder;

  @Test
  void aCardSetOfAHundredMegabytesIsExaminedInAHeapOfLess() throws Exception {
    Path file = written();
    assertTrue(Files.size(file) > 100 * MEGABYTES, Files.size(file) + " bytes");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                HEAP,
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "examine",
                "--depth",
                "structure",
                file.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor() < 3, said);
    assertTrue(said.contains("14 images") || said.contains("14 image records"), said);
  }

  private Path written() throws IOException {
    byte[] pixels = new byte[WIDTH * HEIGHT];
    new Random(1).nextBytes(pixels);
    byte[] traditional =
        LargeImages.transaction(Collections.nCopies(IMAGES, pixels), WIDTH, HEIGHT);
    SpecTables tables = SpecTables.open();
    Path file = folder.resolve("card.xml");
    try (OutputStream out = Files.newOutputStream(file)) {
      assertEquals(
          List.of(),
          new XmlTransactionWriter(tables)
              .write(
                  new TransactionReader(tables, ParseLimits.standard())
                      .read(ByteSource.of(traditional)),
                  out));
    }
    return file;
  }
}
