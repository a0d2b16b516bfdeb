package ridgeproof.ridges.quality;

import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import ridgeproof.ridges.pattern.PatternMeasure.PatternClass;
import ridgeproof.ridges.pattern.SingularPoint;
import ridgeproof.ridges.segmentation.Slap;

/**
 * One number that can be held against a limit, named as tables of limits name it. How each is made
 * is told beside the record that it stands in.
 */
public enum QualityMetric {
  AREA("area", "area of the print", Unit.MM2, m -> m.extent().areaMm2()),
  RIDGE_AREA("ridge-area", "area with clear ridges", Unit.MM2, m -> m.extent().ridgeAreaMm2()),
  CLEAR_SHARE(
      "clear-share",
      "share of the print with clear ridges",
      Unit.SHARE,
      m -> m.extent().areaMm2() <= 0 ? 0 : m.extent().ridgeAreaMm2() / m.extent().areaMm2()),
  WIDTH("width", "width of the print", Unit.MM, m -> m.extent().widthMm()),
  LENGTH("length", "length of the print", Unit.MM, m -> m.extent().lengthMm()),
  WIDTH_TO_LENGTH(
      "width-to-length",
      "width of the print divided by its length",
      Unit.RATIO,
      m -> m.extent().widthMm() / Math.max(1, m.extent().lengthMm())),
  CUT_TOP("cut-top", "print cut at the top edge", Unit.MM, m -> m.extent().edges().topMm()),
  CUT_RIGHT("cut-right", "print cut at the right edge", Unit.MM, m -> m.extent().edges().rightMm()),
  CUT_BOTTOM(
      "cut-bottom", "print cut at the bottom edge", Unit.MM, m -> m.extent().edges().bottomMm()),
  CUT_LEFT("cut-left", "print cut at the left edge", Unit.MM, m -> m.extent().edges().leftMm()),
  CERTAINTY("certainty", "certainty of ridge direction", Unit.SHARE, m -> m.flow().certainty()),
  ROUGHNESS(
      "roughness",
      "change of ridge direction between neighbors",
      Unit.DEGREES,
      m -> m.flow().roughness()),
  PERIOD("ridge-period", "ridge distance", Unit.MM, m -> m.flow().periodMm()),
  PERIOD_SPREAD(
      "period-spread", "variation of the ridge distance", Unit.SHARE, m -> m.flow().periodSpread()),
  DYNAMIC_RANGE(
      "dynamic-range", "number of gray levels", Unit.GRAY_LEVELS, m -> m.tone().dynamicRange()),
  CONTRAST(
      "contrast",
      "contrast between ridges and valleys",
      Unit.GRAY_LEVELS,
      m -> m.tone().contrast()),
  RIDGE_LEVEL(
      "ridge-level", "gray level of the ridges", Unit.GRAY_LEVELS, m -> m.tone().ridgeLevel()),
  VALLEY_LEVEL(
      "valley-level", "gray level of the valleys", Unit.GRAY_LEVELS, m -> m.tone().valleyLevel()),
  SURROUND_LEVEL(
      "surround-level",
      "gray level around the print",
      Unit.GRAY_LEVELS,
      m -> m.tone().surroundLevel() >= 0,
      m -> m.tone().surroundLevel()),
  RIDGE_SHARE(
      "ridge-share",
      "share of ridges in ridges and valleys",
      Unit.SHARE,
      m -> m.tone().ridgeShare()),
  DRY_SHARE("dry-share", "share of the print that is dry", Unit.SHARE, m -> m.tone().dryShare()),
  DARK_SHARE(
      "dark-share", "share of the print that is dark", Unit.SHARE, m -> m.tone().darkShare()),
  CLOSED_SHARE(
      "closed-share",
      "share of the print where ridges run together",
      Unit.SHARE,
      m -> m.tone().closedShare()),
  FAINT_SHARE(
      "faint-share", "share of the ridges that is faint", Unit.SHARE, m -> m.tone().faintShare()),
  MODULATION(
      "modulation",
      "ridge contrast relative to the depth of the print",
      Unit.SHARE,
      m -> m.tone().surroundLevel() >= 0,
      m -> m.tone().modulation()),
  CLARITY("clarity", "clarity of the ridges", Unit.SHARE, m -> m.clarity().clarity()),
  DOMINANCE("dominance", "evenness of the ridge pattern", Unit.SHARE, m -> m.clarity().dominance()),
  UNEVENNESS(
      "unevenness", "unevenness of the ridge widths", Unit.RATIO, m -> m.clarity().unevenness()),
  EDGE_WIDTH("edge-width", "width of the ridge edges", Unit.PIXELS, m -> m.clarity().edgePixels()),
  BLUR("blur", "softness of the ridge edges", Unit.RATIO, m -> m.clarity().blur()),
  GRAIN("grain", "detail finer than ridges", Unit.SHARE, m -> m.clarity().grain()),
  SMEAR_AREA("smear-area", "area of ink without ridges", Unit.MM2, m -> m.smear().areaMm2()),
  SMEAR_SHARE("smear-share", "share of ink without ridges", Unit.SHARE, m -> m.smear().share()),
  GAP_WIDTH("gap-width", "width of a gap in the print", Unit.MM, m -> m.gap().widthMm()),
  GAP_SHARE("gap-share", "share of the print split by a gap", Unit.SHARE, m -> m.gap().share()),
  CORES(
      "cores",
      "cores",
      Unit.COUNT,
      m -> m.pattern().points().stream().filter(p -> p.kind() == SingularPoint.Kind.CORE).count()),
  CORE_TO_BORDER(
      "core-to-border",
      "distance of the core from the border",
      Unit.MM,
      m -> m.pattern().core().isPresent(),
      m -> m.pattern().coreToBorderMm()),
  ROTATION("rotation", "tilt", Unit.DEGREES, m -> Math.abs(m.rotation().degrees())),
  ROTATION_CONFIDENCE(
      "rotation-confidence", "certainty of the tilt", Unit.SHARE, m -> m.rotation().confidence()),
  PATTERN_CONFIDENCE(
      "pattern-confidence",
      "certainty of the pattern",
      Unit.SHARE,
      m -> m.pattern().pattern() == PatternClass.UNKNOWN ? 0 : m.pattern().confidence()),
  MINUTIAE("minutiae", "minutiae", Unit.COUNT, m -> m.minutiae().count()),
  RELIABLE_MINUTIAE(
      "reliable-minutiae", "minutiae in clear ridges", Unit.COUNT, m -> m.minutiae().reliable()),
  MINUTIA_DENSITY(
      "minutia-density", "minutiae per square centimeter", Unit.PER_CM2, m -> m.minutiaDensity()),
  /** Of the whole analysis, see {@link FingerAnalysis#score}. */
  SCORE("score", "overall score", Unit.POINTS, m -> false, m -> 0),
  /** Across images: who has both prints asks {@link #rollToPlain}. */
  ROLL_TO_PLAIN_WIDTH(
      "roll-to-plain-width",
      "width of the rolled print divided by that of the plain print",
      Unit.RATIO,
      m -> false,
      m -> 0),
  /** Of an image of several, see {@link Slap#degrees}. */
  HAND_ROTATION("hand-rotation", "tilt of the hand", Unit.DEGREES, m -> false, m -> 0),
  /** Of an image of several, see {@link #handCoreToBorder}. */
  HAND_CORE_TO_BORDER(
      "hand-core-to-border",
      "median distance of the cores from the borders",
      Unit.MM,
      m -> false,
      m -> 0);

  /** What a measure is counted in. */
  public enum Unit {
    MM2("mm2"),
    MM("mm"),
    DEGREES("degrees"),
    GRAY_LEVELS("gray levels"),
    PIXELS("pixels"),
    /** Of 1. */
    SHARE("share"),
    /** One length over another; any number from 0. */
    RATIO("ratio"),
    COUNT("count"),
    PER_CM2("per cm2"),
    /** Of 100. */
    POINTS("points");

    private final String text;

    Unit(String text) {
      this.text = text;
    }

    @Override
    public String toString() {
      return text;
    }
  }

  private static final int MIN_OF_A_HAND = 3;

  private static final Map<String, QualityMetric> BY_KEY =
      Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(QualityMetric::key, m -> m));

  private final String key;
  private final String title;
  private final Unit unit;
  private final Predicate<FingerMeasures> measurable;
  private final ToDoubleFunction<FingerMeasures> value;

  QualityMetric(String key, String title, Unit unit, ToDoubleFunction<FingerMeasures> value) {
    this(key, title, unit, m -> true, value);
  }

  QualityMetric(
      String key,
      String title,
      Unit unit,
      Predicate<FingerMeasures> measurable,
      ToDoubleFunction<FingerMeasures> value) {
    this.key = key;
    this.title = title;
    this.unit = unit;
    this.measurable = measurable;
    this.value = value;
  }

  /** Its name in tables of limits. */
  public String key() {
    return key;
  }

  /** What a technician calls it. */
  public String title() {
    return title;
  }

  /** What it is counted in. */
  public Unit unit() {
    return unit;
  }

  /** Its value for one print; empty where it cannot be told, as the way to a core not found. */
  public OptionalDouble of(FingerAnalysis analysis) {
    if (this == SCORE) {
      return analysis.measures().isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(analysis.score().value());
    }
    return analysis.measures().filter(measurable).stream().mapToDouble(value).findFirst();
  }

  /** The measure of this name. */
  public static Optional<QualityMetric> ofKey(String key) {
    return Optional.ofNullable(BY_KEY.get(key));
  }

  /**
   * {@link #HAND_CORE_TO_BORDER} of the fingers of one image: a finger without a core counts as 0,
   * an arch, which has none, not at all; empty for fewer than three. One finger may lie badly, most
   * of a hand only when the hand was laid down too high or too low.
   */
  public static OptionalDouble handCoreToBorder(Collection<FingerAnalysis> fingers) {
    double[] distances =
        fingers.stream()
            .filter(QualityMetric::shouldHaveCore)
            .mapToDouble(finger -> CORE_TO_BORDER.of(finger).orElse(0))
            .sorted()
            .toArray();
    int middle = distances.length / 2;
    return distances.length < MIN_OF_A_HAND
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            distances.length % 2 == 1
                ? distances[middle]
                : (distances[middle - 1] + distances[middle]) / 2);
  }

  private static boolean shouldHaveCore(FingerAnalysis finger) {
    return finger.measures().filter(m -> m.pattern().pattern() != PatternClass.ARCH).isPresent();
  }

  /** {@link #ROLL_TO_PLAIN_WIDTH} of a roll and a plain print of the same finger. */
  public static OptionalDouble rollToPlain(FingerAnalysis roll, FingerAnalysis plain) {
    OptionalDouble rolled = WIDTH.of(roll);
    OptionalDouble flat = WIDTH.of(plain);
    return rolled.isEmpty() || flat.isEmpty() || flat.getAsDouble() <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(rolled.getAsDouble() / flat.getAsDouble());
  }
}
