package ridgeproof.desk.work;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Supplier;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.report.FileFacts;
import ridgeproof.transaction.record.ByteSource;

/**
 * Examines files one after the other, a few at a time: the images of one file already use every
 * core, and each file at work takes memory.
 */
public final class ExaminationQueue implements AutoCloseable {

  private static final int MAX_AT_ONCE = 4;

  private final Worklist worklist;
  private final Examiner examiner;
  private final Supplier<ExaminationOptions> options;
  private final ExecutorService workers;

  /**
   * @param options asked for each file, since the day may change while the desk is open
   */
  public ExaminationQueue(
      Worklist worklist, Examiner examiner, Supplier<ExaminationOptions> options) {
    this.worklist = worklist;
    this.examiner = examiner;
    this.options = options;
    int cores = Runtime.getRuntime().availableProcessors();
    this.workers =
        Executors.newFixedThreadPool(
            Math.max(1, Math.min(MAX_AT_ONCE, cores / 2)),
            work -> {
              Thread thread = new Thread(work, "desk-examination");
              thread.setDaemon(true);
              return thread;
            });
  }

  /** Takes a file whose bytes are all there and are taken from the budget. */
  public void add(String id, byte[] bytes) {
    if (!worklist.arrived(id, bytes.length)) {
      worklist.budget().giveBack(bytes.length);
      return;
    }
    try {
      workers.execute(() -> examine(id, bytes));
    } catch (RejectedExecutionException e) {
      worklist.drop(id);
    }
  }

  private void examine(String id, byte[] bytes) {
    try {
      if (!worklist.examining(id, Optional.empty())) {
        return;
      }
      ExaminationOptions wanted = options.get();
      ByteSource source = ByteSource.of(bytes);
      FileFacts facts = new FileFacts(nameOf(id), bytes.length, source.sha256());
      FindingsReport structure = examiner.examine(source, wanted.withDepth(Depth.STRUCTURE));
      worklist.examining(id, Optional.of(new Examined(facts, structure)));
      FindingsReport report =
          wanted.depth() == Depth.STRUCTURE ? structure : examiner.examine(source, wanted);
      worklist.examined(id, new Examined(facts, report));
    } catch (OutOfMemoryError e) {
      worklist.failed(id, "problem.memory");
    } catch (RuntimeException | StackOverflowError e) {
      // What the file holds must not come out by way of a message: the type alone is known.
      worklist.failed(id, "problem.internal");
    }
  }

  private String nameOf(String id) {
    return worklist.use(id).map(DeskFile::name).orElse("");
  }

  /** Ends what is at work and forgets what waits. */
  @Override
  public void close() {
    workers.shutdownNow();
  }
}
