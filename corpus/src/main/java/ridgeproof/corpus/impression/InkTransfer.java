package ridgeproof.corpus.impression;

import java.util.List;
import java.util.Optional;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.TrueMinutia;
import ridgeproof.corpus.finger.TrueRidgeMask;
import ridgeproof.corpus.finger.TrueSingularPoint;
import ridgeproof.corpus.finger.ValueNoise;

/**
 * One finger leaving its mark on a platen. Ink takes where the skin, roughened by a grain that is
 * new for each impression, stands higher than a threshold which pressure lowers; so ridges thicken
 * in the middle and fade into broken lines at the edge.
 */
final class InkTransfer {

  private static final int CELL = 16;
  private static final int FRACTION = 16;

  /** Height of skin, of 127, that the most uneven pressure lacks at the outline. */
  private static final double UNEVEN = 45;

  /** Where the film of sweat is thickest, and how far it reaches, in spreads of the contact. */
  private static final double RIM = 1.1;

  private static final double RIM_BREADTH = 0.45;

  /** Of the light that it takes at most. */
  private static final double HAZE = 0.35;

  private final Platen platen;
  private final MasterFinger finger;
  private final SkinContact contact;
  private final Placement placement;
  private final CaptureParameters conditions;
  private final int grainCell;
  private int left;
  private int top;
  private int right;
  private int bottom;

  InkTransfer(
      Platen platen,
      MasterFinger finger,
      SkinContact contact,
      Placement placement,
      CaptureParameters conditions,
      int ppi) {
    this.platen = platen;
    this.finger = finger;
    this.contact = contact;
    this.placement = placement;
    this.conditions = conditions;
    this.grainCell = ppi >= 1000 ? 4 : 2;
    findExtent();
  }

  private void findExtent() {
    double[] image = new double[2];
    double minX = Double.MAX_VALUE;
    double minY = Double.MAX_VALUE;
    double maxX = -Double.MAX_VALUE;
    double maxY = -Double.MAX_VALUE;
    for (int i = 0; i <= 8; i++) {
      for (int j = 0; j <= 8; j++) {
        double x = contact.centerX + (i / 4.0 - 1) * (contact.halfWidth + 45);
        double y = contact.top() - 40 + j / 8.0 * (contact.bottom() - contact.top() + 80);
        placement.toImage(x, y, image);
        minX = Math.min(minX, image[0]);
        maxX = Math.max(maxX, image[0]);
        minY = Math.min(minY, image[1]);
        maxY = Math.max(maxY, image[1]);
      }
    }
    // Whole cells of the mask, so that what is marked is what was pressed.
    left =
        (int) Math.max(0, Math.min(platen.width(), minX))
            / TrueRidgeMask.CELL_PX
            * TrueRidgeMask.CELL_PX;
    top =
        (int) Math.max(0, Math.min(platen.height(), minY))
            / TrueRidgeMask.CELL_PX
            * TrueRidgeMask.CELL_PX;
    right = (int) Math.max(left, Math.min(platen.width(), maxX));
    bottom = (int) Math.max(top, Math.min(platen.height(), maxY));
  }

  /** Darkens the platen and, unless {@code mask} is null, marks where ridges show. */
  void press(double depth, TrueRidgeMask.Builder mask, SeededRandom dice) {
    int columns = (right - left + CELL - 1) / CELL;
    int rows = (bottom - top + CELL - 1) / CELL;
    if (columns == 0 || rows == 0) {
      return;
    }
    int stride = columns + 1;
    int nodes = stride * (rows + 1);
    int[] skinX = new int[nodes];
    int[] skinY = new int[nodes];
    int[] level = new int[nodes];
    layNodes(stride, rows + 1, skinX, skinY, level, dice);
    if (conditions.halo > 0) {
      haze(columns, rows, depth, new SeededRandom(dice.next(), 32));
    }
    byte[] specks =
        conditions.speckle > 0
            ? Specks.of(
                columns * CELL, rows * CELL, conditions.speckle, new SeededRandom(dice.next(), 33))
            : new byte[0];
    int[] ink = inkTable(depth);
    byte[] grain = ValueNoise.of(columns * CELL, rows * CELL, grainCell, dice);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int node = row * stride + column;
        int lowest =
            Math.min(
                Math.min(level[node], level[node + 1]),
                Math.min(level[node + stride], level[node + stride + 1]));
        if (lowest >> FRACTION > 127 + conditions.grain) {
          continue;
        }
        pressCell(
            column, row, node, stride, skinX, skinY, level, ink, grain, specks, columns * CELL);
        if (mask != null && lowest >> FRACTION < 85) {
          int x = left + column * CELL;
          int y = top + row * CELL;
          mask.mark(x, y, Math.min(right, x + CELL), Math.min(bottom, y + CELL));
        }
      }
    }
  }

  private void layNodes(
      int columns, int rows, int[] skinX, int[] skinY, int[] level, SeededRandom dice) {
    byte[] wide = ValueNoise.of(columns, rows, 4, dice);
    byte[] narrow = ValueNoise.of(columns, rows, 1, dice);
    double[] skin = new double[2];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int node = row * columns + column;
        placement.toSkin(left + column * CELL, top + row * CELL, skin);
        skinX[node] = (int) Math.rint(skin[0] * (1 << FRACTION));
        skinY[node] = (int) Math.rint(skin[1] * (1 << FRACTION));
        double lack = 1 - contact.pressure(skin[0], skin[1]);
        lack *= 1 + 0.0022 * narrow[node];
        double patch = (0.65 * wide[node] + 0.35 * narrow[node]) / 127 * conditions.blotches * 1.8;
        double needed = conditions.threshold + 95 * lack * Math.abs(lack) + patch;
        needed += unevenness(skin[0], skin[1]);
        level[node] = (int) Math.rint(Math.min(500, needed) * (1 << FRACTION));
      }
    }
  }

  /** Height of skin, of 127, that is lacking on the side that is pressed less. */
  private double unevenness(double skinX, double skinY) {
    double across = (skinX - contact.centerX) / contact.halfWidth;
    double along = (skinY - contact.centerY) / contact.halfHeight;
    double aside =
        across * StrictMath.cos(conditions.liftedTowards)
            + along * StrictMath.sin(conditions.liftedTowards);
    return conditions.unevenness * UNEVEN * aside;
  }

  /** A film of sweat dims the platen along the outline of the print. */
  private void haze(int columns, int rows, double depth, SeededRandom dice) {
    byte[] patches = ValueNoise.of(columns * CELL, rows * CELL, 40, dice);
    double[] skin = new double[2];
    for (int y = top; y < Math.min(bottom, top + rows * CELL); y++) {
      for (int x = left; x < Math.min(right, left + columns * CELL); x++) {
        placement.toSkin(x, y, skin);
        double off = Math.abs(contact.spread(skin[0], skin[1]) - RIM) / RIM_BREADTH;
        if (off < 1) {
          double patch = 0.6 + patches[(y - top) * columns * CELL + x - left] / 200.0;
          double lost = HAZE * conditions.halo * depth * (1 - off * off) * Math.max(0, patch);
          int at = y * platen.width() + x;
          platen.pixels()[at] = (byte) ((platen.pixels()[at] & 0xFF) * (1 - lost));
        }
      }
    }
  }

  private void pressCell(
      int column,
      int row,
      int node,
      int stride,
      int[] skinX,
      int[] skinY,
      int[] level,
      int[] ink,
      byte[] grain,
      byte[] specks,
      int grainStride) {
    byte[] relief = finger.relief();
    byte[] gray = platen.pixels();
    int skinWidth = finger.anatomy().canvasWidth();
    int skinHeight = finger.anatomy().canvasHeight();
    int grainGain = (int) Math.rint(conditions.grain * 2);
    int last = Math.min(CELL, right - left - column * CELL);
    int down = Math.min(CELL, bottom - top - row * CELL);
    for (int y = 0; y < down; y++) {
      int u = along(skinX, node, stride, y);
      int v = along(skinY, node, stride, y);
      int t = along(level, node, stride, y);
      int du = (along(skinX, node + 1, stride, y) - u) / CELL;
      int dv = (along(skinY, node + 1, stride, y) - v) / CELL;
      int dt = (along(level, node + 1, stride, y) - t) / CELL;
      int at = (top + row * CELL + y) * platen.width() + left + column * CELL;
      int grainAt = (row * CELL + y) * grainStride + column * CELL;
      for (int x = 0; x < last; x++, u += du, v += dv, t += dt) {
        int sx = u >> FRACTION;
        int sy = v >> FRACTION;
        if (sx < 0 || sy < 0 || sx >= skinWidth - 1 || sy >= skinHeight - 1) {
          continue;
        }
        int place = sy * skinWidth + sx;
        int fx = (u >> (FRACTION - 6)) & 63;
        int fy = (v >> (FRACTION - 6)) & 63;
        int above = (relief[place] << 6) + fx * (relief[place + 1] - relief[place]);
        int next = place + skinWidth;
        int below = (relief[next] << 6) + fx * (relief[next + 1] - relief[next]);
        int height = ((above << 6) + fy * (below - above)) >> 12;
        int rough = (grain[grainAt + x] * grainGain) >> 8;
        if (specks.length > 0) {
          rough += specks[grainAt + x];
        }
        int over = height + rough - (t >> FRACTION) + 512;
        int taken = ink[Math.max(0, Math.min(1023, over))];
        gray[at + x] = (byte) (((gray[at + x] & 0xFF) * (256 - taken)) >> 8);
      }
    }
  }

  private static int along(int[] grid, int node, int stride, int y) {
    return grid[node] + (grid[node + stride] - grid[node]) / CELL * y;
  }

  /** How much of the light is lost, of 256, for each height above the threshold plus 512. */
  private int[] inkTable(double depth) {
    int[] table = new int[1024];
    for (int i = 0; i < table.length; i++) {
      double over = (i - 512) / conditions.softness;
      double share = Math.max(0, Math.min(1, 0.5 + 0.5 * over));
      double full = share * share * (3 - 2 * share);
      double thick = 0.74 + 0.26 * Math.max(0, Math.min(1, (over - 0.2) / 2));
      // Skin that nearly touches dims the valleys.
      double haze = 0.09 * Math.max(0, Math.min(1, (over + 2.6) / 1.6));
      table[i] = (int) Math.rint(256 * depth * Math.max(haze, full * thick));
    }
    return table;
  }

  /** Adds to the lists what of the finger's ground truth the mask shows. */
  void tell(
      TrueRidgeMask mask, List<TrueMinutia> minutiae, List<TrueSingularPoint> singularPoints) {
    double[] image = new double[2];
    for (TrueMinutia m : finger.groundTruth().minutiae()) {
      if (shows(mask, m.x(), m.y(), image)) {
        double x = image[0];
        double y = image[1];
        double angle = StrictMath.toRadians(m.angleDegrees());
        double aheadX = m.x() + 3 * StrictMath.cos(angle);
        double aheadY = m.y() - 3 * StrictMath.sin(angle);
        if (placement.toImage(aheadX, aheadY, image)) {
          double turned = StrictMath.toDegrees(StrictMath.atan2(y - image[1], image[0] - x));
          minutiae.add(new TrueMinutia(x, y, turned < 0 ? turned + 360 : turned, m.kind()));
        }
      }
    }
    for (TrueSingularPoint point : finger.groundTruth().singularPoints()) {
      if (shows(mask, point.x(), point.y(), image)) {
        singularPoints.add(new TrueSingularPoint(image[0], image[1], point.kind()));
      }
    }
  }

  private boolean shows(TrueRidgeMask mask, double x, double y, double[] image) {
    return placement.toImage(x, y, image)
        && image[0] >= 0
        && image[1] >= 0
        && image[0] < platen.width()
        && image[1] < platen.height()
        && mask.contains(image[0], image[1]);
  }

  /** The box around the print above the flexion crease; empty when none of it is in the image. */
  Optional<FingerBox> box() {
    double[] image = new double[2];
    double minX = Double.MAX_VALUE;
    double minY = Double.MAX_VALUE;
    double maxX = -Double.MAX_VALUE;
    double maxY = -Double.MAX_VALUE;
    for (int i = 0; i < 72; i++) {
      double cos = StrictMath.cos(i * Math.PI / 36);
      double sin = StrictMath.sin(i * Math.PI / 36);
      double inner = 0;
      double outer = 1.6;
      for (int step = 0; step < 14; step++) {
        double middle = (inner + outer) / 2;
        boolean inside =
            contact.spread(
                    contact.centerX + middle * cos * contact.halfWidth,
                    contact.centerY + middle * sin * contact.halfHeight)
                < 1;
        inner = inside ? middle : inner;
        outer = inside ? outer : middle;
      }
      placement.toImage(
          contact.centerX + inner * cos * contact.halfWidth,
          Math.min(finger.anatomy().lengthPx(), contact.centerY + inner * sin * contact.halfHeight),
          image);
      minX = Math.min(minX, image[0]);
      maxX = Math.max(maxX, image[0]);
      minY = Math.min(minY, image[1]);
      maxY = Math.max(maxY, image[1]);
    }
    int boxLeft = (int) Math.max(0, minX);
    int boxTop = (int) Math.max(0, minY);
    int boxRight = (int) Math.min(platen.width() - 1, maxX);
    int boxBottom = (int) Math.min(platen.height() - 1, maxY);
    if (boxLeft >= boxRight || boxTop >= boxBottom) {
      return Optional.empty();
    }
    return Optional.of(
        new FingerBox(finger.digit(), boxLeft, boxTop, boxRight, boxBottom, placement.degrees()));
  }
}
