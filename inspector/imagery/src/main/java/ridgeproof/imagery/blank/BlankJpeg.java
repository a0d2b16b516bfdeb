package ridgeproof.imagery.blank;

import java.io.ByteArrayOutputStream;
import java.util.Optional;
import ridgeproof.transaction.record.ByteSource;

/**
 * A blank JPEG (ITU-T T.81 Annexes B, F and H): its segments stay, comments are masked, application
 * data is zeros. Of a sequential or lossless image each scan is coded anew without any difference
 * between samples, by the Huffman tables it has; of any other coded data nothing is left but zeros.
 */
final class BlankJpeg {

  private static final int RST0 = 0xD0;
  private static final int SOI = 0xD8;
  private static final int EOI = 0xD9;
  private static final int SOS = 0xDA;
  private static final int APP0 = 0xE0;
  private static final int APP14 = 0xEE;
  private static final int APP15 = 0xEF;
  private static final int COM = 0xFE;
  private static final int JFIF_BYTES = 14;
  private static final int ADOBE_BYTES = 12;
  private static final int MAX_SEGMENT = 2 + 0xFFFF;

  /** Tables are no longer than this; a damaged length could take coded data for one. */
  private static final int MAX_TABLES = 2048;

  private final ByteSource source;
  private final CommentRedactor comments;
  private final ImageBytes bytes;
  private boolean sound;
  private JpegScanBlank scans;

  BlankJpeg(ByteSource source, CommentRedactor comments) {
    this.source = source;
    this.comments = comments;
    this.bytes = new ImageBytes(source, 0);
    this.scans = new JpegScanBlank();
  }

  byte[] bytes(boolean isSound) {
    this.sound = isSound;
    int position = 0;
    boolean ended = false;
    while (!ended && source.has(position, 2)) {
      int code = source.byteAt(position + 1);
      if (source.byteAt(position) != 0xFF || code == 0) {
        position++;
      } else if (code == 0xFF) {
        bytes.keep(position++, 1);
      } else if (code == SOI || code == EOI || code >= RST0 && code < SOI || code == 1) {
        bytes.keep(position, 2);
        position += 2;
        ended = code == EOI;
      } else {
        position = segment(code, position);
      }
    }
    return bytes.toArray();
  }

  /** Gives the position after the segment, and after the coded data where it begins a scan. */
  private int segment(int code, int start) {
    int length = source.has(start + 2, 2) ? source.uint16At(start + 2) : 0;
    bytes.keep(start, 4);
    if (length < 2 || !source.has(start + 2, length)) {
      return start + 4;
    }
    ByteSource body = source.slice(start + 4, length - 2);
    if (code == COM) {
      bytes.put(start + 4, comments.mask(body.latin1(0, body.length())));
    } else if (code >= APP0 && code <= APP15) {
      bytes.keep(start + 4, known(code, body));
    } else if (body.length() <= MAX_TABLES) {
      bytes.keep(start + 4, body.length());
      scans = scans.with(code, body);
    }
    int after = start + 2 + length;
    return code == SOS ? scan(start, after, body) : after;
  }

  private static int known(int code, ByteSource body) {
    if (code == APP0 && body.startsWith(0, 'J', 'F', 'I', 'F', 0)) {
      // A thumbnail may follow; its size has to go with it.
      return JFIF_BYTES - 2;
    }
    return code == APP14 && body.startsWith(0, 'A', 'd', 'o', 'b', 'e') ? ADOBE_BYTES : 0;
  }

  private int scan(int start, int dataStart, ByteSource header) {
    int end = endOfData(dataStart);
    Optional<byte[]> blank = sound ? scans.scan(header, end - dataStart) : Optional.empty();
    if (blank.isPresent()) {
      int spare = end - dataStart - blank.get().length;
      byte[] head = source.slice(start, dataStart - start).toArray();
      bytes.put(start, padding(spare));
      bytes.put(start + spare, head);
      bytes.put(start + spare + head.length, blank.get());
    }
    return end;
  }

  /** The marker after the coded data; restarts belong to it. */
  private int endOfData(int from) {
    int at = source.indexOf(0xFF, from);
    while (at >= 0 && source.has(at, 2)) {
      int code = source.byteAt(at + 1);
      if (code != 0 && code != 0xFF && !(code >= RST0 && code < SOI)) {
        return at;
      }
      at = source.indexOf(0xFF, code == 0xFF ? at + 1 : at + 2);
    }
    return source.length();
  }

  /** Comments of zeros, and fill bytes where a comment has no room (T.81 B.1.1.2). */
  private static byte[] padding(int spare) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int left = spare;
    while (left >= 4) {
      int size = Math.min(left, MAX_SEGMENT);
      out.write(0xFF);
      out.write(COM);
      out.write(size - 2 >>> 8);
      out.write(size - 2);
      out.writeBytes(new byte[size - 4]);
      left -= size;
    }
    for (int i = 0; i < left; i++) {
      out.write(0xFF);
    }
    return out.toByteArray();
  }
}
