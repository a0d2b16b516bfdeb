package ridgeproof.cli.reporting;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.InputFile;
import ridgeproof.examination.FindingsReport;

/**
 * Examines several files beside each other and hands out their reports in the order of the files.
 * No more files are under way, or done and not yet handed out, than there are workers.
 */
public final class ParallelExamination implements AutoCloseable {

  /** What a worker may need for a file of usual size; large ones are retried alone. */
  private static final long BYTES_OF_A_WORKER = 512L << 20;

  /** A file with its report, or why there is none. */
  public sealed interface Result {

    record Examined(InputFile file, FindingsReport report) implements Result {}

    record Failed(CommandFailure failure) implements Result {}
  }

  private record Waiting(Path path, Future<Result> result) {}

  private final Function<Path, Result> examine;
  private final ExecutorService workers;
  private final int most;
  private final Iterator<Path> rest;
  private final Deque<Waiting> waiting = new ArrayDeque<>();

  /**
   * @param examine opens and examines one file
   * @param most how many files may be under way
   */
  public ParallelExamination(List<Path> paths, Function<Path, Result> examine, int most) {
    this.examine = examine;
    this.most = most;
    this.rest = paths.iterator();
    this.workers = Executors.newFixedThreadPool(most, ParallelExamination::thread);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "examination");
    thread.setDaemon(true); // a run that is broken off does not wait for them
    return thread;
  }

  /** As many as there are cores, and as the memory bears. */
  public static int workers(int files) {
    Runtime machine = Runtime.getRuntime();
    long byMemory = machine.maxMemory() / BYTES_OF_A_WORKER;
    return (int) Math.max(1, Math.min(files, Math.min(machine.availableProcessors(), byMemory)));
  }

  /** The result of the next file. */
  public Result next() {
    while (waiting.size() < most && rest.hasNext()) {
      Path path = rest.next();
      waiting.add(new Waiting(path, workers.submit(() -> examine.apply(path))));
    }
    Waiting first = waiting.remove();
    try {
      return first.result().get();
    } catch (ExecutionException e) {
      return again(first.path(), e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw CommandFailure.inputOutput("interrupted");
    }
  }

  /** What did not fit into memory beside others is examined once more with no other under way. */
  private Result again(Path path, Throwable cause) {
    if (cause instanceof OutOfMemoryError) {
      waiting.forEach(ParallelExamination::await);
      try {
        return examine.apply(path);
      } catch (OutOfMemoryError e) {
        return new Result.Failed(CommandFailure.outOfMemory(path.toString()));
      }
    }
    if (cause instanceof RuntimeException defect) {
      throw defect;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    throw new IllegalStateException(cause);
  }

  private static void await(Waiting other) {
    try {
      other.result().get();
    } catch (ExecutionException e) {
      // Told when its turn comes.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    workers.shutdownNow();
  }
}
