package ridgeproof.gate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import ridgeproof.gate.GateFiles.Facts;

/** Reads each file that appears in a folder once it has stopped growing, and moves nothing. */
public final class FolderWatch {

  private final Path folder;
  private final long maxFileBytes;
  private final Settling settling;
  private final GateFiles files = new GateFiles();
  private final Map<String, Facts> read = new HashMap<>();

  /**
   * What is in the folder already is not read.
   *
   * @param settle how long a file must stay as it is
   * @param maxFileBytes a larger file is not read
   * @throws GateFailure if there is no such folder
   */
  public FolderWatch(Path folder, Duration settle, long maxFileBytes) {
    this.folder = folder;
    this.maxFileBytes = maxFileBytes;
    this.settling = new Settling(settle);
    if (!Files.isDirectory(folder)) {
      throw new GateFailure(folder + ": no such folder");
    }
    try {
      for (Path file : files.list(folder)) {
        files.facts(file).ifPresent(facts -> read.put(name(file), facts));
      }
    } catch (IOException e) {
      throw new GateFailure("cannot read " + folder + ": " + e.getMessage());
    }
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }

  /**
   * Looks at the folder once.
   *
   * @param taker is given names and bytes
   */
  public void look(BiConsumer<String, byte[]> taker) {
    try {
      for (Path file : files.list(folder)) {
        Optional<Facts> facts = Gate.isTemporary(name(file)) ? Optional.empty() : files.facts(file);
        if (facts.isPresent()
            && facts.get().bytes() <= maxFileBytes
            && !facts.get().equals(read.get(name(file)))
            && settling.hasSettled(name(file), facts.get(), System.nanoTime())) {
          taker.accept(name(file), files.read(file));
          read.put(name(file), facts.get());
        }
      }
    } catch (IOException e) {
      // A file that somebody just took away; the next look is a second later.
    }
  }
}
