package ridgeproof.cli.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import ridgeproof.report.FileFacts;
import ridgeproof.transaction.record.ByteSource;

/** A file that is examined: opened for reading only, small ones read, large ones mapped. */
public record InputFile(Path path, ByteSource bytes, FileFacts facts) {

  /** Names standard input. */
  public static final String STANDARD_INPUT = "-";

  private static final long MAPPED_FROM = 16L * 1024 * 1024;

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
      ByteSource bytes = ByteSource.of(read(path, System.in, maxBytes));
      return new InputFile(
          path, bytes, new FileFacts("standard input", bytes.length(), bytes.sha256()));
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
      ByteSource bytes = ByteSource.of(buffer);
      FileFacts facts =
          new FileFacts(path.getFileName().toString(), bytes.length(), bytes.sha256());
      return new InputFile(path, bytes, facts);
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
