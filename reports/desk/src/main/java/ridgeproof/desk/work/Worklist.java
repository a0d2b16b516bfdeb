package ridgeproof.desk.work;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import ridgeproof.desk.work.DeskFile.State;

/** The files on the desk. Every change has a number, by which pages ask for what they missed. */
public final class Worklist {

  /** More rows than this help nobody, and each takes memory. */
  public static final int MAX_FILES = 2_000;

  /** A page that was away for longer is shown the whole list again. */
  private static final Duration REMEMBERED = Duration.ofMinutes(10);

  private final Clock clock;
  private final MemoryBudget budget;
  private final Map<String, DeskFile> files = new LinkedHashMap<>();
  private long changes;
  private boolean closed;

  public Worklist(Clock clock, MemoryBudget budget) {
    this.clock = clock;
    this.budget = budget;
  }

  public MemoryBudget budget() {
    return budget;
  }

  /**
   * Adds a file whose bytes are still to come.
   *
   * @return whether there was room and the id is new
   */
  public synchronized boolean begin(String id, String name) {
    long onDesk = files.values().stream().filter(DeskFile::isOnDesk).count();
    if (closed || onDesk >= MAX_FILES || files.containsKey(id)) {
      return false;
    }
    put(DeskFile.arriving(id, name, clock.instant()));
    return true;
  }

  /** All its bytes are there; they are taken from the budget already. */
  synchronized boolean arrived(String id, long bytes) {
    return change(id, file -> file.withBytes(bytes).inState(State.WAITING));
  }

  synchronized boolean examining(String id, Optional<Examined> structure) {
    return change(id, file -> structure.map(file::with).orElse(file).inState(State.EXAMINING));
  }

  synchronized boolean examined(String id, Examined found) {
    return change(id, file -> file.with(found).inState(State.EXAMINED).usedAt(clock.instant()));
  }

  /**
   * There will be no report.
   *
   * @param reason key of the text that says why
   */
  public synchronized void failed(String id, String reason) {
    change(
        id,
        file -> {
          budget.giveBack(file.bytes());
          return file.withBytes(0).failed(reason);
        });
  }

  /** Forgets bytes and report of a file. */
  public synchronized void drop(String id) {
    change(
        id,
        file -> {
          budget.giveBack(file.bytes());
          return file.dropped(clock.instant());
        });
  }

  public synchronized void dropAll() {
    List.copyOf(files.keySet()).forEach(this::drop);
  }

  /** Forgets every file that nobody has looked at for so long. */
  public synchronized void dropUnusedFor(Duration time) {
    Instant now = clock.instant();
    for (DeskFile file : List.copyOf(files.values())) {
      boolean done = file.state() == State.EXAMINED || file.state() == State.FAILED;
      if (done && !file.used().plus(time).isAfter(now)) {
        drop(file.id());
      } else if (!file.isOnDesk() && !file.used().plus(REMEMBERED).isAfter(now)) {
        files.remove(file.id());
      }
    }
  }

  /** A file that somebody looks at now, unless it is dropped. */
  public synchronized Optional<DeskFile> use(String id) {
    DeskFile file = files.get(id);
    if (file == null || !file.isOnDesk()) {
      return Optional.empty();
    }
    files.put(id, file.usedAt(clock.instant()));
    return Optional.of(file);
  }

  /** What is on the desk, in the order of arrival. */
  public synchronized List<DeskFile> files() {
    return files.values().stream().filter(DeskFile::isOnDesk).toList();
  }

  /** The number of the latest change. */
  public synchronized long changes() {
    return changes;
  }

  /** What changed after a change, oldest first, dropped files included. */
  public synchronized List<DeskFile> changedSince(long number) {
    return files.values().stream()
        .filter(file -> file.changed() > number)
        .sorted((one, other) -> Long.compare(one.changed(), other.changed()))
        .toList();
  }

  /**
   * Waits until something changes after that change, or the time is over, or the list is closed.
   *
   * @return whether the list is still open
   */
  public synchronized boolean await(long number, Duration time) throws InterruptedException {
    long end = System.nanoTime() + time.toNanos();
    for (long left = time.toNanos();
        !closed && changes <= number && left > 0;
        left = end - System.nanoTime()) {
      wait(Math.max(1, left / 1_000_000));
    }
    return !closed;
  }

  /** Forgets everything and takes nothing more. */
  public synchronized void close() {
    dropAll();
    files.clear();
    closed = true;
    notifyAll();
  }

  public synchronized boolean isClosed() {
    return closed;
  }

  private boolean change(String id, UnaryOperator<DeskFile> step) {
    DeskFile file = files.get(id);
    if (file == null || !file.isOnDesk()) {
      return false;
    }
    put(step.apply(file));
    return true;
  }

  private void put(DeskFile file) {
    changes++;
    files.put(file.id(), file.changedAs(changes));
    notifyAll();
  }
}
