package ridgeproof.cli.io;

import java.util.Locale;
import java.util.function.LongSupplier;

/** Where nobody watches standard error: a line now and then, as a log takes it. */
public final class ProgressLines implements Progress {

  private static final long NANOS_BETWEEN = 10_000_000_000L;

  private final Console console;
  private final String task;
  private final int steps;
  private final LongSupplier clock;
  private long told;
  private int done;

  /**
   * @param clock nanoseconds that only go forward
   */
  public ProgressLines(Console console, String task, int steps, LongSupplier clock) {
    this.console = console;
    this.task = task;
    this.steps = steps;
    this.clock = clock;
    this.told = clock.getAsLong();
  }

  @Override
  public void step() {
    done++;
    long now = clock.getAsLong();
    if (now - told >= NANOS_BETWEEN && done < steps) {
      told = now;
      console
          .error()
          .println(String.format(Locale.ROOT, "ridgeproof: %s: %d of %d files", task, done, steps));
      console.error().flush();
    }
  }

  @Override
  public void close() {}
}
