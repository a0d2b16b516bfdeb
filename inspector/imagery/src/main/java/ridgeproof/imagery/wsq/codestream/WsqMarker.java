package ridgeproof.imagery.wsq.codestream;

import java.util.Optional;

/** The markers of a WSQ codestream (WSQ specification IAFIS-IC-0110, from memory). */
public enum WsqMarker {
  /** Start of image. */
  SOI(0xFFA0),
  /** End of image. */
  EOI(0xFFA1),
  /** Start of frame: gray range, size, shift and scale. */
  SOF(0xFFA2),
  /** Start of an entropy-coded block. */
  SOB(0xFFA3),
  /** Wavelet transform (filter) table. */
  DTT(0xFFA4),
  /** Quantization table. */
  DQT(0xFFA5),
  /** Huffman tables. */
  DHT(0xFFA6),
  /** Restart interval. */
  DRI(0xFFA7),
  /** Comment. */
  COM(0xFFA8),
  /** Restart, eight codes from FFB0 to FFB7. */
  RST(0xFFB0);

  private static final int RESTART_CODES = 8;

  private final int code;

  WsqMarker(int code) {
    this.code = code;
  }

  /** The two bytes of the marker as one number; the first of eight for {@link #RST}. */
  public int code() {
    return code;
  }

  /** The marker with this code, or nothing when WSQ defines none. */
  public static Optional<WsqMarker> of(int code) {
    if (code >= RST.code && code < RST.code + RESTART_CODES) {
      return Optional.of(RST);
    }
    int index = code - SOI.code;
    return index >= 0 && index < RST.ordinal() ? Optional.of(values()[index]) : Optional.empty();
  }

  boolean hasSegment() {
    return this != SOI && this != EOI && this != RST;
  }
}
