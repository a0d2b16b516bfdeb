package ridgeproof.corpus.impression;

import java.util.Map;
import ridgeproof.corpus.finger.SeededRandom;

/**
 * The working values of one capture: what the settings ask for, then spoilt by each defect in turn.
 * Lengths are pixels at 500 ppi unless said otherwise; gray levels are of 255.
 */
final class CaptureParameters {

  /** Image pixels to one pixel at the labelled resolution. */
  double scaleError = 1;

  double rotationDegrees;
  double shiftX;
  double shiftY;

  /** Shift as a share of the frame. */
  double frameShiftX;

  double frameShiftY;

  double distortion;
  double shear;

  double liftGapPx;

  /** Where the roll is interrupted, as a share of the finger's width from its middle. */
  double liftAt;

  double liftJumpXPx;
  double liftJumpYPx;

  double contactWidth = 1;
  double contactSize = 1;

  /** Shift of the contact area as a share of the finger's width. */
  double contactOffset;

  /** No contact above this line, measured downwards from the core. */
  double cutAboveCorePx = -10_000;

  /** No contact below this line, measured upwards from the core. */
  double cutBelowCorePx = -10_000;

  /** Height of skin, of 127, from which ink takes. */
  double threshold;

  double softness = 70;
  double grain;
  double blotches = 24;

  /** Darkness of ink, 0 to 1. */
  double depth;

  double ghost;
  double paper;
  double noise;
  double blurSigmaPx;
  double smearPx;
  double smearHeading;
  double contrast = 1;

  /** Traces of the skin, see {@link ridgeproof.corpus.impression.Traces}. */
  double speckle;

  double halo;

  double unevenness;

  double lightness;

  /** Towards where the finger is pressed less, radians. */
  double liftedTowards;

  static CaptureParameters of(ImpressionSettings settings, SeededRandom dice) {
    CaptureParameters c = new CaptureParameters();
    double press = settings.pressure() - 0.5;
    double damp = settings.moisture() - 0.5;
    c.rotationDegrees = settings.rotationDegrees();
    c.shiftX = settings.shiftX();
    c.shiftY = settings.shiftY();
    c.distortion = settings.distortion();
    c.threshold = -4 - 75 * press - 45 * damp;
    c.grain = (58 - 60 * damp) * dice.between(0.8, 1.5);
    c.contactSize = 1 + 0.12 * press;
    c.depth = Math.min(0.95, (0.90 + 0.12 * press + 0.08 * damp) * settings.contrast());
    c.paper = dice.between(236, 250);
    c.noise = settings.sensorNoise();
    c.ghost = settings.previous().isPresent() ? 0.05 : 0;
    c.speckle = settings.traces().speckle();
    c.halo = settings.traces().halo();
    c.unevenness = settings.traces().unevenness();
    c.lightness = settings.traces().lightness();
    c.blotches += 120 * c.unevenness;
    c.liftedTowards = new SeededRandom(settings.seed(), 31).between(0, 2 * Math.PI);
    for (Map.Entry<CaptureDefect, Double> defect : settings.defects().entrySet()) {
      SeededRandom fate = new SeededRandom(settings.seed(), 1000 + defect.getKey().ordinal());
      if (defect.getValue() > 0) {
        defect.getKey().spoil(c, defect.getValue(), fate);
      }
    }
    return c;
  }
}
