package ridgeproof.archive;

import java.util.Locale;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.apache.spark.util.LongAccumulator;
import ridgeproof.cli.io.Console;

/** Says on standard error how far a run has come. */
final class RunProgress implements AutoCloseable {

  private static final int WATCHED_SECONDS = 1;
  private static final int UNWATCHED_SECONDS = 30;

  private final Console console;
  private final LongAccumulator done;
  private final long start = System.nanoTime();
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "progress");
            thread.setDaemon(true);
            return thread;
          });
  private volatile long begun;
  private volatile int batches;

  RunProgress(Console console, LongAccumulator done) {
    this.console = console;
    this.done = done;
    int seconds = console.watched() ? WATCHED_SECONDS : UNWATCHED_SECONDS;
    clock.scheduleAtFixedRate(this::tell, seconds, seconds, TimeUnit.SECONDS);
  }

  /** Counts files; tasks add to it when they end. */
  LongAccumulator done() {
    return done;
  }

  void begin(int files) {
    begun += files;
  }

  void committed() {
    batches++;
  }

  private void tell() {
    if (begun == 0) {
      return;
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    // A task that is run again counts again.
    long files = Math.min(done.value(), begun);
    String line =
        String.format(
            Locale.ROOT,
            "archive: %,d of the first %,d files, %.1f a second; batches committed: %d",
            files,
            begun,
            files / seconds,
            batches);
    console.error().print(console.watched() ? "\r" + line + " " : line + "\n");
    console.error().flush();
  }

  @Override
  public void close() {
    clock.shutdownNow();
    if (console.watched()) {
      console.error().print("\r" + " ".repeat(78) + "\r");
      console.error().flush();
    }
  }
}
