package ridgeproof.transaction.record;

import java.util.Locale;

/** The separators of the traditional encoding; each is one byte. */
public final class Separator {

  /** Ends a record. */
  public static final int FS = 0x1C;

  /** Between fields. */
  public static final int GS = 0x1D;

  /** Between subfields. */
  public static final int RS = 0x1E;

  /** Between information items. */
  public static final int US = 0x1F;

  private Separator() {}

  public static String name(int value) {
    return switch (value) {
      case FS -> "FS (0x1C)";
      case GS -> "GS (0x1D)";
      case RS -> "RS (0x1E)";
      case US -> "US (0x1F)";
      default -> String.format(Locale.ROOT, "0x%02X", value);
    };
  }
}
