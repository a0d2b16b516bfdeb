package ridgeproof.calibration;

/** How a print was taken, as the table of limits calls it. */
enum PrintKind {
  ROLLED,
  /** A single plain finger or one of several. */
  PLAIN;

  String key() {
    return this == ROLLED ? "rolled" : "plain";
  }

  static PrintKind ofKey(String key) {
    return switch (key) {
      case "rolled" -> ROLLED;
      case "plain" -> PLAIN;
      default -> throw new IllegalArgumentException(key + " is neither rolled nor plain");
    };
  }
}
