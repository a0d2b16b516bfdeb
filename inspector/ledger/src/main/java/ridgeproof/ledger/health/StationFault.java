package ridgeproof.ledger.health;

import java.util.Optional;
import ridgeproof.ledger.PrintMeasure;

/** What can be wrong with a station, with what to do about it. */
public enum StationFault {
  SPOT(
      "Spot or scratch on the platen",
      "Clean the platen. If the spot stays, ask the station's vendor to check it for a scratch."),
  DEAD_LINE(
      "Row or column of the sensor does not work", "Ask the station's vendor to check the sensor."),
  ENCODER(
      "Encoder or software changed",
      "Compare a file from before with one from after this date, and ask the station's vendor what"
          + " was updated."),
  RESOLUTION(
      "Scale of the images does not agree with the stated resolution",
      "Scan a calibration target, and ask the station's vendor to check the resolution."),
  SCALE(
      "Scale of the images changed",
      "Scan a calibration target, and ask the station's vendor to check the resolution."),
  BACKGROUND(
      "Gray level of the background changed",
      "Clean the platen and calibrate the station as its manual says."),
  CONTRAST(
      "Contrast of the prints changed",
      "Clean the platen, replace a worn membrane, and calibrate the station as its manual says."),
  LIGHT(
      "Background became uneven",
      "Clean the platen and the optics as the manual says. If it stays uneven, ask the station's"
          + " vendor to check the lighting."),
  GHOST(
      "Traces of earlier prints are left on the platen",
      "Wipe the platen after each subject, and check the membrane."),
  COMPRESSION(
      "Compression of the images changed",
      "Ask the station's vendor to check the compression settings."),
  DRY_PRINTS(
      "More dry prints than at other stations in the same season",
      "Moisten the fingers a little before each capture, and check the membrane."),
  NARROW_ROLLS(
      "Operator rolls too narrowly",
      "Practice rolling each finger from nail edge to nail edge with this operator.");

  private final String title;
  private final String remedy;

  StationFault(String title, String remedy) {
    this.title = title;
    this.remedy = remedy;
  }

  /** A few words. */
  public String title() {
    return title;
  }

  /** What to do next, in the imperative. */
  public String remedy() {
    return remedy;
  }

  /** The fault of a measure that changed with time. */
  static Optional<StationFault> ofChange(PrintMeasure measure) {
    return switch (measure) {
      case GROUND -> Optional.of(BACKGROUND);
      case CONTRAST -> Optional.of(CONTRAST);
      case RIDGE_PERIOD -> Optional.of(SCALE);
      case UNEVENNESS -> Optional.of(LIGHT);
      case GHOST -> Optional.of(GHOST);
      case COMPRESSION -> Optional.of(COMPRESSION);
      case WIDTH -> Optional.empty();
    };
  }
}
