package ridgeproof.corpus.batch;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The folder that a command writes to: made if need be, and not mixed with what it holds. */
record OutputFolder(Path path, boolean overwrite) {

  private static final int INPUT_OUTPUT = 74;

  /** What is written into it. */
  interface Content {
    void write() throws IOException, InterruptedException;
  }

  /**
   * Writes into the folder.
   *
   * @return the exit status: 0, or 74 with a line that says why nothing more could be written
   */
  int fill(Content content, PrintWriter error) throws InterruptedException {
    try {
      Files.createDirectories(path);
      if (!overwrite && holdsSomething()) {
        error.println("corpus/generate: " + path + ": is not empty; --overwrite writes into it");
        error.flush();
        return INPUT_OUTPUT;
      }
      content.write();
      return 0;
    } catch (IOException e) {
      error.println("corpus/generate: cannot write to " + path + ": " + e.getMessage());
      error.flush();
      return INPUT_OUTPUT;
    }
  }

  private boolean holdsSomething() throws IOException {
    try (Stream<Path> files = Files.list(path)) {
      return files.findAny().isPresent();
    }
  }
}
