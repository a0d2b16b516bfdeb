package ridgeproof.corpus.year;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.impression.FrameSize;
import ridgeproof.corpus.impression.Impression;
import ridgeproof.corpus.impression.ImpressionSettings;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FingerPosition;

/** Makes of a print of the pool another capture. Safe to share between threads. */
final class YearCapture {

  static final FrameSize FRAME = new FrameSize(640, 600);

  private static final int PAPER_SHARE = 16;
  private static final int MAX_SHIFT = 14;

  /** Of a narrow roll, what is left of the width. */
  private static final double NARROW_SHARE = 0.72;

  private static final int SPOT_X = 566;
  private static final int SPOT_Y = 66;
  private static final int SPOT_RADIUS = 22;
  private static final int SPOT_DEPTH = 90;
  private static final long POOL_SEED = 7_000_000;

  /**
   * A print of the pool.
   *
   * @param ground gray level of its background
   * @param left first column with ridges
   * @param right column after the last
   */
  private record Master(byte[] pixels, int ground, int left, int right) {}

  private final YearPlan plan;
  private final Map<Integer, Master> pool = new ConcurrentHashMap<>();

  YearCapture(YearPlan plan) {
    this.plan = plan;
  }

  /**
   * The image of a finger.
   *
   * @param finger 2 or 7
   */
  GrayImage image(YearAppointment sitting, int finger) {
    Master master = pool.computeIfAbsent(sitting.subject() * 16 + finger, this::draw);
    SeededRandom dice =
        new SeededRandom(plan.seed() * 4_000_037 + sitting.number() * 16L + finger, 902);
    int width = FRAME.width();
    int height = FRAME.height();
    int shiftX = dice.below(2 * MAX_SHIFT + 1) - MAX_SHIFT;
    int shiftY = dice.below(2 * MAX_SHIFT + 1) - MAX_SHIFT;
    double contrast = 0.86 + 0.12 * dice.unit();
    double ground = 236 + 2 * sitting.station() + 3 * dice.unit();
    double middle = (master.left() + master.right()) / 2.0;
    double half = (master.right() - master.left()) / 2.0;
    if (plan.isNarrow(sitting.operator())) {
      half *= NARROW_SHARE + 0.06 * (dice.unit() - 0.5);
    }
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      int fromY = Math.floorMod(y - shiftY, height);
      long grain = 0;
      for (int x = 0; x < width; x++) {
        if (x % PAPER_SHARE == 0) {
          grain = dice.next();
        }
        int fromX = Math.floorMod(x - shiftX, width);
        int dark =
            Math.abs(fromX - middle) < half
                ? Math.max(0, master.ground() - (master.pixels()[fromY * width + fromX] & 0xFF))
                : 0;
        int noise = (int) (grain >>> (4 * (x % PAPER_SHARE)) & 7) - 3;
        double gray = ground - contrast * dark + noise / 2.0;
        pixels[y * width + x] = (byte) Math.max(0, Math.min(255, Math.round(gray)));
      }
    }
    if (plan.isDirty(sitting)) {
      spot(pixels);
    }
    return GrayImage.owning(width, height, pixels);
  }

  private Master draw(int key) {
    FingerPosition digit = key % 16 == 2 ? FingerPosition.RIGHT_INDEX : FingerPosition.LEFT_INDEX;
    long person = POOL_SEED + plan.seed() * 1000 + key / 16;
    ImpressionSettings settings =
        ImpressionSettings.natural(person * 16 + key % 16).withFrame(FRAME).withShift(0, 0);
    GrayImage image = Impression.rolled(MasterFinger.grow(person, digit), settings).image();
    byte[] pixels = image.toArray();
    int[] counts = new int[256];
    for (byte pixel : pixels) {
      counts[pixel & 0xFF]++;
    }
    int ground = 255;
    for (int gray = 128; gray < 256; gray++) {
      ground = counts[gray] > counts[ground] ? gray : ground;
    }
    int left = FRAME.width();
    int right = 0;
    for (int i = 0; i < pixels.length; i++) {
      if ((pixels[i] & 0xFF) < ground / 2) {
        left = Math.min(left, i % FRAME.width());
        right = Math.max(right, i % FRAME.width() + 1);
      }
    }
    return new Master(pixels, ground, left, Math.max(right, left + 1));
  }

  private static void spot(byte[] pixels) {
    for (int y = SPOT_Y - SPOT_RADIUS; y <= SPOT_Y + SPOT_RADIUS; y++) {
      for (int x = SPOT_X - SPOT_RADIUS; x <= SPOT_X + SPOT_RADIUS; x++) {
        double distance = Math.hypot(x - SPOT_X, y - SPOT_Y) / SPOT_RADIUS;
        if (distance < 1) {
          int at = y * FRAME.width() + x;
          double gray = (pixels[at] & 0xFF) - SPOT_DEPTH * (1 - distance * distance);
          pixels[at] = (byte) Math.max(0, Math.round(gray));
        }
      }
    }
  }
}
