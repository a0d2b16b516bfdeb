package ridgeproof.corpus.finger;

import ridgeproof.spec.layout.FingerPosition;

/**
 * The measures of one finger, in pixels at 500 ppi.
 *
 * @param widthPx skin from nail edge to nail edge
 * @param lengthPx tip to flexion crease
 * @param ridgePeriodPx mean distance from ridge to ridge; about 9 pixels, that is 0.46 mm (Maltoni
 *     et al., "Handbook of Fingerprint Recognition", from memory)
 * @param belowCrease skin kept below the flexion crease, as a share of the length
 */
public record FingerAnatomy(int widthPx, int lengthPx, double ridgePeriodPx, double belowCrease) {

  static FingerAnatomy draw(
      FingerPosition digit, double belowCrease, SeededRandom body, SeededRandom finger) {
    double build = body.around(1, 0.05);
    double breadth = body.around(9.1, 0.45);
    Digit kind = Digit.of(digit);
    return new FingerAnatomy(
        (int) (kind.widthPx * build * finger.around(1, 0.02)),
        (int) (kind.lengthPx * build * finger.around(1, 0.02)),
        breadth * kind.ridgeBreadth * finger.around(1, 0.015),
        belowCrease);
  }

  public int canvasWidth() {
    return widthPx + 44;
  }

  public int canvasHeight() {
    return (int) (lengthPx * (1 + belowCrease));
  }
}
