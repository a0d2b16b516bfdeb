package ridgeproof.corpus.finger;

import ridgeproof.spec.layout.FingerPosition;

/**
 * Which finger of a hand, from the thumb on. The sizes are typical adult ones in pixels at 500 ppi
 * (common practice): the width of the skin from nail edge to nail edge laid flat, the length of the
 * last phalanx from tip to flexion crease, and how far the tip lies below the middle finger's when
 * the hand is held straight.
 */
public enum Digit {
  THUMB(600, 540, 0, 1.04),
  INDEX(520, 470, 130, 1.00),
  MIDDLE(535, 490, 0, 1.00),
  RING(515, 475, 95, 0.99),
  LITTLE(450, 415, 420, 0.95);

  public final int widthPx;
  public final int lengthPx;
  public final int tipDropPx;
  final double ridgeBreadth;

  Digit(int widthPx, int lengthPx, int tipDropPx, double ridgeBreadth) {
    this.widthPx = widthPx;
    this.lengthPx = lengthPx;
    this.tipDropPx = tipDropPx;
    this.ridgeBreadth = ridgeBreadth;
  }

  /** Which one a finger is. */
  public static Digit of(FingerPosition finger) {
    return values()[finger.indexOnHand()];
  }
}
