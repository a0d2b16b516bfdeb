package ridgeproof.gate;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;

/** Lets one gate or one person at a time write to the record, in this process and in others. */
final class GateLock {

  /** What is done while the lock is held. */
  interface Work<T> {
    T run() throws IOException;
  }

  /** What is done while the lock is held, without a result. */
  interface Act {
    void run() throws IOException;
  }

  private final ReentrantLock here = new ReentrantLock();
  private final Path file;

  GateLock(Path file) {
    this.file = file;
  }

  void hold(Act act) throws IOException {
    hold(
        () -> {
          act.run();
          return true;
        });
  }

  <T> T hold(Work<T> work) throws IOException {
    here.lock();
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.lock(); // until the channel is closed
      return work.run();
    } finally {
      here.unlock();
    }
  }
}
