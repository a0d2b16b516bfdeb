package ridgeproof.corpus.finger;

/** Works creases, wear and scars into the relief of a finger, -127 to 127 at 500 ppi. */
final class SkinCarving {

  private static final double DEEPEST = 235;

  private final byte[] relief;
  private final int width;
  private final int height;

  private SkinCarving(byte[] relief, int width, int height) {
    this.relief = relief;
    this.width = width;
    this.height = height;
  }

  /**
   * The relief of the same finger years later.
   *
   * @param relief row by row; it is not changed
   * @param patches smooth noise of the same size, -127 to 127: where skin wears first
   * @param height rows of it, to below the flexion crease
   */
  static byte[] of(
      byte[] relief, byte[] patches, int width, int height, Skin skin, SeededRandom dice) {
    SkinCarving carving = new SkinCarving(relief.clone(), width, height);
    carving.wear(patches, skin.wear());
    for (int i = 0; i < skin.scars(); i++) {
      carving.scar(dice);
    }
    double heading = dice.between(0, Math.PI);
    for (int i = 0; i < skin.creases(); i++) {
      carving.crease(heading, dice);
    }
    return carving.relief;
  }

  /** Ridges that are worn stand less high, most where the patches are highest. */
  private void wear(byte[] patches, double wear) {
    if (wear > 0) {
      for (int i = 0; i < relief.length; i++) {
        double here = wear * Math.max(0, Math.min(1, 0.45 + patches[i] / 110.0));
        relief[i] = (byte) Math.rint(relief[i] * (1 - 0.7 * here) - 16 * here);
      }
    }
  }

  /** Most creases of a finger run one way, a third of them across the others. */
  private void crease(double common, SeededRandom dice) {
    double x = dice.between(0.05, 0.95) * width;
    double y = dice.between(0.05, 0.95) * height;
    double heading = common + (dice.chance(0.35) ? Math.PI / 2 : 0) + dice.between(-0.5, 0.5);
    double depth = dice.between(0.35, 1) * DEEPEST;
    double breadth = dice.between(1.1, 2.6);
    int length = 40 + dice.below(180);
    double bend = dice.between(-0.006, 0.006);
    for (int step = 0; step < length; step++) {
      double taper = Math.min(1, Math.min(step, length - step) / 18.0);
      dent(x, y, depth * taper, breadth * (0.6 + 0.4 * taper));
      x += StrictMath.cos(heading);
      y += StrictMath.sin(heading);
      heading += bend + dice.between(-0.06, 0.06);
    }
  }

  private void dent(double x, double y, double depth, double breadth) {
    int reach = (int) Math.ceil(2 * breadth);
    for (int py = Math.max(0, (int) y - reach); py <= Math.min(height - 1, y + reach); py++) {
      for (int px = Math.max(0, (int) x - reach); px <= Math.min(width - 1, x + reach); px++) {
        double off = ((px - x) * (px - x) + (py - y) * (py - y)) / (breadth * breadth);
        double floor = 127 - depth / (1 + off * off);
        relief[py * width + px] = (byte) Math.max(-127, Math.min(relief[py * width + px], floor));
      }
    }
  }

  /** Skin that has healed: a bare seam, and ridges that no longer meet across it. */
  private void scar(SeededRandom dice) {
    double cos = StrictMath.cos(dice.between(0, Math.PI));
    double sin = Math.sqrt(1 - cos * cos);
    double middleX = dice.between(0.2, 0.8) * width;
    double middleY = dice.between(0.15, 0.75) * height;
    double half = dice.between(40, 120);
    double seam = dice.between(3, 6.5);
    double shift = (dice.chance(0.5) ? 1 : -1) * dice.between(3, 7);
    byte[] before = relief.clone();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double along = (x - middleX) * cos + (y - middleY) * sin;
        double aside = (y - middleY) * cos - (x - middleX) * sin;
        double end = Math.max(0, 1 - along * along / (half * half));
        if (end > 0 && Math.abs(aside) <= seam * end) {
          relief[y * width + x] = -127;
        } else if (end > 0 && aside > 0 && aside < 60) {
          double moved = shift * end * (1 - aside / 60);
          int fromX = Math.max(0, Math.min(width - 1, (int) Math.rint(x + moved * cos)));
          int fromY = Math.max(0, Math.min(height - 1, (int) Math.rint(y + moved * sin)));
          relief[y * width + x] = before[fromY * width + fromX];
        }
      }
    }
  }
}
