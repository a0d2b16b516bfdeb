package ridgeproof.imagery.wsq;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.record.ByteSource;

/** The WSQ codestreams inside the public reference transactions. */
public final class ReferenceCodestreams {

  public record Reference(String name, ByteSource source) {
    @Override
    public String toString() {
      return name;
    }
  }

  private ReferenceCodestreams() {}

  /** All of them, found by their first and last markers; skips the test when there are none. */
  public static List<Reference> all() {
    List<Reference> found = new ArrayList<>();
    try {
      for (Path file : ReferenceFiles.all()) {
        addCodestreams(file, found);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found;
  }

  private static void addCodestreams(Path file, List<Reference> found) throws IOException {
    ByteSource bytes = ByteSource.of(Files.readAllBytes(file));
    int at = 0;
    while ((at = bytes.indexOf(0xFF, at)) >= 0) {
      if (bytes.startsWith(at, 0xFF, 0xA0, 0xFF)) {
        int end = at + 2;
        while (end < bytes.length() && !bytes.startsWith(end, 0xFF, 0xA1)) {
          end++;
        }
        int length = Math.min(bytes.length(), end + 2) - at;
        found.add(new Reference(file.getFileName() + " byte " + at, bytes.slice(at, length)));
        at += length;
      } else {
        at++;
      }
    }
  }
}
