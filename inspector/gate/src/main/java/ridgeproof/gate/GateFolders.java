package ridgeproof.gate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where a gate takes files from and where it puts them.
 *
 * @param from what the station exports
 * @param ready what may be sent
 * @param hold what may not: a folder for each file, with the file and its report
 */
public record GateFolders(Path from, Path ready, Path hold) {

  /** A folder of the gate's own in {@code hold}. */
  private static final String OWN = ".gate";

  /**
   * Makes sure that a file can be moved between them in one step.
   *
   * @throws GateFailure if that cannot be
   */
  public GateFolders prepared() {
    if (!Files.isDirectory(from)) {
      throw new GateFailure(from + ": no such folder");
    }
    try {
      Files.createDirectories(ready);
      Files.createDirectories(checking());
      Files.createDirectories(released());
      if (Files.isSameFile(from, ready)
          || Files.isSameFile(from, hold)
          || Files.isSameFile(ready, hold)) {
        throw new GateFailure("--from, --ready and --hold must be three different folders");
      }
      if (!Files.getFileStore(from).equals(Files.getFileStore(ready))
          || !Files.getFileStore(from).equals(Files.getFileStore(hold))) {
        throw new GateFailure(
            "--from, --ready and --hold must be on the same disk: only there can a file be moved in"
                + " one step");
      }
      return this;
    } catch (IOException e) {
      throw new GateFailure("cannot use the folders of the gate: " + e.getMessage());
    }
  }

  /** What is being examined, a folder for each file. */
  Path checking() {
    return hold.resolve(OWN).resolve("checking");
  }

  /** Reports of files that were released. */
  Path released() {
    return hold.resolve(OWN).resolve("released");
  }

  /** The record, a line of JSON for each step. */
  public Path record() {
    return hold.resolve(OWN).resolve("record.jsonl");
  }

  Path lock() {
    return hold.resolve(OWN).resolve("lock");
  }

  Path running() {
    return hold.resolve(OWN).resolve("running");
  }
}
