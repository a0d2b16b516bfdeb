package ridgeproof.cli.desk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * A file that only its owner can read and that leads a browser to an address. The arguments of a
 * program can be seen by every user of a machine, and so the address cannot be one.
 */
final class PrivateAddress implements Closeable {

  /** A browser that is not running yet takes a while to read the file. */
  private static final long READ_AFTER_SECONDS = 15;

  private final Path file;

  private PrivateAddress(Path file) {
    this.file = file;
  }

  /**
   * @param address which holds no character that means something in HTML
   */
  static PrivateAddress write(String address) throws IOException {
    Path file = Files.createTempFile("ridgeproof-desk", ".html");
    Files.writeString(
        file,
        "<!DOCTYPE html><meta charset=\"utf-8\"><title>Ridgeproof</title>"
            + "<meta http-equiv=\"refresh\" content=\"0; url="
            + address
            + "\">");
    return new PrivateAddress(file);
  }

  void openInBrowser() throws IOException {
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    String target = file.toString();
    List<String> command =
        system.contains("win")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", target)
            : List.of(system.contains("mac") ? "open" : "xdg-open", target);
    new ProcessBuilder(command)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  /** Deletes the file once a browser had time to read it, and when this program ends. */
  @Override
  public void close() {
    file.toFile().deleteOnExit();
    Thread later = new Thread(this::deleteLater, "desk-address");
    later.setDaemon(true);
    later.start();
  }

  private void deleteLater() {
    try {
      TimeUnit.SECONDS.sleep(READ_AFTER_SECONDS);
      Files.deleteIfExists(file);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (IOException e) {
      // Deleted when the program ends.
    }
  }
}
