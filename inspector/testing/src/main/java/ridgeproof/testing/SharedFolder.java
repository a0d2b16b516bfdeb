package ridgeproof.testing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;

/**
 * The folder {@code shared}, which lies beside the project and not in it. A checkout without it
 * skips the tests that read it and says so; where {@code CI=true} its absence fails.
 */
public final class SharedFolder {

  private SharedFolder() {}

  /**
   * A folder in it.
   *
   * @param holds what it has in it, for the words of who misses it
   */
  public static Path of(String name, String holds) {
    Optional<Path> folder = find(name);
    String where = holds + " in ../shared/" + name;
    if (folder.isEmpty() && "true".equals(System.getenv("CI"))) {
      throw new AssertionError("CI needs the " + where);
    }
    String skipped = "skipped: no " + where + " beside this project";
    if (folder.isEmpty()) {
      System.out.println(skipped); // a skipped assumption's own message never reaches the console
    }
    Assumptions.assumeTrue(folder.isPresent(), skipped);
    return folder.orElseThrow();
  }

  private static Optional<Path> find(String name) {
    for (Path place = Path.of("").toAbsolutePath(); place != null; place = place.getParent()) {
      Path candidate = place.resolve("shared").resolve(name);
      if (Files.isDirectory(candidate)) {
        return Optional.of(candidate);
      }
    }
    return Optional.empty();
  }
}
