package ridgeproof.examination.cause.card;

import java.util.Arrays;
import ridgeproof.imagery.GrayImage;

/** The picture of a made-up slap: the ridges of four fingers of a card in ovals side by side. */
final class SlapImage {

  static final int WIDTH = 960;
  static final int HEIGHT = 480;
  private static final int GROUND = 245;
  private static final int[] TOPS = {110, 60, 80, 150};

  private SlapImage() {}

  /** Fingers from left to right. */
  static GrayImage of(int... fingers) {
    byte[] pixels = new byte[WIDTH * HEIGHT];
    Arrays.fill(pixels, (byte) GROUND);
    for (int i = 0; i < fingers.length; i++) {
      int left = 20 + i * MadeHands.SIDE - (MadeHands.SIDE - 200) / 2;
      byte[] ridges = MadeHands.pixels(fingers[i]);
      for (int y = 0; y < MadeHands.SIDE; y++) {
        for (int x = 0; x < MadeHands.SIDE; x++) {
          double across = (x - MadeHands.SIDE / 2.0) / 90;
          double down = (y - MadeHands.SIDE / 2.0) / 118;
          double inside = Math.min(1, Math.max(0, 8 * (1 - Math.hypot(across, down))));
          int at = (TOPS[i] + y) * WIDTH + left + x;
          if (left + x >= 0 && left + x < WIDTH) {
            int gray = ridges[y * MadeHands.SIDE + x] & 0xFF;
            pixels[at] = (byte) Math.round(GROUND - inside * (GROUND - gray));
          }
        }
      }
    }
    return GrayImage.owning(WIDTH, HEIGHT, pixels);
  }
}
