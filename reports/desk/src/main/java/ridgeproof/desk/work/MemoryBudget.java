package ridgeproof.desk.work;

import java.util.concurrent.atomic.AtomicLong;

/** The bytes of files that may be kept at once, those that are still arriving included. */
public final class MemoryBudget {

  private final long most;
  private final AtomicLong taken = new AtomicLong();

  /**
   * @param most bytes, at least 1
   */
  public MemoryBudget(long most) {
    this.most = most;
  }

  /** A quarter of what Java may take: the rest is for examining. */
  public static MemoryBudget ofThisMachine() {
    return new MemoryBudget(Runtime.getRuntime().maxMemory() / 4);
  }

  public long most() {
    return most;
  }

  public long taken() {
    return taken.get();
  }

  /** Takes so many bytes, all or none. */
  public boolean take(long bytes) {
    while (true) {
      long now = taken.get();
      if (bytes > most - now) {
        return false;
      }
      if (taken.compareAndSet(now, now + bytes)) {
        return true;
      }
    }
  }

  public void giveBack(long bytes) {
    taken.addAndGet(-bytes);
  }
}
