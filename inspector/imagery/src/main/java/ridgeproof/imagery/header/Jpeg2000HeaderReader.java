package ridgeproof.imagery.header;

import java.util.BitSet;
import java.util.Optional;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.record.ByteSource;

/** Walks a JPEG 2000 codestream (ITU-T T.800 Annex A): main header, tile-parts, end marker. */
final class Jpeg2000HeaderReader {

  private static final int SIZ = 0xFF51;
  private static final int COD = 0xFF52;
  private static final int COC = 0xFF53;
  private static final int COM = 0xFF64;
  private static final int PPM = 0xFF60;
  private static final int PPT = 0xFF61;
  private static final int SOT = 0xFF90;
  private static final int SOP = 0xFF91;
  private static final int EPH = 0xFF92;
  private static final int SOD = 0xFF93;
  private static final int EOC = 0xFFD9;
  private static final String PACKED_HEADERS = "packed packet headers";
  private static final String IMPOSSIBLE_CODES = "marker codes within coded data";
  private static final String TOO_MANY_PACKETS = "more packets than bytes";
  private static final int SOT_BYTES = 12;

  /** Isot has 16 bits (T.800 A.4.2). */
  private static final long MAX_TILES = 65_535;

  private final ImageHeaderBuilder draft;
  private final ByteSource source;
  private final int limit;
  private final BitSet tilesMet = new BitSet();
  private long tiles;
  private int tileParts;
  private int position;

  /**
   * @param start position of the codestream's first byte in the draft's source
   * @param limit position after the last byte that can belong to it
   */
  Jpeg2000HeaderReader(ImageHeaderBuilder draft, int start, int limit) {
    this.draft = draft;
    this.source = draft.source;
    this.position = start;
    this.limit = limit;
  }

  static ImageHeader headerOf(ByteSource source) {
    ImageHeaderBuilder draft = new ImageHeaderBuilder(source, ImageFormat.JPEG_2000);
    draft.fact("file", "codestream");
    new Jpeg2000HeaderReader(draft, 0, source.length()).walk().ifPresent(draft::endsAt);
    return draft.finish();
  }

  /** Fills the draft; gives the position after the end marker, where there is one. */
  Optional<Integer> walk() {
    if (!has(4) || source.uint16At(position) != 0xFF4F || source.uint16At(position + 2) != SIZ) {
      draft.damage(position, "the codestream does not begin with SOC and SIZ");
      return Optional.empty();
    }
    position += 2;
    if (!mainHeader()) {
      return Optional.empty();
    }
    while (has(2) && source.uint16At(position) == SOT && tilePart()) {
      tileParts++;
    }
    draft.fact("tile-parts", tileParts);
    if (tiles > 0 && tilesMet.cardinality() < tiles) {
      draft.damage(position, "holds " + tilesMet.cardinality() + " of " + tiles + " tiles");
    }
    if (has(2) && source.uint16At(position) == EOC) {
      return Optional.of(position + 2);
    }
    position = Math.min(position, limit);
    draft.damage(position, "no end marker (EOC) where one is expected");
    checkCodedData(limit);
    return Optional.empty();
  }

  private boolean has(int count) {
    return position <= limit - count;
  }

  private boolean mainHeader() {
    while (has(4) && source.uint16At(position) != SOT) {
      int marker = source.uint16At(position);
      int length = source.uint16At(position + 2);
      if (marker < 0xFF00 || length < 2) {
        draft.damage(position, "no marker segment where one is expected in the main header");
        return false;
      }
      if (!has(2 + length)) {
        break;
      }
      take(marker, source.slice(position + 4, length - 2));
      position += 2 + length;
    }
    if (!has(4)) {
      draft.damage(Math.min(position, limit), "ends within the main header");
      return false;
    }
    if (source.uint16At(position) != SOT) {
      draft.damage(position, "ends within a marker segment of the main header");
      return false;
    }
    return true;
  }

  private void take(int marker, ByteSource body) {
    packedHeaders(marker);
    switch (marker) {
      case SIZ -> size(body);
      case COD -> {
        coding(body);
        packets(marker, body);
      }
      case COC -> packets(marker, body);
      case COM -> comment(body);
      default -> {}
    }
  }

  private void size(ByteSource body) {
    int components = body.has(0, 36) ? body.uint16At(34) : 0;
    if (components == 0 || !body.has(36, 3 * components)) {
      draft.damage(position, "the image size segment (SIZ) is too short");
      return;
    }
    long right = body.uint32At(2);
    long bottom = body.uint32At(6);
    boolean stated = draft.size(right - body.uint32At(10), bottom - body.uint32At(14), position);
    draft.components = components;
    int bits = 0;
    for (int i = 0; i < components; i++) {
      bits += (body.byteAt(36 + 3 * i) & 0x7F) + 1;
    }
    draft.bitsPerPixel = bits;
    long across = tilesAlong(right, body.uint32At(26), body.uint32At(18));
    long down = tilesAlong(bottom, body.uint32At(30), body.uint32At(22));
    if (across < 1 || down < 1 || across > MAX_TILES || across * down > MAX_TILES) {
      draft.damage(position, "states a grid of tiles that cannot be");
    } else if (stated) {
      tiles = across * down;
      draft.fact("tiles", tiles);
    }
  }

  private static long tilesAlong(long end, long origin, long tile) {
    return tile == 0 ? 0 : Math.min((end - origin + tile - 1) / tile, MAX_TILES + 1);
  }

  private void coding(ByteSource body) {
    if (!body.has(0, 10)) {
      draft.damage(position, "the coding style segment (COD) is too short");
      return;
    }
    draft.fact("progression order", progression(body.byteAt(1)));
    draft.fact("quality layers", body.uint16At(2));
    draft.fact("component transform", body.byteAt(4) == 0 ? "none" : "first three components");
    draft.fact("decomposition levels", body.byteAt(5));
    int exponentSum = (body.byteAt(6) & 0xF) + (body.byteAt(7) & 0xF);
    if (exponentSum > 8) {
      draft.damage(position, "states a code-block size that cannot be");
    } else {
      draft.fact(
          "code-block", (4 << (body.byteAt(6) & 0xF)) + " x " + (4 << (body.byteAt(7) & 0xF)));
    }
    switch (body.byteAt(9)) {
      case 0 -> wavelet("irreversible 9/7", false);
      case 1 -> wavelet("reversible 5/3", true);
      default -> draft.damage(position, "states a wavelet transform that cannot be");
    }
  }

  /** Each packet has a header of at least a byte (T.800 B.10): more than there are bytes lie. */
  private void packets(int marker, ByteSource body) {
    int component = draft.components < 257 ? 1 : 2;
    int style = marker == COD ? 0 : component;
    int levelsAt = marker == COD ? 5 : component + 1;
    int sizes = levelsAt + 5;
    if (!body.has(0, sizes) || (body.byteAt(style) & 1) == 0) {
      return;
    }
    int levels = body.byteAt(levelsAt);
    long packets = 0;
    for (int i = 0; i <= levels && body.has(sizes + i, 1); i++) {
      int across = levels - i + (body.byteAt(sizes + i) & 0xF);
      int down = levels - i + (body.byteAt(sizes + i) >> 4);
      packets += (((long) draft.width >> across) + 1) * (((long) draft.height >> down) + 1);
    }
    if (packets > limit) {
      draft.damage(position, "states " + packets + " packets, more than there are bytes");
      draft.fact(TOO_MANY_PACKETS, "stated");
    }
  }

  private void wavelet(String name, boolean reversible) {
    draft.fact("wavelet", name);
    draft.lossless = Optional.of(reversible);
  }

  private static String progression(int order) {
    return switch (order) {
      case 0 -> "LRCP";
      case 1 -> "RLCP";
      case 2 -> "RPCL";
      case 3 -> "PCRL";
      case 4 -> "CPRL";
      default -> "unknown";
    };
  }

  private void comment(ByteSource body) {
    // Rcme 1 says that the comment is Latin text (T.800 A.9.2).
    if (body.has(0, 2) && body.uint16At(0) == 1) {
      NistComment.keep(draft, body.latin1(2, body.length() - 2));
    }
  }

  /** Steps over a tile-part; false where it cannot be left behind. */
  private boolean tilePart() {
    if (!has(SOT_BYTES) || source.uint16At(position + 2) != SOT_BYTES - 2) {
      draft.damage(position, "a tile-part header (SOT) is cut off or damaged");
      return false;
    }
    int tile = source.uint16At(position + 4);
    long length = source.uint32At(position + 6);
    if (tiles > 0 && tile >= tiles) {
      draft.damage(position, "a tile-part of tile " + tile + " of " + tiles);
    } else {
      tilesMet.set(tile);
    }
    int start = position;
    if (!tilePartHeader()) {
      return false;
    }
    // The last tile-part may leave its length open: it ends at EOC (T.800 A.4.2).
    long end = length == 0 ? endOfCodedData() : start + length;
    if (end < position || end > limit) {
      draft.damage(start, "ends within a tile-part");
      return false;
    }
    checkCodedData((int) end);
    position = (int) end;
    return true;
  }

  /** Steps over the segments between SOT and SOD. */
  private boolean tilePartHeader() {
    position += SOT_BYTES;
    while (has(4) && source.uint16At(position) != SOD) {
      int marker = source.uint16At(position);
      int length = source.uint16At(position + 2);
      if (marker < 0xFF00 || length < 2) {
        draft.damage(position, "no marker segment where one is expected in a tile-part header");
        return false;
      }
      packedHeaders(marker);
      if ((marker == COD || marker == COC) && has(2 + length)) {
        packets(marker, source.slice(position + 4, length - 2));
      }
      position += 2 + length;
    }
    if (!has(2) || source.uint16At(position) != SOD) {
      draft.damage(Math.min(position, limit), "ends within a tile-part header");
      position = Math.min(position, limit);
      return false;
    }
    position += 2;
    return true;
  }

  private int endOfCodedData() {
    int end = source.indexOf(0xFF, position, limit);
    while (end >= 0 && end <= limit - 2 && source.uint16At(end) != EOC) {
      end = source.indexOf(0xFF, end + 1, limit);
    }
    return end < 0 || end > limit - 2 ? -1 : end;
  }

  /**
   * Coded data never holds FF followed by more than 8F, but for SOP and EPH (T.800 A.1, B.10.1).
   */
  private void checkCodedData(int end) {
    int at = source.indexOf(0xFF, position, end);
    while (at >= 0 && at <= end - 2) {
      int marker = source.uint16At(at);
      if (marker > 0xFF8F && marker != SOP && marker != EPH) {
        if (draft.fact(IMPOSSIBLE_CODES).isEmpty()) {
          draft.damage(at, "a marker code within coded data");
          draft.fact(IMPOSSIBLE_CODES, "present");
        }
        return;
      }
      at = source.indexOf(0xFF, at + (marker == SOP ? 6 : 1), end);
    }
  }

  private void packedHeaders(int marker) {
    if (marker == PPM || marker == PPT) {
      draft.fact(PACKED_HEADERS, "present");
    }
  }
}
