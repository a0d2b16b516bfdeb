package ridgeproof.imagery.codec;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageDefect.Kind;

/** Runs a library's decoder aside, so that neither its time nor its failures become ours. */
final class DecodingTimeout {

  private static final String THREAD_NAME = "image-decoding";

  /** Deep recursion of a decoder ends in an error rather than in the caller's stack. */
  private static final long STACK_BYTES = 1 << 20;

  private DecodingTimeout() {}

  /**
   * Runs the work on a thread of its own.
   *
   * @param offset of the codestream, for a defect
   * @param progress how far the work came, in words that follow what went wrong
   * @param cancel stops the work from another thread
   */
  static Decoding run(
      Callable<Decoding> work,
      Runnable cancel,
      int offset,
      Supplier<String> progress,
      DecodingLimits limits) {
    FutureTask<Decoding> task = new FutureTask<>(work);
    Thread thread = new Thread(null, task, THREAD_NAME, STACK_BYTES);
    thread.setDaemon(true);
    // Image I/O looks for plug-ins in the context loader; ours are named and need no search.
    thread.setContextClassLoader(ClassLoader.getPlatformClassLoader());
    thread.start();
    try {
      return task.get(limits.timeLimit().toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      stop(task, cancel);
      String detail = "decoding took longer than " + limits.timeLimit().toMillis() + " ms";
      return Decoding.failed(new ImageDefect(Kind.LIMIT, offset, detail));
    } catch (InterruptedException e) {
      stop(task, cancel);
      Thread.currentThread().interrupt();
      return Decoding.failed(new ImageDefect(Kind.LIMIT, offset, "decoding was interrupted"));
    } catch (ExecutionException e) {
      rethrowOutOfMemory(e.getCause());
      return Decoding.failed(
          new ImageDefect(Kind.DAMAGE, offset, reason(e.getCause()) + progress.get()));
    }
  }

  /** A finding would make the verdict depend on the memory of a machine. */
  private static void rethrowOutOfMemory(Throwable failure) {
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof OutOfMemoryError tooLittle) {
        throw tooLittle;
      }
    }
  }

  private static void stop(FutureTask<Decoding> task, Runnable cancel) {
    cancel.run();
    task.cancel(true);
  }

  /** A library's own words could quote the file, so only the kind of failure is told. */
  private static String reason(Throwable failure) {
    if (failure instanceof StackOverflowError) {
      return "decoding nests too deep";
    }
    if (failure instanceof IOException) {
      return "the decoder refuses the codestream";
    }
    return "the decoder fails (" + failure.getClass().getSimpleName() + ")";
  }
}
