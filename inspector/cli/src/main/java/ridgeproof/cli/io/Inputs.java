package ridgeproof.cli.io;

import java.nio.file.Path;
import java.util.List;

/**
 * The files that the user means.
 *
 * @param files those that are examined
 * @param others those of the folders that are not
 */
public record Inputs(List<Path> files, List<LeftOut> others) {

  /**
   * A file that is not examined.
   *
   * @param reason in a few words
   */
  public record LeftOut(Path path, String reason) {}

  public int count() {
    return files.size() + others.size();
  }
}
