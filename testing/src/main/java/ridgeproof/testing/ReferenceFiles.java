package ridgeproof.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * The public reference transactions, which lie in {@code shared/reference} beside the project and
 * not in it. A checkout without them skips the tests that read them and says so; where {@code
 * CI=true} their absence fails.
 */
public final class ReferenceFiles {

  private static final String SKIPPED =
      "skipped: no reference transactions in ../shared/reference beside this project";

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
    Optional<Path> folder = find();
    if (folder.isEmpty() && "true".equals(System.getenv("CI"))) {
      throw new AssertionError("CI needs the reference transactions in ../shared/reference");
    }
    if (folder.isEmpty()) {
      System.out.println(SKIPPED); // a skipped assumption's own message never reaches the console
    }
    Assumptions.assumeTrue(folder.isPresent(), SKIPPED);
    return folder.orElseThrow();
  }

  private static Optional<Path> find() {
    Path place = Path.of("").toAbsolutePath();
    while (place != null) {
      Path candidate = place.resolve("shared/reference");
      if (Files.isDirectory(candidate)) {
        return Optional.of(candidate);
      }
      place = place.getParent();
    }
    return Optional.empty();
  }
}
