package ridgeproof.corpus.impression;

import ridgeproof.corpus.finger.SeededRandom;

/**
 * What goes wrong when a finger is captured. Each defect takes a strength from 0, nothing, to 1,
 * the worst that is still met in practice; several may be combined. They are those that published
 * guidance on taking legible fingerprints warns of (common practice).
 */
public enum CaptureDefect {
  /** Ridges break up and grow pale. */
  TOO_DRY(
      (c, s, dice) -> {
        c.threshold += 42 * s;
        c.grain *= 1 + 2.6 * s;
        c.depth *= 1 - 0.38 * s;
        c.blotches += 30 * s;
      }),
  /** Moisture or pressure fills the valleys: ridges merge, the print darkens. */
  TOO_WET(
      (c, s, dice) -> {
        c.threshold -= 105 * s;
        c.depth += (0.95 - c.depth) * s;
        c.grain *= 1 - 0.4 * s;
        c.blotches += 55 * s;
        c.blurSigmaPx += 0.9 * s;
      }),
  /** The finger slides: ridges are sheared and smeared along the motion. */
  SLIPPAGE(
      (c, s, dice) -> {
        c.shear += (dice.chance(0.5) ? 1 : -1) * 0.35 * s;
        c.smearPx += 26 * s;
        c.smearHeading = dice.between(0, Math.PI);
      }),
  /** Only the middle of the finger touches: at full strength narrower than a plain print. */
  ROLL_NOT_WIDE(
      (c, s, dice) -> {
        c.contactWidth *= 1 - 0.62 * s;
        c.contactOffset += dice.between(-0.12, 0.12) * s;
      }),
  /** The finger leaves the platen on the way and is set down again a little off. */
  LIFTED_DURING_ROLL(
      (c, s, dice) -> {
        c.liftGapPx += 10 + 90 * s;
        c.liftAt = dice.between(-0.3, 0.3);
        c.liftJumpXPx = (dice.chance(0.5) ? 1 : -1) * (6 + 24 * s);
        c.liftJumpYPx = dice.around(0, 1) * 20 * s;
      }),
  /** The finger is placed so high or so low that its core is not on the platen. */
  CORE_MISSING(
      (c, s, dice) -> {
        if (dice.chance(0.5)) {
          c.cutAboveCorePx = -230 + 300 * s;
        } else {
          c.cutBelowCorePx = -230 + 290 * s;
        }
      }),
  /** The finger is not upright: up to 45 degrees either way. */
  ROTATED((c, s, dice) -> c.rotationDegrees += (dice.chance(0.5) ? 45 : -45) * s),
  /** Part of the print lies outside the image, at full strength more than half of it. */
  CLIPPED_AT_BORDER(
      (c, s, dice) -> {
        double side = dice.chance(0.5) ? 1 : -1;
        if (dice.chance(0.6)) {
          c.frameShiftX += side * 0.55 * s;
        } else {
          c.frameShiftY += side * 0.55 * s;
        }
      }),
  /** Out of focus. */
  BLURRED((c, s, dice) -> c.blurSigmaPx += 4.2 * s),
  /** Ridges and background move towards the same gray. */
  LOW_CONTRAST((c, s, dice) -> c.contrast *= 1 - 0.9 * s),
  /** Scanned finer than the label says: at full strength 1000 ppi labelled 500. */
  WRONG_RESOLUTION((c, s, dice) -> c.scaleError *= 1 + s),
  /** So small a part of the skin touches that few minutiae are seen. */
  TOO_FEW_MINUTIAE((c, s, dice) -> c.contactSize *= 1 - 0.78 * s),
  /** The print that the last person left on the platen shows through. */
  LATENT_GHOST((c, s, dice) -> c.ghost += 0.55 * s),
  /** No finger: at full strength nothing but the platen. */
  BLANK((c, s, dice) -> c.depth *= 1 - s);

  /** How a defect changes the conditions of a capture. */
  private interface Effect {
    void spoil(CaptureParameters conditions, double strength, SeededRandom dice);
  }

  private final Effect effect;

  CaptureDefect(Effect effect) {
    this.effect = effect;
  }

  /**
   * Whether it can befall a print of this kind: only a roll is rolled too little or interrupted.
   */
  public boolean befalls(boolean rolled) {
    return rolled || this != ROLL_NOT_WIDE && this != LIFTED_DURING_ROLL;
  }

  void spoil(CaptureParameters conditions, double strength, SeededRandom dice) {
    effect.spoil(conditions, strength, dice);
  }
}
