package ridgeproof.corpus.impression;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.paper.Paper;

/**
 * How an impression is taken.
 *
 * @param seed everything about the impression that is left to chance
 * @param ppi resolution of the image, 500 or 1000 pixels per inch
 * @param frame size of the image at 500 ppi; when empty, the usual one for the kind of impression
 * @param rotationDegrees clockwise, -45 to 45
 * @param shiftX of the finger from the middle of the frame to the right, pixels at 500 ppi
 * @param shiftY likewise downwards
 * @param pressure 0 barely touching to 1 squeezed flat; 0.5 is good
 * @param moisture 0 dry to 1 wet; 0.5 is good
 * @param contrast 0 to 1: how dark ridges become
 * @param sensorNoise largest deviation of a background pixel, 0 to 30 gray levels
 * @param distortion 0 to 1: how much the skin is stretched and twisted
 * @param previous the finger that lay on the platen before and left a faint ghost
 * @param defects strength 0 to 1 of each defect that is wanted
 * @param traces specks, halo and uneven pressure
 * @param paper what is on the card besides prints
 */
public record ImpressionSettings(
    long seed,
    int ppi,
    Optional<FrameSize> frame,
    double rotationDegrees,
    double shiftX,
    double shiftY,
    double pressure,
    double moisture,
    double contrast,
    double sensorNoise,
    double distortion,
    Optional<MasterFinger> previous,
    Map<CaptureDefect, Double> defects,
    Traces traces,
    Paper paper) {

  public ImpressionSettings {
    if (ppi != 500 && ppi != 1000) {
      throw new IllegalArgumentException("resolution of " + ppi + " ppi, not 500 or 1000");
    }
    within("rotation", rotationDegrees, -45, 45);
    within("shift to the right", shiftX, -2000, 2000);
    within("shift downwards", shiftY, -2000, 2000);
    within("pressure", pressure, 0, 1);
    within("moisture", moisture, 0, 1);
    within("contrast", contrast, 0, 1);
    within("sensor noise", sensorNoise, 0, 30);
    within("distortion", distortion, 0, 1);
    EnumMap<CaptureDefect, Double> copy = new EnumMap<>(CaptureDefect.class);
    copy.putAll(defects);
    copy.forEach((defect, strength) -> within(defect.name(), strength, 0, 1));
    defects = Collections.unmodifiableMap(copy);
  }

  static void within(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(what + " of " + value + ", not " + low + " to " + high);
    }
  }

  /** A careful capture at 500 ppi with the variation that even a careful capture has. */
  public static ImpressionSettings natural(long seed) {
    SeededRandom dice = new SeededRandom(seed, 7);
    return new ImpressionSettings(
        seed,
        500,
        Optional.empty(),
        dice.around(0, 4),
        dice.around(0, 9),
        dice.around(0, 9),
        dice.around(0.5, 0.08),
        dice.around(0.5, 0.1),
        dice.between(0.88, 1),
        dice.between(2, 7),
        dice.between(0.15, 0.6),
        Optional.empty(),
        Map.of(),
        Traces.none(),
        Paper.none());
  }

  /** The frame at this resolution, in image pixels. */
  FrameSize pixels(FrameSize usual) {
    FrameSize size = frame.orElse(usual);
    int factor = ppi / 500;
    return new FrameSize(size.width() * factor, size.height() * factor);
  }

  /** The same with another seed. */
  public ImpressionSettings withSeed(long newSeed) {
    return with(draft -> draft.seed = newSeed);
  }

  /** The same at 500 or 1000 ppi. */
  public ImpressionSettings withPpi(int newPpi) {
    return with(draft -> draft.ppi = newPpi);
  }

  /** The same in a frame of this size at 500 ppi. */
  public ImpressionSettings withFrame(FrameSize newFrame) {
    return with(draft -> draft.frame = Optional.of(newFrame));
  }

  /** The same turned by -45 to 45 degrees, clockwise. */
  public ImpressionSettings withRotation(double degrees) {
    return with(draft -> draft.rotationDegrees = degrees);
  }

  /** The same shifted to the right and downwards, in pixels at 500 ppi. */
  public ImpressionSettings withShift(double right, double down) {
    return with(
        draft -> {
          draft.shiftX = right;
          draft.shiftY = down;
        });
  }

  /** The same with this pressure and moisture, 0 to 1 each. */
  public ImpressionSettings withSkin(double newPressure, double newMoisture) {
    return with(
        draft -> {
          draft.pressure = newPressure;
          draft.moisture = newMoisture;
        });
  }

  /** The same with this contrast, 0 to 1, and sensor noise, 0 to 30 gray levels. */
  public ImpressionSettings withSensor(double newContrast, double newNoise) {
    return with(
        draft -> {
          draft.contrast = newContrast;
          draft.sensorNoise = newNoise;
        });
  }

  /** The same with this skin distortion, 0 to 1. */
  public ImpressionSettings withDistortion(double newDistortion) {
    return with(draft -> draft.distortion = newDistortion);
  }

  /** The same on a platen on which this finger lay before. */
  public ImpressionSettings withPrevious(MasterFinger finger) {
    return with(draft -> draft.previous = Optional.of(finger));
  }

  /** The same with one more defect, or another strength of one. */
  public ImpressionSettings withDefect(CaptureDefect defect, double strength) {
    EnumMap<CaptureDefect, Double> more = new EnumMap<>(CaptureDefect.class);
    more.putAll(defects);
    more.put(defect, strength);
    return with(draft -> draft.defects = more);
  }

  /** The same of such skin. */
  public ImpressionSettings withTraces(Traces newTraces) {
    return with(draft -> draft.traces = newTraces);
  }

  /** The same on a card with these marks. */
  public ImpressionSettings withPaper(Paper newPaper) {
    return with(draft -> draft.paper = newPaper);
  }

  private ImpressionSettings with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.settings();
  }

  /** Settings while some of them are changed, so that a change names only what it changes. */
  private static final class Draft {

    private long seed;
    private int ppi;
    private Optional<FrameSize> frame;
    private double rotationDegrees;
    private double shiftX;
    private double shiftY;
    private double pressure;
    private double moisture;
    private double contrast;
    private double sensorNoise;
    private double distortion;
    private Optional<MasterFinger> previous;
    private Map<CaptureDefect, Double> defects;
    private Traces traces;
    private Paper paper;

    Draft(ImpressionSettings settings) {
      seed = settings.seed;
      ppi = settings.ppi;
      frame = settings.frame;
      rotationDegrees = settings.rotationDegrees;
      shiftX = settings.shiftX;
      shiftY = settings.shiftY;
      pressure = settings.pressure;
      moisture = settings.moisture;
      contrast = settings.contrast;
      sensorNoise = settings.sensorNoise;
      distortion = settings.distortion;
      previous = settings.previous;
      defects = settings.defects;
      traces = settings.traces;
      paper = settings.paper;
    }

    ImpressionSettings settings() {
      return new ImpressionSettings(
          seed,
          ppi,
          frame,
          rotationDegrees,
          shiftX,
          shiftY,
          pressure,
          moisture,
          contrast,
          sensorNoise,
          distortion,
          previous,
          defects,
          traces,
          paper);
    }
  }
}
