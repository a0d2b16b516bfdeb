package ridgeproof.ridges;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Assumptions;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.WsqDecoder;
import ridgeproof.transaction.ByteSource;

/** The Type-4 images of the public reference transactions, by finger position code. */
final class ReferenceImages {

  /** LEN, IDC, IMP, six FGP, ISR, HLL, VLL and CGA come before the image data. */
  private static final int HEADER = 18;

  private static final int FIRST_FGP = 6;

  private ReferenceImages() {}

  /** Skips the test when the references are not there. */
  static Map<Integer, GrayImage> of(String name) {
    Path directory = directory();
    boolean present = directory != null;
    if ("true".equals(System.getenv("CI")) && !present) {
      throw new IllegalStateException("the reference transactions must be there in CI");
    }
    Assumptions.assumeTrue(present, "no shared/reference beside the project");
    try {
      return images(ByteSource.of(Files.readAllBytes(directory.resolve(name))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path directory() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path candidate = at.resolve("shared").resolve("reference");
      if (Files.isDirectory(candidate)) {
        return candidate;
      }
    }
    return null;
  }

  private static Map<Integer, GrayImage> images(ByteSource bytes) {
    Map<Integer, GrayImage> images = new TreeMap<>();
    byte[] raw = bytes.toArray();
    int at = HEADER;
    while ((at = bytes.indexOf(0xFF, at)) >= 0) {
      if (bytes.startsWith(at, 0xFF, 0xA0, 0xFF)) {
        int end = at + 2;
        while (end < raw.length && !bytes.startsWith(end, 0xFF, 0xA1)) {
          end++;
        }
        int length = Math.min(raw.length, end + 2) - at;
        images.put(
            raw[at - HEADER + FIRST_FGP] & 0xFF,
            WsqDecoder.decode(bytes.slice(at, length)).image().orElseThrow());
        at += length;
      } else {
        at++;
      }
    }
    return images;
  }
}
