package ridgeproof.cli.io;

import java.io.Closeable;

/** Says on standard error how far a command has come. */
public interface Progress extends Closeable {

  /** A step is done. */
  void step();

  @Override
  void close();

  /** Makes room for text on the same terminal. */
  default void pause() {}

  /** A bar on a terminal, else a line now and then; the library is loaded for the bar alone. */
  static Progress of(Console console, String task, int steps) {
    if (steps <= 1) {
      return new Silent();
    }
    return console.watched()
        ? new ProgressLine(console.error(), task, steps)
        : new ProgressLines(console, task, steps, System::nanoTime);
  }

  /** Where nobody watches. */
  record Silent() implements Progress {

    @Override
    public void step() {}

    @Override
    public void close() {}
  }
}
