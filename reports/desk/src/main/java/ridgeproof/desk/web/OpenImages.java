package ridgeproof.desk.web;

import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/** How many requests may open images at once: each takes memory, whoever asks. */
final class OpenImages {

  private static final int MAX_OPEN = 2;

  private final Semaphore open = new Semaphore(MAX_OPEN, true);

  /** Does something once it is its turn. */
  <T> T use(Supplier<T> work) throws InterruptedException {
    open.acquire();
    try {
      return work.get();
    } finally {
      open.release();
    }
  }
}
