package ridgeproof.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Public single prints of real people, which lie in {@code shared/prints}: ten fingers of each
 * folder, eight impressions of each. Without them tests are skipped or fail as {@link SharedFolder}
 * says.
 */
public final class RealPrints {

  private RealPrints() {}

  /** The bytes of one PNG file, by folder and name. */
  public static byte[] read(String name) {
    try {
      return Files.readAllBytes(folder().resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The folder of them all. */
  public static Path folder() {
    return SharedFolder.of("prints", "single prints");
  }
}
