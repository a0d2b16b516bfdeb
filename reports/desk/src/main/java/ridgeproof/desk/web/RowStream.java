package ridgeproof.desk.web;

import io.javalin.http.sse.SseClient;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import ridgeproof.desk.work.DeskFile;
import ridgeproof.desk.work.Worklist;

/** Sends rows to each open page as they change, and says when the desk is closed. */
final class RowStream {

  private static final int MAX_PAGES = 12;
  private static final Duration HEARTBEAT = Duration.ofSeconds(5);

  /** A browser passes over an event without data. */
  private static final String SOMETHING = "yes";

  private static final Duration FAREWELL = Duration.ofSeconds(3);

  private final Worklist worklist;
  private final Function<DeskFile, String> row;
  private final Semaphore pages = new Semaphore(MAX_PAGES);

  /**
   * @param row the row as markup
   */
  RowStream(Worklist worklist, Function<DeskFile, String> row) {
    this.worklist = worklist;
    this.row = row;
  }

  /** Serves a page until it or the desk is closed. */
  void serve(SseClient page) {
    if (!pages.tryAcquire()) {
      page.close();
      return;
    }
    page.keepAlive();
    long since = since(page);
    Thread thread = new Thread(() -> send(page, since), "desk-page");
    thread.setDaemon(true);
    thread.start();
  }

  /**
   * Waits until every open page was told that the desk is closed, but not for one that is stuck.
   */
  void awaitEnd() {
    try {
      pages.tryAcquire(MAX_PAGES, FAREWELL.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** A page that comes back says itself what it saw last. */
  private long since(SseClient page) {
    String last = page.ctx().header("Last-Event-ID");
    String asked = last == null ? page.ctx().queryParam("since") : last;
    try {
      return asked == null ? 0 : Long.parseLong(asked);
    } catch (NumberFormatException e) {
      return 0;
    }
  }

  private void send(SseClient page, long since) {
    try {
      long seen = since;
      while (!page.terminated() && worklist.await(seen, HEARTBEAT)) {
        page.sendComment("still here");
        long now = worklist.changes();
        for (DeskFile file : worklist.changedSince(seen)) {
          now = Math.max(now, file.changed());
          send(page, file);
        }
        seen = now;
      }
      if (!page.terminated()) {
        page.sendEvent("closed", SOMETHING, null);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      page.close();
      pages.release();
    }
  }

  private void send(SseClient page, DeskFile file) {
    String number = Long.toString(file.changed());
    if (file.isOnDesk()) {
      page.sendEvent("row", row.apply(file), number);
    } else {
      page.sendEvent("gone", file.id(), number);
    }
  }
}
