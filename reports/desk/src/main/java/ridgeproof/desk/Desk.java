package ridgeproof.desk;

import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import ridgeproof.desk.web.DeskServer;
import ridgeproof.desk.web.DeskSettings;

/** A desk that is open. */
public final class Desk implements AutoCloseable {

  private final CountDownLatch stopped = new CountDownLatch(1);
  private final DeskServer server;

  private Desk(DeskSettings settings) {
    this.server = new DeskServer(settings, stopped::countDown);
  }

  /**
   * Opens a desk on the loopback address of this machine.
   *
   * @throws IOException if the port is taken
   */
  public static Desk open(DeskSettings settings) throws IOException {
    try {
      return new Desk(settings);
    } catch (JavalinBindException e) {
      throw new IOException("port " + settings.port() + " is taken", e);
    }
  }

  /** The address that lets one browser in, once. */
  public String address() {
    return server.address();
  }

  /** Waits until a person stops the desk on its page. */
  public void awaitStop() throws InterruptedException {
    stopped.await();
  }

  /** Forgets all files and ends; open pages say so. */
  @Override
  public void close() {
    server.close();
  }
}
