package ridgeproof.spec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The version of the tables covers each of them, so that no change of one goes unnoticed. */
class TablesVersionTest {

  private static final Path RESOURCES = Path.of("src/main/resources");

  /** The checksum over the checksums and the names of all files, in the order of the names. */
  private static String versionOf(TreeMap<String, byte[]> files) throws Exception {
    MessageDigest all = MessageDigest.getInstance("SHA-256");
    for (String name : files.keySet()) {
      all.update(MessageDigest.getInstance("SHA-256").digest(files.get(name)));
      all.update(name.getBytes(StandardCharsets.US_ASCII));
    }
    return HexFormat.of().formatHex(all.digest());
  }

  private static TreeMap<String, byte[]> tables() throws IOException {
    TreeMap<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> found = Files.walk(RESOURCES)) {
      for (Path file : found.filter(Files::isRegularFile).toList()) {
        files.put(
            RESOURCES.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    }
    return files;
  }

  @Test
  void theVersionIsThatOfAllTables() throws Exception {
    assertEquals(versionOf(tables()), SpecTables.version());
  }

  @Test
  void aChangeOfAnyTableIsAnotherVersion() throws Exception {
    for (String name :
        List.of(
            "ridgeproof/spec/layouts/type-14.csv",
            "ridgeproof/spec/codes/impressions.csv",
            "ridgeproof/spec/limits/ridge-limits.csv",
            "ridgeproof/spec/profiles/needs.csv",
            "ridgeproof/spec/rules/catalogue.csv")) {
      TreeMap<String, byte[]> files = tables();
      byte[] bytes = files.get(name).clone();
      bytes[bytes.length / 2] ^= 1;
      files.put(name, bytes);
      assertTrue(!versionOf(files).equals(SpecTables.version()), name);
    }
  }
}
