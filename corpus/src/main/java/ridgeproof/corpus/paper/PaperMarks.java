package ridgeproof.corpus.paper;

import ridgeproof.corpus.finger.SeededRandom;

/** Draws on paper what a card shows besides prints: title, rulings, writing, holes. */
public final class PaperMarks {

  private static final String[] TITLES = {
    "SPECIMEN CARD", "HARBOUR OFFICE", "PRINTS OF FINGERS", "DO NOT FOLD"
  };

  private static final int INK = 40;
  private static final int PEN = 70;
  private static final int DARK = 12;

  private final byte[] gray;
  private final int width;
  private final int height;
  private final double scale;
  private final SeededRandom dice;

  /**
   * @param gray pixels, row by row, that are drawn on
   * @param ppi pixels per inch
   */
  public PaperMarks(byte[] gray, int width, int height, int ppi, SeededRandom dice) {
    this.gray = gray;
    this.width = width;
    this.height = height;
    this.scale = ppi / 500.0;
    this.dice = dice;
  }

  /** What is on the card before a finger is laid on it. */
  public void print(Paper paper) {
    for (int i = 0; i < paper.rulings(); i++) {
      ruling(i);
    }
    for (int i = 0; i < paper.words(); i++) {
      title(i);
    }
    for (int i = 0; i < paper.handwriting(); i++) {
      write();
    }
  }

  /** Holes, through which the dark lid of a scanner is seen. */
  public void punch(Paper paper) {
    for (int i = 0; i < paper.holes(); i++) {
      double radius = dice.between(58, 72) * scale;
      double x = dice.chance(0.5) ? dice.between(0, 0.2) : dice.between(0.8, 1);
      dot(x * width, dice.between(0.1, 0.9) * height, radius, DARK);
    }
  }

  private void ruling(int number) {
    double line = dice.between(1, 2.2) * scale;
    double off = dice.between(4, 26) * scale;
    if (number % 2 == 0) {
      line(0, height - off, width, height - off + dice.between(-3, 3) * scale, line, INK);
    } else {
      line(off, 0, off + dice.between(-3, 3) * scale, height, line, INK);
    }
  }

  private void title(int number) {
    String words = TITLES[dice.below(TITLES.length)] + " " + dice.below(100);
    double size = dice.between(5.5, 8) * scale;
    double x = dice.between(0.05, 0.45) * width;
    double y = (22 + 70 * number) * scale + dice.between(0, 18) * scale;
    for (char letter : words.toCharArray()) {
      for (double[] stroke : StrokeFont.strokes(letter)) {
        for (int i = 2; i + 1 < stroke.length; i += 2) {
          line(
              x + stroke[i - 2] * size,
              y + stroke[i - 1] * size,
              x + stroke[i] * size,
              y + stroke[i + 1] * size,
              2.2 * scale,
              INK);
        }
      }
      x += (StrokeFont.WIDTH + 1.6) * size;
    }
  }

  /** Loops that lean and wander, as of a pen. */
  private void write() {
    double x = dice.between(0, 0.5) * width;
    double base = dice.chance(0.5) ? dice.between(0, 0.15) : dice.between(0.85, 1);
    double y = base * height;
    double tall = dice.between(12, 34) * scale;
    double pace = dice.between(0.5, 1.1) * scale;
    double turn = dice.between(0, 6);
    double lastX = x;
    double lastY = y;
    int steps = 60 + dice.below(240);
    for (int step = 0; step < steps; step++) {
      turn += dice.between(0.12, 0.3);
      x += pace * dice.between(0.6, 1.4);
      double high = tall * (0.7 + 0.3 * StrictMath.sin(0.31 * turn));
      double nextX = x + 0.8 * high * StrictMath.cos(turn);
      double nextY = y + high * StrictMath.sin(turn);
      if (step > 0) {
        line(lastX, lastY, nextX, nextY, 1.6 * scale, PEN);
      }
      lastX = nextX;
      lastY = nextY;
    }
  }

  private void line(double x0, double y0, double x1, double y1, double half, int level) {
    int steps = (int) Math.max(1, Math.ceil(Math.hypot(x1 - x0, y1 - y0) / Math.max(0.7, half)));
    for (int i = 0; i <= steps; i++) {
      double t = i / (double) steps;
      dot(x0 + t * (x1 - x0), y0 + t * (y1 - y0), half, level);
    }
  }

  private void dot(double x, double y, double radius, int level) {
    int top = (int) Math.max(0, Math.floor(y - radius));
    int left = (int) Math.max(0, Math.floor(x - radius));
    for (int py = top; py <= Math.min(height - 1, y + radius); py++) {
      for (int px = left; px <= Math.min(width - 1, x + radius); px++) {
        double off = (px - x) * (px - x) + (py - y) * (py - y);
        int at = py * width + px;
        if (off <= radius * radius && (gray[at] & 0xFF) > level) {
          gray[at] = (byte) level;
        }
      }
    }
  }
}
