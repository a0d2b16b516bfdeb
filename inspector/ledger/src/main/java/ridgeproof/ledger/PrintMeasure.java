package ridgeproof.ledger;

import java.util.Locale;

/** A number that is kept of each print. */
public enum PrintMeasure {
  /** Median gray level of the bare platen, 0 to 255. */
  GROUND,
  /** Gray levels from the bare platen to the darkest tenth of the print. */
  CONTRAST,
  /** Distance from ridge to ridge at the stated resolution, millimeters. */
  RIDGE_PERIOD,
  /** Width of the widest print, millimeters. */
  WIDTH,
  /** Gray levels from the brightest to the darkest part of the bare platen. */
  UNEVENNESS,
  /** Share of the bare platen that shows a faint pattern, 0 to 1. */
  GHOST,
  /** Bytes of the pixels for each byte of the codestream. */
  COMPRESSION;

  /** The column of the ledger, which is also the name in exports. */
  public String column() {
    return name().toLowerCase(Locale.ROOT);
  }
}
