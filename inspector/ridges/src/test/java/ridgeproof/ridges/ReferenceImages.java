package ridgeproof.ridges;

import java.util.Map;
import java.util.TreeMap;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.WsqDecoder;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.record.ByteSource;

/** The Type-4 images of the public reference transactions, by finger position code. */
final class ReferenceImages {

  /** LEN, IDC, IMP, six FGP, ISR, HLL, VLL and CGA come before the image data. */
  private static final int HEADER = 18;

  private static final int FIRST_FGP = 6;

  private ReferenceImages() {}

  /** Skips the test when the references are not there. */
  static Map<Integer, GrayImage> of(String name) {
    return images(ByteSource.of(ReferenceFiles.read(name)));
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
