package ridgeproof.imagery.wsq.entropy;

import java.util.Arrays;
import ridgeproof.imagery.wsq.codestream.WsqMarker;

/**
 * The entropy-coded data of a block without its stuffed zero bytes, cut at restart markers. Behind
 * the data stand a few bytes of ones, so that a reader may look ahead.
 */
public final class EntropyCodedSegment {

  private static final int LOOK_AHEAD = 16;

  private final byte[] stuffed;
  private final int from;
  private final int to;
  private byte[] plain;
  private int[] segmentEnds = new int[4];
  private int segments;

  /** Reads the bytes from one position to another. */
  public EntropyCodedSegment(byte[] bytes, int from, int to) {
    stuffed = bytes;
    this.from = from;
    this.to = to;
    unstuff();
  }

  /** The data; segment after segment, then ones. */
  public byte[] bytes() {
    return plain;
  }

  public int segments() {
    return segments;
  }

  public int segmentStart(int segment) {
    return segment == 0 ? 0 : segmentEnds[segment - 1];
  }

  public int segmentEnd(int segment) {
    return segmentEnds[segment];
  }

  /** Where the byte at a position of the plain data stands in the codestream's bytes. */
  int originalPosition(int position) {
    int at = from;
    for (int count = 0; at < to; at++) {
      if (isRestart(at)) {
        at++;
        continue;
      }
      if (count == position) {
        return at;
      }
      count++;
      if (stuffed[at] == -1 && at + 1 < to && stuffed[at + 1] == 0) {
        at++;
      }
    }
    return to;
  }

  private void unstuff() {
    plain = new byte[to - from + LOOK_AHEAD];
    int size = 0;
    for (int at = from; at < to; at++) {
      byte value = stuffed[at];
      if (value == -1) {
        if (isRestart(at)) {
          endSegment(size);
          at++;
          continue;
        }
        if (at + 1 < to && stuffed[at + 1] == 0) {
          at++;
        }
      }
      plain[size++] = value;
    }
    endSegment(size);
    Arrays.fill(plain, size, plain.length, (byte) 0xFF);
  }

  private boolean isRestart(int at) {
    return stuffed[at] == -1
        && at + 1 < to
        && WsqMarker.of(0xFF00 | stuffed[at + 1] & 0xFF).orElse(null) == WsqMarker.RST;
  }

  private void endSegment(int end) {
    if (segments == segmentEnds.length) {
      segmentEnds = Arrays.copyOf(segmentEnds, 2 * segments);
    }
    segmentEnds[segments++] = end;
  }
}
