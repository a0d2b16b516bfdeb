package ridgeproof.imagery.header;

import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import ridgeproof.finding.Quantity;
import ridgeproof.transaction.record.ByteSource;

/**
 * The marker segments of a codestream in the manner of ITU-T T.81 Annex B, which WSQ shares: FF, a
 * code, and for most codes a 16-bit length that counts itself.
 */
final class JpegMarkerReader {

  /**
   * One marker and what belongs to it.
   *
   * @param position of its FF byte
   * @param body what follows the length, empty for a marker that stands alone
   */
  record Segment(int position, int code, ByteSource body) {}

  private final ImageHeaderBuilder draft;
  private final ByteSource source;
  private final IntPredicate standsAlone;
  private int position;

  JpegMarkerReader(ImageHeaderBuilder draft, int start, IntPredicate standsAlone) {
    this.draft = draft;
    this.source = draft.source;
    this.position = start;
    this.standsAlone = standsAlone;
  }

  int position() {
    return position;
  }

  /** The next segment; empty with a defect where the bytes end before it does. */
  Optional<Segment> next() {
    while (true) {
      int marker = nextMarker();
      if (marker < 0) {
        draft.damage(source.length(), "ends before its end marker");
        return Optional.empty();
      }
      if (marker > position) {
        draft.damage(
            position, Quantity.of(marker - position, "byte") + " outside any marker segment");
      }
      int code = source.byteAt(marker + 1);
      if (standsAlone.test(code)) {
        position = marker + 2;
        return Optional.of(new Segment(marker, code, source.slice(position, 0)));
      }
      int length = source.has(marker + 2, 2) ? source.uint16At(marker + 2) : Integer.MAX_VALUE;
      if (!source.has(marker + 2, length)) {
        draft.damage(marker, "ends within the segment of marker " + name(code));
        return Optional.empty();
      }
      position = marker + 2 + length;
      if (length >= 2) {
        return Optional.of(new Segment(marker, code, source.slice(marker + 4, length - 2)));
      }
      draft.damage(marker, "the segment of marker " + name(code) + " states no possible length");
      position = marker + 2;
    }
  }

  /** Steps to the marker that ends the entropy-coded data, over stuffed bytes and restarts. */
  void skipEntropyCoded(RestartCount restarts) {
    int end = source.length();
    int at = source.indexOf(0xFF, position);
    while (at >= 0 && at + 1 < end) {
      int code = source.byteAt(at + 1);
      if (restarts.isRestart(code)) {
        restarts.met(code, at);
      } else if (code != 0x00 && code != 0xFF) {
        position = at;
        return;
      }
      at = source.indexOf(0xFF, code == 0xFF ? at + 1 : at + 2);
    }
    position = end;
  }

  private int nextMarker() {
    int at = source.indexOf(0xFF, position);
    while (at >= 0) {
      int code = at + 1;
      // Any number of FF bytes may fill up before a marker (T.81 B.1.1.2).
      while (code < source.length() && source.byteAt(code) == 0xFF) {
        code++;
      }
      if (code >= source.length()) {
        return -1;
      }
      if (source.byteAt(code) != 0) {
        position = at == position ? code - 1 : position;
        return code - 1;
      }
      at = source.indexOf(0xFF, code);
    }
    return -1;
  }

  private static String name(int code) {
    return String.format(Locale.ROOT, "FF%02X", code);
  }
}
