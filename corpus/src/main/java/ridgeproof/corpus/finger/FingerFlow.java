package ridgeproof.corpus.finger;

import java.util.ArrayList;
import java.util.List;

/**
 * Ridge orientation and period over the skin of one finger.
 *
 * <p>Orientation is the zero-pole model of Sherlock and Monro, "A model for interpreting
 * fingerprint topology", Pattern Recognition 26(7), 1993: half the sum of the arguments seen from
 * the cores less those seen from the deltas. Each argument is first bent by a periodic function of
 * itself, after Vizcaya and Gerhardt, "A nonlinear orientation model for global description of
 * fingerprints", Pattern Recognition 29(7), 1996; theirs is piecewise linear, here it is a short
 * sine series, which has no corners. A smooth term bends ridges around the finger tip; plain arches
 * consist of such a term alone, after Cappelli et al., "Synthetic fingerprint-image generation",
 * ICPR 2000. All from memory.
 */
final class FingerFlow {

  private static final int RIPPLES = 4;

  private final TruePatternClass pattern;
  private final FingerAnatomy anatomy;
  private final List<TrueSingularPoint> points = new ArrayList<>();
  private final double[][] bends;
  private final double[][] ripples = new double[2 * RIPPLES][];
  private final double tipBend;
  private final double archSteepness;
  private final double archWidth;
  private final double tilt;
  private final double lean;
  private final double meanPeriod;
  private final double centerX;
  private final double centerY;
  private final double baseY;

  FingerFlow(TruePatternClass pattern, FingerAnatomy anatomy, SeededRandom dice) {
    this.pattern = pattern;
    this.anatomy = anatomy;
    double scale = anatomy.widthPx() / 520.0;
    this.centerX = anatomy.canvasWidth() / 2.0 + dice.around(0, 10);
    this.centerY = anatomy.lengthPx() * dice.around(0.46, 0.025);
    placeSingularities(scale, dice);
    double lowest = centerY + 90 * scale;
    for (TrueSingularPoint point : points) {
      lowest = Math.max(lowest, point.y());
    }
    this.baseY = lowest;
    this.bends = new double[points.size()][];
    for (int i = 0; i < bends.length; i++) {
      bends[i] =
          new double[] {
            dice.around(0, 0.07), dice.around(0, 0.05), dice.around(0, 0.07), dice.around(0, 0.05)
          };
      straightenLegs(i, dice.between(0.35, 0.7));
    }
    for (int i = 0; i < ripples.length; i++) {
      double wavelength = dice.between(130, 380);
      double heading = dice.between(0, 2 * Math.PI);
      ripples[i] =
          new double[] {
            2 * Math.PI / wavelength * StrictMath.cos(heading),
            2 * Math.PI / wavelength * StrictMath.sin(heading),
            dice.between(0, 2 * Math.PI)
          };
    }
    this.tipBend = dice.between(0.32, 0.6);
    this.archSteepness = dice.between(0.6, 1.0);
    this.archWidth = dice.between(0.22, 0.42);
    this.tilt = dice.around(0, 0.04);
    this.lean = dice.between(0.15, 0.4);
    this.meanPeriod = anatomy.ridgePeriodPx();
  }

  /**
   * The plain model surrounds a core with parabolas; in real skin the legs of the innermost ridges
   * run side by side, so most of the turn is moved to the far side of the core.
   */
  private void straightenLegs(int index, double strength) {
    TrueSingularPoint point = points.get(index);
    if (point.kind() == TrueSingularPoint.Kind.DELTA) {
      return;
    }
    double towards =
        switch (pattern) {
          case LEFT_LOOP -> StrictMath.toRadians(-110);
          case RIGHT_LOOP -> StrictMath.toRadians(-70);
          default -> point.y() > centerY && points.size() == 4 ? Math.PI / 2 : -Math.PI / 2;
        };
    bends[index][0] -= strength * StrictMath.cos(towards);
    bends[index][2] += strength * StrictMath.sin(towards);
  }

  List<TrueSingularPoint> singularPoints() {
    return List.copyOf(points);
  }

  double centerX() {
    return centerX;
  }

  double centerY() {
    return centerY;
  }

  private void placeSingularities(double scale, SeededRandom dice) {
    switch (pattern) {
      case PLAIN_ARCH -> {}
      case TENTED_ARCH -> {
        double height = dice.between(55, 105) * scale;
        add(0, 0.35 * height, TrueSingularPoint.Kind.CORE);
        add(dice.around(0, 5), 1.35 * height, TrueSingularPoint.Kind.DELTA);
      }
      case LEFT_LOOP, RIGHT_LOOP -> {
        double side = pattern == TruePatternClass.LEFT_LOOP ? 1 : -1;
        add(0, 0, TrueSingularPoint.Kind.CORE);
        add(
            side * dice.between(85, 165) * scale,
            dice.between(125, 190) * scale,
            TrueSingularPoint.Kind.DELTA);
      }
      case PLAIN_WHORL -> {
        double gap = dice.between(12, 55) * scale;
        double lean = dice.around(0, 0.3) * gap;
        add(-lean / 2, -gap / 2, TrueSingularPoint.Kind.CORE);
        add(lean / 2, gap / 2, TrueSingularPoint.Kind.CORE);
        addWhorlDeltas(scale, dice);
      }
      case DOUBLE_LOOP -> {
        double gap = dice.between(60, 105) * scale;
        double lean = (dice.chance(0.5) ? 1 : -1) * dice.between(0.6, 1.1) * gap;
        add(-lean / 2, -gap / 2, TrueSingularPoint.Kind.CORE);
        add(lean / 2, gap / 2, TrueSingularPoint.Kind.CORE);
        addWhorlDeltas(scale, dice);
      }
    }
  }

  private void addWhorlDeltas(double scale, SeededRandom dice) {
    double depth = dice.between(130, 180) * scale;
    add(
        -dice.between(120, 190) * scale,
        depth + dice.around(0, 12) * scale,
        TrueSingularPoint.Kind.DELTA);
    add(
        dice.between(120, 190) * scale,
        depth + dice.around(0, 12) * scale,
        TrueSingularPoint.Kind.DELTA);
  }

  private void add(double right, double down, TrueSingularPoint.Kind kind) {
    points.add(new TrueSingularPoint(centerX + right, centerY + down, kind));
  }

  /**
   * The part of the orientation that has no singular point, in radians, y upwards; smooth enough to
   * be sampled sparsely.
   */
  double smoothAngle(double x, double y) {
    return tipTerm(x, y) + loopLean(x, y) + tilt + 0.08 * ripple(x, y, 0);
  }

  /**
   * The unit vector at twice the ridge angle, y upwards: each core and delta contributes its bent
   * argument as a turn, so that no arc tangent is needed.
   *
   * @param smoothAngle {@link #smoothAngle} there
   * @param doubled receives cosine and sine
   */
  void doubledDirection(double x, double y, double smoothAngle, double[] doubled) {
    double real = 1;
    double imaginary = 0;
    double bent = 2 * smoothAngle;
    for (int i = 0; i < bends.length; i++) {
      TrueSingularPoint point = points.get(i);
      double dx = x - point.x();
      double dy = point.y() - y;
      double distance = Math.sqrt(dx * dx + dy * dy) + 1e-9;
      double cos = dx / distance;
      double sin = dy / distance;
      double sign = point.kind() == TrueSingularPoint.Kind.CORE ? 1 : -1;
      double[] bend = bends[i];
      bent +=
          sign
              * (bend[0] * sin + bend[1] * 2 * sin * cos + bend[2] * cos + bend[3] * 2 * cos * cos);
      double turned = real * cos - sign * imaginary * sin;
      imaginary = imaginary * cos + sign * real * sin;
      real = turned;
    }
    float cos = TrigTables.cos((float) bent);
    float sin = TrigTables.sin((float) bent);
    doubled[0] = real * cos - imaginary * sin;
    doubled[1] = real * sin + imaginary * cos;
  }

  /** Stands the axis of a loop more upright than the pair of core and delta alone would. */
  private double loopLean(double x, double y) {
    if (pattern != TruePatternClass.LEFT_LOOP && pattern != TruePatternClass.RIGHT_LOOP) {
      return 0;
    }
    double dx = (x - centerX) / 120;
    double dy = (y - centerY) / 120;
    double side = pattern == TruePatternClass.LEFT_LOOP ? 1 : -1;
    return side * lean * StrictMath.exp(-dx * dx - dy * dy);
  }

  private double tipTerm(double x, double y) {
    double aside = 2 * (x - centerX) / anatomy.widthPx();
    double above = (centerY - y) / anatomy.lengthPx();
    double below = (y - baseY) / anatomy.lengthPx();
    if (pattern == TruePatternClass.PLAIN_ARCH) {
      double width = archWidth + 0.9 * Math.max(0, above);
      double fade = 1 / (1 + StrictMath.exp(12 * (below + 0.05)));
      double steep = archSteepness * (0.06 + 0.94 * fade) + 0.35 * Math.max(0, above);
      return -steep * aside / Math.sqrt(aside * aside + width * width);
    }
    double fade = 1 / (1 + StrictMath.exp(14 * (below + 0.02)));
    double strength = tipBend * fade + 0.25 * Math.max(0, above);
    if (pattern == TruePatternClass.TENTED_ARCH) {
      strength += 0.2 * fade;
    }
    return -strength * aside / Math.sqrt(0.35 + 0.65 * aside * aside);
  }

  /** The distance from ridge to ridge in pixels at 500 ppi. */
  double period(double x, double y) {
    double below = (y - baseY) / anatomy.lengthPx();
    double above = (centerY - y) / anatomy.lengthPx();
    double regional = 1 + 0.10 / (1 + StrictMath.exp(-12 * below)) - 0.08 * Math.max(0, above);
    return meanPeriod * regional * (1 + 0.045 * ripple(x, y, RIPPLES));
  }

  private double ripple(double x, double y, int first) {
    double sum = 0;
    for (int i = first; i < first + RIPPLES; i++) {
      double[] wave = ripples[i];
      sum += StrictMath.sin(wave[0] * x + wave[1] * y + wave[2]);
    }
    return sum / 1.4;
  }
}
