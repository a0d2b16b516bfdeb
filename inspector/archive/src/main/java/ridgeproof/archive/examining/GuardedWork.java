package ridgeproof.archive.examining;

import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;

/**
 * Does work on one file that may break in any way: without end, without memory, or by a defect. The
 * task that asked for it goes on.
 */
final class GuardedWork implements AutoCloseable {

  /** Of the tasks of a worker: those beside each other share it, one that is alone holds it. */
  private static final ReadWriteLock MEMORY = new ReentrantReadWriteLock();

  private final Duration patience;
  private ExecutorService worker = thread();

  GuardedWork(Duration patience) {
    this.patience = patience;
  }

  /** The work. */
  interface Examining {
    FileResult run();
  }

  /** It came to nothing. */
  static final class Broken extends Exception {

    private static final long serialVersionUID = 1L;

    private final Reason reason;

    Broken(Reason reason, String detail) {
      super(detail);
      this.reason = reason;
    }

    Reason reason() {
      return reason;
    }
  }

  private static ExecutorService thread() {
    return Executors.newSingleThreadExecutor(
        work -> {
          Thread thread = new Thread(work, "examination");
          thread.setDaemon(true);
          return thread;
        });
  }

  /** Does the work; what does not fit into memory beside others once more by itself. */
  FileResult of(Examining work) throws Broken {
    MEMORY.readLock().lock();
    try {
      return attempt(work);
    } catch (Broken e) {
      if (e.reason() != Reason.OUT_OF_MEMORY) {
        throw e;
      }
    } finally {
      MEMORY.readLock().unlock();
    }
    MEMORY.writeLock().lock();
    try {
      return attempt(work);
    } finally {
      MEMORY.writeLock().unlock();
    }
  }

  private FileResult attempt(Examining work) throws Broken {
    Future<FileResult> result = worker.submit(work::run);
    try {
      return result.get(patience.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      result.cancel(true);
      worker.shutdownNow();
      worker = thread();
      throw new Broken(Reason.OUT_OF_TIME, "given up after " + patience.toMinutes() + " minutes");
    } catch (ExecutionException e) {
      throw broken(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the task was ended", e);
    }
  }

  /** A message could hold a value of the file, so that the place is told alone. */
  private static Broken broken(Throwable cause) {
    if (cause instanceof OutOfMemoryError) {
      return new Broken(Reason.OUT_OF_MEMORY, "needs more memory than a worker has");
    }
    StackTraceElement[] trace = cause.getStackTrace();
    String place = trace.length == 0 ? "an unknown place" : trace[0].toString();
    return new Broken(Reason.INTERNAL_ERROR, cause.getClass().getName() + " at " + place);
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }
}
