package ridgeproof.desk.web;

import java.time.Duration;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import ridgeproof.desk.work.ExaminationQueue;
import ridgeproof.desk.work.Worklist;
import ridgeproof.gate.FolderWatch;
import ridgeproof.gate.Gate;

/** Looks at the watched folder and the gate every second, as long as the desk is open. */
final class Watchman implements AutoCloseable {

  private static final Duration PAUSE = Duration.ofSeconds(1);

  private final Optional<FolderWatch> watch;
  private final Optional<Gate> gate;
  private final GateLog log;
  private final Worklist worklist;
  private final ExaminationQueue queue;
  private final Thread thread;

  Watchman(
      Optional<FolderWatch> watch,
      Optional<Gate> gate,
      GateLog log,
      Worklist worklist,
      ExaminationQueue queue) {
    this.watch = watch;
    this.gate = gate;
    this.log = log;
    this.worklist = worklist;
    this.queue = queue;
    this.thread = new Thread(this::look, "desk-watch");
    thread.setDaemon(true);
    if (watch.isPresent() || gate.isPresent()) {
      thread.start();
    }
  }

  private void look() {
    try {
      while (!worklist.isClosed()) {
        watch.ifPresent(folder -> folder.look(this::take));
        gate.ifPresent(open -> open.pass().forEach(log::add));
        Thread.sleep(PAUSE.toMillis());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void take(String name, byte[] bytes) {
    String id = HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextLong());
    if (!worklist.begin(id, name)) {
      return;
    }
    if (worklist.budget().take(bytes.length)) {
      queue.add(id, bytes);
    } else {
      worklist.failed(id, "problem.full");
    }
  }

  /** Waits until what the gate is doing is done. */
  @Override
  public void close() {
    thread.interrupt();
    try {
      thread.join(Duration.ofSeconds(30).toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    gate.ifPresent(Gate::close);
  }
}
