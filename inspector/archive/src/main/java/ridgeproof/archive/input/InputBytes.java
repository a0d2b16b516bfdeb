package ridgeproof.archive.input;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import ridgeproof.archive.local.ArchiveFileSystem;

/** Reads inputs through the Hadoop file systems, and never writes to one. */
public final class InputBytes {

  private InputBytes() {}

  /**
   * The bytes of an input, at most one more than a limit.
   *
   * @throws IOException if it cannot be read
   */
  public static byte[] read(ArchiveInput input, int limit, Configuration configuration)
      throws IOException {
    Path path = new Path(input.address());
    try (InputStream in = ArchiveFileSystem.open(path, configuration)) {
      int expected = (int) Math.min(input.bytes(), limit);
      byte[] bytes = new byte[expected];
      int read = in.readNBytes(bytes, 0, expected);
      if (read < expected) {
        return Arrays.copyOf(bytes, read);
      }
      // A file may have grown since it was listed.
      byte[] more = in.readNBytes((int) Math.min(limit + 1L - expected, Integer.MAX_VALUE - 8L));
      if (more.length == 0) {
        return bytes;
      }
      byte[] whole = Arrays.copyOf(bytes, expected + more.length);
      System.arraycopy(more, 0, whole, expected, more.length);
      return whole;
    }
  }
}
