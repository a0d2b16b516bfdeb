package ridgeproof.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The public reference transactions, which lie in {@code shared/reference}; without them tests are
 * skipped or fail as {@link SharedFolder} says.
 */
public final class ReferenceFiles {

  private ReferenceFiles() {}

  /** The bytes of one reference transaction. */
  public static byte[] read(String name) {
    try {
      return Files.readAllBytes(folder().resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The path of one reference transaction. */
  public static Path path(String name) {
    return folder().resolve(name);
  }

  /** Every reference transaction, by name. */
  public static List<Path> all() {
    try (Stream<Path> files = Files.list(folder())) {
      return files.filter(file -> file.toString().endsWith(".an2")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path folder() {
    return SharedFolder.of("reference", "reference transactions");
  }
}
