package ridgeproof.corpus.impression;

import ridgeproof.corpus.finger.SeededRandom;

/** Specks where skin takes no ink, and fewer where what it sheds takes some. */
final class Specks {

  private static final double DENSITY = 0.014;

  private Specks() {}

  /** Added to the height of skin, -127 to 127. */
  static byte[] of(int width, int height, double speckle, SeededRandom dice) {
    byte[] specks = new byte[width * height];
    int count = (int) (DENSITY * speckle * width * height);
    for (int i = 0; i < count; i++) {
      double x = dice.between(0, width);
      double y = dice.between(0, height);
      double radius = dice.between(0.6, 1.9);
      double rise = dice.chance(0.85) ? -dice.between(60, 127) : dice.between(40, 110);
      for (int py = (int) (y - radius); py <= Math.min(height - 1, y + radius); py++) {
        for (int px = (int) (x - radius); px <= Math.min(width - 1, x + radius); px++) {
          double off = (px - x) * (px - x) + (py - y) * (py - y);
          if (px >= 0 && py >= 0 && off <= radius * radius) {
            specks[py * width + px] = (byte) rise;
          }
        }
      }
    }
    return specks;
  }
}
