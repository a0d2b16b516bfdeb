package ridgeproof.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collection;

/** Writes a file beside its place and moves it there, so that a reader never sees half of it. */
final class OutputFile {

  private OutputFile() {}

  /**
   * Writes the bytes.
   *
   * @param inputs files that must never be written to
   */
  static void write(Path target, byte[] bytes, boolean overwrite, Collection<Path> inputs) {
    Path temporary = null;
    try {
      for (Path input : inputs) {
        if (Files.exists(target) && Files.isSameFile(target, input)) {
          throw CommandFailure.usage(target + ": is an input; inputs are never written to");
        }
      }
      if (Files.exists(target) && !overwrite) {
        throw CommandFailure.inputOutput(target + ": exists already; --overwrite replaces it");
      }
      Path folder = target.toAbsolutePath().getParent();
      temporary = Files.createTempFile(folder, "." + target.getFileName(), ".part");
      Files.write(temporary, bytes);
      Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      discard(temporary);
      throw CommandFailure.inputOutput("cannot write " + IoWords.of(target, e));
    }
  }

  private static void discard(Path temporary) {
    try {
      if (temporary != null) {
        Files.deleteIfExists(temporary);
      }
    } catch (IOException e) {
      // The first failure is the one worth telling.
    }
  }
}
