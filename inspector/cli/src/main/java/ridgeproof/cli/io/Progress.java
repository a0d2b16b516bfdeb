package ridgeproof.cli.io;

import java.io.Closeable;

/** Says on standard error how far a command has come, where somebody watches. */
public interface Progress extends Closeable {

  /** A step is done. */
  void step();

  @Override
  void close();

  /** A bar on a terminal, else nothing; the library is loaded for the bar alone. */
  static Progress of(Console console, String task, int steps) {
    return console.watched() && steps > 1
        ? new ProgressLine(console.error(), task, steps)
        : new Silent();
  }

  /** Where nobody watches. */
  record Silent() implements Progress {

    @Override
    public void step() {}

    @Override
    public void close() {}
  }
}
