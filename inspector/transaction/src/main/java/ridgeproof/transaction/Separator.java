package ridgeproof.transaction;

import java.util.Locale;

/** The separators of the traditional encoding; each is one byte. */
final class Separator {

  /** Ends a record. */
  static final int FS = 0x1C;

  /** Between fields. */
  static final int GS = 0x1D;

  /** Between subfields. */
  static final int RS = 0x1E;

  /** Between information items. */
  static final int US = 0x1F;

  private Separator() {}

  static String name(int value) {
    return switch (value) {
      case FS -> "FS (0x1C)";
      case GS -> "GS (0x1D)";
      case RS -> "RS (0x1E)";
      case US -> "US (0x1F)";
      default -> String.format(Locale.ROOT, "0x%02X", value);
    };
  }
}
