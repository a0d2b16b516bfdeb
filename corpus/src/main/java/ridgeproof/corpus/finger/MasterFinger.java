package ridgeproof.corpus.finger;

import java.util.ArrayList;
import java.util.List;
import ridgeproof.spec.layout.FingerPosition;

/**
 * The skin of one finger of a person who does not exist: everything that all its impressions have
 * in common. Immutable; a few hundred kilobytes.
 */
public final class MasterFinger {

  private final FingerPosition digit;
  private final TruePatternClass pattern;
  private final FingerAnatomy anatomy;
  private final byte[] relief;
  private final double centerX;
  private final double centerY;
  private final GroundTruth truth;

  private MasterFinger(
      FingerPosition digit,
      TruePatternClass pattern,
      FingerAnatomy anatomy,
      byte[] relief,
      FingerFlow flow,
      GroundTruth truth) {
    this.digit = digit;
    this.pattern = pattern;
    this.anatomy = anatomy;
    this.relief = relief;
    this.centerX = flow.centerX();
    this.centerY = flow.centerY();
    this.truth = truth;
  }

  /**
   * Grows a finger whose pattern class is drawn with the frequencies known for that finger.
   *
   * @param seed the person: the same seed gives ten fingers of one hand size and ridge breadth,
   *     each with a pattern of its own
   */
  public static MasterFinger grow(long seed, FingerPosition digit) {
    return grow(seed, digit, Skin.smooth());
  }

  /** Grows a finger whose pattern class is drawn, with what the years have left on it. */
  public static MasterFinger grow(long seed, FingerPosition digit, Skin skin) {
    TruePatternClass pattern =
        TruePatternClass.draw(digit, new SeededRandom(seed, 100 + digit.code()));
    return grow(seed, digit, pattern, skin);
  }

  /** Grows a finger with a given pattern class. */
  public static MasterFinger grow(long seed, FingerPosition digit, TruePatternClass pattern) {
    return grow(seed, digit, pattern, Skin.smooth());
  }

  private static MasterFinger grow(
      long seed, FingerPosition digit, TruePatternClass pattern, Skin skin) {
    SeededRandom dice = new SeededRandom(seed, digit.code());
    FingerAnatomy anatomy =
        FingerAnatomy.draw(digit, skin.belowCrease(), new SeededRandom(seed, 0), dice);
    FingerFlow flow = new FingerFlow(pattern, anatomy, dice);
    WaveField waves = new WaveField(flow, anatomy.canvasWidth(), anatomy.canvasHeight());
    // More seeds, more fronts that meet out of step; relaxing undoes some of what they leave. So
    // many of both leave 0.2 minutiae a square millimetre, as published of real skin.
    double more = (1 + skin.belowCrease()) / (1 + Skin.smooth().belowCrease());
    PhaseLattice lattice = new PhaseLattice(waves, dice, (int) (more * (450 + dice.below(650))), 8);
    float[] wave = lattice.paint(anatomy.canvasWidth(), anatomy.canvasHeight());
    GroundTruth truth = truthOf(anatomy, flow, lattice.minutiae(wave, anatomy.canvasWidth()));
    byte[] relief = SkinRelief.carve(wave, lattice, anatomy, dice);
    if (!skin.equals(Skin.smooth())) {
      relief = aged(relief, anatomy, skin, new SeededRandom(seed, 200 + digit.code()));
    }
    return new MasterFinger(digit, pattern, anatomy, relief, flow, truth);
  }

  private static byte[] aged(byte[] relief, FingerAnatomy anatomy, Skin skin, SeededRandom dice) {
    int width = anatomy.canvasWidth();
    byte[] patches = ValueNoise.of(width, anatomy.canvasHeight(), 60, dice);
    return SkinCarving.of(relief, patches, width, anatomy.canvasHeight(), skin, dice);
  }

  private static GroundTruth truthOf(
      FingerAnatomy anatomy, FingerFlow flow, List<TrueMinutia> spirals) {
    TrueRidgeMask.Builder mask =
        new TrueRidgeMask.Builder(anatomy.canvasWidth(), anatomy.canvasHeight());
    mask.mark(0, 0, anatomy.canvasWidth(), anatomy.lengthPx() - 16);
    mask.mark(0, anatomy.lengthPx() + 24, anatomy.canvasWidth(), anatomy.canvasHeight());
    TrueRidgeMask skin = mask.build();
    List<TrueMinutia> kept = new ArrayList<>();
    for (TrueMinutia spiral : spirals) {
      if (skin.contains(spiral.x(), spiral.y()) && standsAlone(spiral, spirals)) {
        kept.add(spiral);
      }
    }
    return new GroundTruth(kept, flow.singularPoints(), skin);
  }

  /** Two spirals less than a ridge apart undo each other: a nick in a ridge, not minutiae. */
  private static boolean standsAlone(TrueMinutia minutia, List<TrueMinutia> all) {
    for (TrueMinutia other : all) {
      double dx = other.x() - minutia.x();
      double dy = other.y() - minutia.y();
      if (other != minutia && dx * dx + dy * dy < 7 * 7) {
        return false;
      }
    }
    return true;
  }

  /** Which finger this is. */
  public FingerPosition digit() {
    return digit;
  }

  /** Its pattern class. */
  public TruePatternClass pattern() {
    return pattern;
  }

  /**
   * Minutiae, singular points and mask of the whole skin, in pixels at 500 ppi from the upper left
   * of the skin laid flat; impressions show part of it.
   */
  public GroundTruth groundTruth() {
    return truth;
  }

  /** Mean distance from ridge to ridge, in pixels at 500 ppi. */
  public double ridgePeriodPx() {
    return anatomy.ridgePeriodPx();
  }

  public FingerAnatomy anatomy() {
    return anatomy;
  }

  double centerX() {
    return centerX;
  }

  public double centerY() {
    return centerY;
  }

  /** Height of the skin, row by row, -127 to 127; callers must not write to it. */
  public byte[] relief() {
    return relief;
  }
}
