package ridgeproof.gate;

import java.io.IOException;
import java.nio.file.Path;

/** Finds a name that nothing in a folder has, as near as can be to the one that a file had. */
final class FreeName {

  private static final int MAX_TRIES = 100_000;

  private FreeName() {}

  /** The name itself, or with a number: {@code card.an2}, {@code card-2.an2}, ... */
  static String in(GateFiles files, Path folder, String name) throws IOException {
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    String ending = dot > 0 ? name.substring(dot) : "";
    String free = name;
    for (int i = 2; files.exists(folder.resolve(free)); i++) {
      if (i > MAX_TRIES) {
        throw new IOException("too many files named " + name);
      }
      free = stem + "-" + i + ending;
    }
    return free;
  }
}
