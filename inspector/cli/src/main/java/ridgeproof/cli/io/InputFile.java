package ridgeproof.cli.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import ridgeproof.report.FileFacts;
import ridgeproof.transaction.record.ByteSource;

/**
 * A file that is examined: opened for reading only, small ones read, large ones mapped. Its hash is
 * made beside the examination, which does not need it, since it takes a tenth of a short command.
 */
public final class InputFile {

  /** Names standard input. */
  public static final String STANDARD_INPUT = "-";

  private static final long MAPPED_FROM = 16L * 1024 * 1024;

  private final Path path;
  private final ByteSource bytes;
  private final FutureTask<FileFacts> facts;

  private InputFile(Path path, ByteSource bytes, String name) {
    this.path = path;
    this.bytes = bytes;
    this.facts = new FutureTask<>(() -> new FileFacts(name, bytes.length(), bytes.sha256()));
    Thread hashing = new Thread(facts, "hash");
    hashing.setDaemon(true); // a run that is broken off does not wait for it
    hashing.start();
  }

  public Path path() {
    return path;
  }

  public ByteSource bytes() {
    return bytes;
  }

  /** Name, size and hash; waits for the hash. */
  public FileFacts facts() {
    try {
      return facts.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw CommandFailure.inputOutput("interrupted");
    }
  }

  /**
   * Opens the file, or reads standard input where it is named so.
   *
   * @param maxBytes a larger file is refused
   */
  public static InputFile open(Path path, long maxBytes) {
    return isStandardInput(path) ? standardInput(path, maxBytes) : file(path, maxBytes);
  }

  static boolean isStandardInput(Path path) {
    return path.toString().equals(STANDARD_INPUT);
  }

  private static InputFile standardInput(Path path, long maxBytes) {
    try {
      return new InputFile(path, ByteSource.of(read(path, System.in, maxBytes)), "standard input");
    } catch (IOException e) {
      throw CommandFailure.inputOutput(IoErrorMessages.of(path, e));
    }
  }

  private static InputFile file(Path path, long maxBytes) {
    try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
      if (Files.isDirectory(path)) {
        throw CommandFailure.inputOutput(path + ": is a folder");
      }
      long size = channel.size();
      if (size > maxBytes) {
        throw tooLarge(path, size + " bytes is", maxBytes);
      }
      ByteBuffer buffer =
          size >= MAPPED_FROM
              ? channel.map(FileChannel.MapMode.READ_ONLY, 0, size)
              : ByteBuffer.wrap(read(path, Channels.newInputStream(channel), maxBytes));
      return new InputFile(path, ByteSource.of(buffer), path.getFileName().toString());
    } catch (IOException e) {
      throw CommandFailure.inputOutput(IoErrorMessages.of(path, e));
    }
  }

  /** Pipes and devices state no size and need not end, so that no more is read than may be. */
  private static byte[] read(Path path, InputStream in, long maxBytes) throws IOException {
    byte[] whole = in.readNBytes((int) Math.min(maxBytes + 1, Integer.MAX_VALUE));
    if (whole.length > maxBytes) {
      throw tooLarge(path, "the data has", maxBytes);
    }
    return whole;
  }

  private static CommandFailure tooLarge(Path path, String what, long maxBytes) {
    return CommandFailure.inputOutput(
        path
            + ": "
            + what
            + " more than the limit of "
            + maxBytes
            + " bytes; raise it with --max-file-size");
  }
}
