package ridgeproof.corpus.composition;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.transaction.writer.RecordDraft;

/** The records of a face and a signature, both drawn placeholders that show nobody. */
final class PlaceholderRecords {

  private static final int FACE_WIDTH = 480;
  private static final int FACE_HEIGHT = 600;
  private static final int SIGNATURE_WIDTH = 1200;
  private static final int SIGNATURE_HEIGHT = 300;
  private static final int PEN_PX = 4;
  private static final int PROFILE_SINCE = 400;

  private final Scenario scenario;

  PlaceholderRecords(Scenario scenario) {
    this.scenario = scenario;
  }

  RecordDraft face(int idc) {
    Drafts drafts =
        Drafts.tagged(10, idc)
            .text(3, "FACE")
            .text(4, scenario.transaction().originator())
            .text(5, scenario.transaction().date())
            .text(6, FACE_WIDTH)
            .text(7, FACE_HEIGHT)
            .text(8, 0)
            .text(9, 1)
            .text(10, 1)
            .text(11, "JPEGB")
            .text(12, "GRAY");
    if (scenario.transaction().versionNumber() >= PROFILE_SINCE) {
      drafts.text(13, 0);
    }
    return drafts.text(20, "F").endingIn(999, jpeg(drawnFace()));
  }

  /**
   * A pale head and shoulders on a darker ground, in whole numbers so that it is always the same.
   */
  private static BufferedImage drawnFace() {
    BufferedImage image = new BufferedImage(FACE_WIDTH, FACE_HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < FACE_HEIGHT; y++) {
      for (int x = 0; x < FACE_WIDTH; x++) {
        boolean head = inEllipse(x - 240, y - 250, 120, 160);
        boolean shoulders = inEllipse(x - 240, y - 620, 220, 190);
        int gray = head ? 205 : shoulders ? 120 : 165;
        image.getRaster().setSample(x, y, 0, gray);
      }
    }
    return image;
  }

  private static boolean inEllipse(int x, int y, int halfWidth, int halfHeight) {
    long across = (long) x * x * halfHeight * halfHeight;
    long down = (long) y * y * halfWidth * halfWidth;
    return across + down <= (long) halfWidth * halfWidth * halfHeight * halfHeight;
  }

  private static byte[] jpeg(BufferedImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, "jpeg", bytes)) {
        throw new IllegalStateException("every Java platform writes JPEG");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  RecordDraft signature(int idc) {
    return Drafts.binary(8, idc)
        .number(3, 1, 0)
        .number(4, 1, 0)
        .number(5, 1, 0)
        .number(6, 2, SIGNATURE_WIDTH)
        .number(7, 2, SIGNATURE_HEIGHT)
        .endingIn(8, strokes());
  }

  /** A pen that loops its way to the right: 1 is black, the leftmost pixel the highest bit. */
  private byte[] strokes() {
    byte[] bits = new byte[SIGNATURE_WIDTH / 8 * SIGNATURE_HEIGHT];
    double phase = scenario.seed() % 1000 / 100.0;
    for (int step = 0; step < 12_000; step++) {
      double t = step / 12_000.0;
      double turn = 2 * Math.PI * 9 * t + phase;
      double x = 100 + 950 * t + 60 * StrictMath.sin(turn);
      double y = 150 + (80 - 50 * t) * StrictMath.cos(turn) + 15 * StrictMath.sin(0.4 * turn);
      dot(bits, (int) x, (int) y);
    }
    return bits;
  }

  private static void dot(byte[] bits, int left, int top) {
    for (int y = top; y < top + PEN_PX; y++) {
      for (int x = left; x < left + PEN_PX; x++) {
        if (x >= 0 && x < SIGNATURE_WIDTH && y >= 0 && y < SIGNATURE_HEIGHT) {
          bits[y * (SIGNATURE_WIDTH / 8) + x / 8] |= (byte) (0x80 >> x % 8);
        }
      }
    }
  }
}
