package ridgeproof.calibration.fault;

/** How the examination of a faulty file came out. */
public enum FaultOutcome {
  /** The first new finding names the fault and its place, and few others are new. */
  NAMED("named first"),
  /** The first new finding names the fault, among more others than may be. */
  FLOODED("flooded"),
  /** The first new finding names another fault, finger or field. */
  MISATTRIBUTED("misattributed"),
  /** Nothing above a note is new. */
  MISSED("missed");

  private final String words;

  FaultOutcome(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
