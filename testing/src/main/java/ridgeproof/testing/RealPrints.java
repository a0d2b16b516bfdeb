package ridgeproof.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/**
 * Public single prints of real people, which lie in {@code shared/prints} beside the project and
 * not in it: ten fingers of each folder, eight impressions of each. Skipped and failed as {@link
 * ReferenceFiles} are.
 */
public final class RealPrints {

  private static final String SKIPPED =
      "skipped: no single prints in ../shared/prints beside this project";

  private RealPrints() {}

  /** The bytes of one PNG file, by folder and name. */
  public static byte[] read(String name) {
    try {
      return Files.readAllBytes(folder().resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path folder() {
    for (Path place = Path.of("").toAbsolutePath(); place != null; place = place.getParent()) {
      if (Files.isDirectory(place.resolve("shared/prints"))) {
        return place.resolve("shared/prints");
      }
    }
    if ("true".equals(System.getenv("CI"))) {
      throw new AssertionError("CI needs the single prints in ../shared/prints");
    }
    System.out.println(SKIPPED); // a skipped assumption's own message never reaches the console
    Assumptions.abort(SKIPPED);
    throw new IllegalStateException();
  }
}
