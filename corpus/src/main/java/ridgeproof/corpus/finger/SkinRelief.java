package ridgeproof.corpus.finger;

/**
 * The height of the skin, one signed byte for each pixel at 500 ppi: the ridge wave with what makes
 * one person's skin recognisable on every impression: ridges of uneven breadth, sweat pores along
 * their crests, wrinkles, and the flexion crease.
 */
final class SkinRelief {

  private static final float AMPLITUDE = 96;

  private final int width;
  private final int height;
  private final float[] skin;

  private SkinRelief(int width, int height, float[] skin) {
    this.width = width;
    this.height = height;
    this.skin = skin;
  }

  /** Carves the skin out of the ridge wave that the lattice painted, which it uses up. */
  static byte[] carve(
      float[] wave, PhaseLattice lattice, FingerAnatomy anatomy, SeededRandom dice) {
    SkinRelief relief = new SkinRelief(anatomy.canvasWidth(), anatomy.canvasHeight(), wave);
    byte[] coarse = ValueNoise.of(relief.width, relief.height, 31, dice);
    byte[] fine = ValueNoise.of(relief.width, relief.height, 5, dice);
    for (int i = 0; i < relief.skin.length; i++) {
      relief.skin[i] = AMPLITUDE * relief.skin[i] + 0.12f * coarse[i] + 0.20f * fine[i];
    }
    relief.prickPores(lattice, dice);
    int wrinkles = dice.below(4) + dice.below(3);
    for (int i = 0; i < wrinkles; i++) {
      relief.wrinkle(anatomy, dice);
    }
    relief.flexionCrease(anatomy, dice);
    return relief.toBytes();
  }

  private void prickPores(PhaseLattice lattice, SeededRandom dice) {
    float[] crest = new float[2];
    for (int row = 1; row + 1 < lattice.rows(); row += 2) {
      for (int column = 1 + (row / 2 & 1); column + 1 < lattice.columns(); column += 2) {
        if (lattice.crestNear(row, column, crest) && !dice.chance(0.25)) {
          float depth = (float) dice.between(25, 110);
          dent(
              crest[0] + (float) dice.around(0, 0.6),
              crest[1] + (float) dice.around(0, 0.6),
              depth);
        }
      }
    }
  }

  private void dent(float x, float y, float depth) {
    int left = (int) x - 1;
    int top = (int) y - 1;
    for (int py = Math.max(0, top); py <= Math.min(height - 1, top + 3); py++) {
      for (int px = Math.max(0, left); px <= Math.min(width - 1, left + 3); px++) {
        float distance = (px - x) * (px - x) + (py - y) * (py - y);
        skin[py * width + px] -= depth / (1 + distance * distance * 1.5f);
      }
    }
  }

  private void wrinkle(FingerAnatomy anatomy, SeededRandom dice) {
    double x = dice.between(0.1, 0.9) * width;
    double y = dice.between(0.1, 1.0) * anatomy.lengthPx();
    double heading = dice.chance(0.6) ? dice.around(0, 0.35) : dice.between(0, Math.PI);
    double depth = dice.between(40, 150);
    int length = 30 + dice.below(150);
    for (int step = 0; step < length; step++) {
      double taper = Math.min(1, Math.min(step, length - step) / 20.0);
      dent((float) x, (float) y, (float) (depth * taper));
      x += 1.2 * StrictMath.cos(heading);
      y += 1.2 * StrictMath.sin(heading);
      heading += dice.around(0, 0.05);
    }
  }

  private void flexionCrease(FingerAnatomy anatomy, SeededRandom dice) {
    double bow = dice.between(-12, 18);
    double lean = dice.around(0, 0.03);
    double breadth = dice.between(7, 12);
    double wander = 0;
    for (int x = 0; x < width; x++) {
      wander = 0.97 * wander + dice.around(0, 0.5);
      double aside = 2.0 * x / width - 1;
      double middle = anatomy.lengthPx() + bow * aside * aside + lean * (x - width / 2.0) + wander;
      int reach = (int) (2.5 * breadth);
      for (int y = (int) middle - reach; y <= Math.min(height - 1, middle + reach); y++) {
        double off = (y - middle) / breadth;
        skin[y * width + x] -= (float) (230 / (1 + off * off * off * off));
      }
    }
  }

  private byte[] toBytes() {
    byte[] bytes = new byte[skin.length];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) Math.max(-127, Math.min(127, Math.round(skin[i])));
    }
    return bytes;
  }
}
