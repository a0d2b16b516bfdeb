package ridgeproof.corpus.impression;

import ridgeproof.corpus.finger.FingerAnatomy;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.finger.TrigTables;

/**
 * How firmly each part of a finger touches the platen. A rolled print shows the skin from nail edge
 * to nail edge, a plain one an oval in the middle; both may show some of the phalanx below the
 * flexion crease.
 */
final class SkinContact {

  /** How the finger is laid down. */
  enum Manner {
    ROLLED(0.482, 0.055, 1.05, 0.86),
    PLAIN(0.295, 0.08, 0.99, 0.7);

    final double halfWidth;
    final double top;
    final double bottom;
    final double belowCrease;

    Manner(double halfWidth, double top, double bottom, double belowCrease) {
      this.halfWidth = halfWidth;
      this.top = top;
      this.bottom = bottom;
      this.belowCrease = belowCrease;
    }
  }

  /** Of its breadth that the lightest plain print loses. */
  private static final double NARROWEST = 0.34;

  /** The same of its length. */
  private static final double SHORTEST = 0.14;

  private final Manner manner;
  final double centerX;
  final double centerY;
  final double halfWidth;
  final double halfHeight;
  private final int canvasWidth;
  private final double lowerCenterY;
  private final double lowerHalfHeight;
  private final double cutTop;
  private final double cutBottom;
  private final double liftX;
  private final double liftHalfGap;
  private final double slant;
  private final double sideWave;
  private final double endWave;

  SkinContact(Manner manner, MasterFinger finger, CaptureParameters c, SeededRandom dice) {
    FingerAnatomy anatomy = finger.anatomy();
    double length = anatomy.lengthPx();
    this.manner = manner;
    this.canvasWidth = anatomy.canvasWidth();
    this.centerX = anatomy.canvasWidth() / 2.0 + c.contactOffset * anatomy.widthPx();
    this.centerY = length * (manner.top + manner.bottom) / 2 + dice.around(0, 0.012) * length;
    double touching = manner == Manner.PLAIN ? 1 - NARROWEST * c.lightness : 1;
    this.halfWidth =
        manner.halfWidth * anatomy.widthPx() * c.contactWidth * c.contactSize * touching;
    double reaching = manner == Manner.PLAIN ? 1 - SHORTEST * c.lightness : 1;
    this.halfHeight = length * (manner.bottom - manner.top) / 2 * c.contactSize * reaching;
    double reach = anatomy.canvasHeight() - length;
    // A small contact area never reaches below the crease.
    this.lowerHalfHeight = c.contactSize < 0.85 ? 0 : reach * dice.between(0.22, 0.52);
    this.lowerCenterY = length + 0.85 * lowerHalfHeight + 4;
    this.cutTop = finger.centerY() + c.cutAboveCorePx;
    this.cutBottom = finger.centerY() - c.cutBelowCorePx;
    this.liftX = centerX + c.liftAt * anatomy.widthPx();
    this.liftHalfGap = c.liftGapPx / 2;
    this.slant = dice.around(0, 0.06);
    this.sideWave = dice.between(0, 2 * Math.PI);
    this.endWave = dice.between(0, 2 * Math.PI);
  }

  double liftX() {
    return liftX;
  }

  double top() {
    return centerY - halfHeight;
  }

  double bottom() {
    return lowerHalfHeight > 0 ? lowerCenterY + lowerHalfHeight : centerY + halfHeight;
  }

  /** 0 in the middle of the print above the flexion crease, 1 on its outline. */
  double spread(double x, double y) {
    double across = (x - centerX) / halfWidth - slant * (y - centerY) / halfHeight;
    double along = (y - centerY) / halfHeight;
    // Nobody's outline is regular: two slow waves run along the sides and along the ends.
    double straight = across;
    across *= 1 + wobble(along, sideWave);
    along *= 1 + wobble(straight, endWave);
    double across2 = across * across;
    double along2 = along * along;
    if (manner == Manner.ROLLED) {
      // Towards the tip a rolled print narrows a little.
      double narrow = 1 + 0.16 * Math.max(0, -along) * Math.max(0, -along);
      across2 *= narrow * narrow;
      return across2 * across2 * across2 + along2 * along2 * along2;
    }
    return 0.5 * (across2 + across2 * across2) + 0.5 * (along2 + along2 * along2);
  }

  private double wobble(double along, double phase) {
    float slow = (float) (2.3 * along + phase);
    float fast = (float) (5.9 * along - 2 * phase);
    return 0.035 * TrigTables.sin(slow) + 0.022 * TrigTables.sin(fast);
  }

  /** 1 under full pressure, 0 on the outline, below 0 outside it. */
  double pressure(double x, double y) {
    double steepness = manner == Manner.ROLLED ? 1.5 : 2.2;
    double firm = steepness * (1 - spread(x, y));
    if (lowerHalfHeight > 0) {
      double across = (x - centerX) / (halfWidth * manner.belowCrease);
      double along = (y - lowerCenterY) / lowerHalfHeight;
      double lower = across * across * across * across + along * along;
      firm = Math.max(firm, 1.2 * (1 - lower) - 0.15);
    }
    firm = Math.min(firm, Math.min(x - 6, canvasWidth - 6 - x) / 18);
    firm = Math.min(firm, (y - cutTop) / 25);
    firm = Math.min(firm, (cutBottom - y) / 25);
    if (liftHalfGap > 0) {
      firm = Math.min(firm, (Math.abs(x - liftX) - liftHalfGap) / 14);
    }
    return Math.min(1, firm);
  }
}
