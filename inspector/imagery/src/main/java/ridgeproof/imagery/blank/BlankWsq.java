package ridgeproof.imagery.blank;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.imagery.wsq.codestream.WsqCodestream;
import ridgeproof.imagery.wsq.codestream.WsqFrame;
import ridgeproof.imagery.wsq.codestream.WsqMarker;
import ridgeproof.imagery.wsq.codestream.WsqSegment;
import ridgeproof.transaction.record.ByteSource;

/** A blank WSQ codestream (WSQ specification IAFIS-IC-0110, from memory). */
final class BlankWsq {

  private static final int MID_GRAY = 128;
  private static final int SEGMENT_HEAD = 4;
  private static final int MAX_SEGMENT = 2 + 0xFFFF;

  /** From the marker: black and white; then height, width, shift and scale in between. */
  private static final int GRAY_RANGE_AT = 4;

  private static final int SCALE_AT = 13;
  private static final int ENCODER_AT = 16;

  /** 0.0001, so that whatever a decoder makes of the zeros stays within one gray level. */
  private static final byte[] NO_SCALE = {4, 0, 1};

  private static final int SYMBOL_COUNTS = 16;
  private static final int MAX_SYMBOLS = 256;

  private final ByteSource source;
  private final CommentRedactor comments;
  private final WsqCodestream codestream;

  BlankWsq(ByteSource source, CommentRedactor comments) {
    this.source = source;
    this.comments = comments;
    this.codestream = WsqCodestream.read(source);
  }

  byte[] bytes(boolean sound) {
    return sound && codestream.frame().isPresent()
        ? encoded(codestream.frame().get()).orElseGet(this::skeleton)
        : skeleton();
  }

  /** Empty where a blank image takes more bytes than there are. */
  private Optional<byte[]> encoded(WsqFrame frame) {
    byte[] pixels = new byte[frame.width() * frame.height()];
    Arrays.fill(pixels, (byte) MID_GRAY);
    byte[] blank =
        WsqEncoder.encode(
            GrayImage.owning(frame.width(), frame.height(), pixels),
            WsqEncoding.standard(WsqEncoding.UNKNOWN_PPI));
    byte[] image = withoutComments(blank, frame);
    byte[] masked = maskedComments();
    int room = source.length() - codestream.trailingBytes() - 2;
    int spare = room - masked.length - image.length;
    if (spare < 0 || spare > 0 && spare < SEGMENT_HEAD) {
      spare += masked.length;
      masked = new byte[0];
    }
    if (spare < 0 || spare > 0 && spare < SEGMENT_HEAD) {
      return Optional.empty();
    }
    ImageBytes bytes = new ImageBytes(source, 0);
    bytes.keep(0, 2);
    bytes.put(2, masked);
    int position = pad(bytes, 2 + masked.length, spare);
    bytes.put(position, image);
    return Optional.of(bytes.toArray());
  }

  /** Everything of our own codestream but SOI and comments, with what the frame said of itself. */
  private static byte[] withoutComments(byte[] blank, WsqFrame frame) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int position = 2;
    for (WsqSegment segment : WsqCodestream.read(ByteSource.of(blank)).segments()) {
      if (segment.marker() == WsqMarker.COM) {
        out.write(blank, position, segment.offset() - position);
        position = segment.offset() + segment.length();
      } else if (segment.marker() == WsqMarker.SOF) {
        blank[segment.offset() + GRAY_RANGE_AT] = (byte) frame.black();
        blank[segment.offset() + GRAY_RANGE_AT + 1] = (byte) frame.white();
        blank[segment.offset() + ENCODER_AT] = (byte) frame.encoderAlgorithm();
        blank[segment.offset() + ENCODER_AT + 1] = (byte) (frame.softwareImplementation() >>> 8);
        blank[segment.offset() + ENCODER_AT + 2] = (byte) frame.softwareImplementation();
      }
    }
    out.write(blank, position, blank.length - position);
    return out.toByteArray();
  }

  private byte[] maskedComments() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (WsqSegment segment : codestream.segments()) {
      if (segment.marker() == WsqMarker.COM) {
        int start = segment.offset() - source.origin();
        for (int i = 0; i < SEGMENT_HEAD; i++) {
          out.write(source.byteAt(start + i));
        }
        out.writeBytes(commentAt(start, segment.length()));
      }
    }
    return out.toByteArray();
  }

  private byte[] commentAt(int start, int length) {
    return comments.mask(source.latin1(start + SEGMENT_HEAD, length - SEGMENT_HEAD));
  }

  /** Comment segments of zeros; gives the position after them. */
  private static int pad(ImageBytes bytes, int start, int spare) {
    int position = start;
    int left = spare;
    while (left > 0) {
      int size = Math.min(left, MAX_SEGMENT);
      // What is left over has to hold a segment of its own.
      size -= left > size && left - size < SEGMENT_HEAD ? SEGMENT_HEAD : 0;
      int code = WsqMarker.COM.code();
      int length = size - 2;
      bytes.put(
          position,
          new byte[] {(byte) (code >>> 8), (byte) code, (byte) (length >>> 8), (byte) length});
      position += size;
      left -= size;
    }
    return position;
  }

  private byte[] skeleton() {
    ImageBytes bytes = new ImageBytes(source, 0);
    for (WsqSegment segment : codestream.segments()) {
      int start = segment.offset() - source.origin();
      int length = segment.length();
      switch (segment.marker()) {
        case COM -> {
          bytes.keep(start, Math.min(SEGMENT_HEAD, length));
          if (length > SEGMENT_HEAD) {
            bytes.put(start + SEGMENT_HEAD, commentAt(start, length));
          }
        }
        case DHT -> bytes.keep(start, holdsTables(start, length) ? length : SEGMENT_HEAD);
        case SOF -> {
          bytes.keep(start, Math.min(length, longest(WsqMarker.SOF)));
          if (length > SCALE_AT + NO_SCALE.length) {
            bytes.put(start + SCALE_AT, NO_SCALE);
          }
        }
        default -> bytes.keep(start, Math.min(length, longest(segment.marker())));
      }
    }
    return bytes.toArray();
  }

  /** A damaged length may take coded data for a segment; of that nothing is kept. */
  private static int longest(WsqMarker marker) {
    return switch (marker) {
      case DTT -> 4 + 2 + 2 * 32 * 6;
      case DQT -> 4 + 3 + 64 * 6;
      case SOF -> ENCODER_AT + 3;
      case DRI -> 6;
      case SOB -> 5;
      default -> 2;
    };
  }

  private boolean holdsTables(int start, int length) {
    int position = start + SEGMENT_HEAD;
    int end = start + length;
    while (position < end) {
      if (position + 1 + SYMBOL_COUNTS > end) {
        return false;
      }
      int symbols = 0;
      for (int i = 1; i <= SYMBOL_COUNTS; i++) {
        symbols += source.byteAt(position + i);
      }
      if (symbols > MAX_SYMBOLS) {
        return false;
      }
      position += 1 + SYMBOL_COUNTS + symbols;
    }
    return position == end;
  }
}
