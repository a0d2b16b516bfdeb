package ridgeproof.imagery.blank;

import java.util.Set;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

/**
 * A blank JPEG 2000 image (ITU-T T.800 Annexes A, B and I): headers stay, comments are masked, and
 * coded data becomes zeros, of which each is the header of a packet without data.
 */
final class BlankJpeg2000 {

  private static final int SOC = 0xFF4F;
  private static final int COM = 0xFF64;
  private static final int SOT = 0xFF90;
  private static final int SOD = 0xFF93;
  private static final int EOC = 0xFFD9;
  private static final int SOT_BYTES = 12;
  private static final int BOX_HEADER = 8;
  private static final int MAX_DEEP = 3;

  /** SIZ, COD, COC, RGN, QCD, QCC and POC: how the image is coded, nothing of what it shows. */
  private static final Set<Integer> CODING =
      Set.of(0xFF51, 0xFF52, 0xFF53, 0xFF5E, 0xFF5C, 0xFF5D, 0xFF5F);

  private static final int MAX_CODING = 512;
  private static final Set<String> PARENTS = Set.of("jp2h", "res ");

  /** Boxes of a few numbers; any other may hold text, another image, or a profile with a name. */
  private static final Set<String> KEPT_BOXES =
      Set.of("jP  ", "ftyp", "ihdr", "bpcc", "colr", "resc", "resd");

  private static final int MAX_BOX = 40;

  private final ByteSource source;
  private final CommentRedactor comments;
  private final ImageBytes bytes;

  BlankJpeg2000(ByteSource source, CommentRedactor comments) {
    this.source = source;
    this.comments = comments;
    this.bytes = new ImageBytes(source, 0);
  }

  byte[] bytes() {
    if (source.has(0, 2) && source.uint16At(0) == SOC) {
      codestream(0, source.length());
    } else {
      // What stands behind the last box could be text, and look like the header of another.
      boxes(0, ImageHeaders.read(source).extent().length(), 0);
    }
    return bytes.toArray();
  }

  private void boxes(int start, int limit, int depth) {
    int position = start;
    while (position <= limit - BOX_HEADER) {
      long length = source.uint32At(position);
      String type = source.latin1(position + 4, 4);
      bytes.keep(position, BOX_HEADER);
      int content = position + BOX_HEADER;
      if (length == 1 && position <= limit - 2 * BOX_HEADER) {
        bytes.keep(content, BOX_HEADER);
        length = source.uint32At(content) > 0 ? Long.MAX_VALUE : source.uint32At(content + 4);
        content += BOX_HEADER;
      }
      boolean open = length == 0 || length > limit - position;
      int end = open ? limit : position + (int) length;
      if (end < content) {
        return;
      }
      box(type, content, end, depth);
      position = end;
    }
  }

  private void box(String type, int content, int end, int depth) {
    if (PARENTS.contains(type) && depth < MAX_DEEP) {
      boxes(content, end, depth + 1);
    } else if (type.equals("jp2c")) {
      codestream(content, end);
    } else if (KEPT_BOXES.contains(type) && end - content <= MAX_BOX) {
      bytes.keep(content, end - content);
    }
  }

  private void codestream(int start, int limit) {
    bytes.keep(start, 2);
    int position = segments(start + 2, limit);
    while (position <= limit - SOT_BYTES && source.uint16At(position) == SOT) {
      long length = source.uint32At(position + 6);
      int part = position;
      bytes.keep(position, SOT_BYTES);
      position = segments(position + SOT_BYTES, limit);
      if (position <= limit - 2 && source.uint16At(position) == SOD) {
        bytes.keep(position, 2);
      }
      boolean open = length == 0 || length > limit - part;
      position = open ? endMarker(limit) : part + (int) Math.max(length, position - part);
    }
    if (position <= limit - 2 && source.uint16At(position) == EOC) {
      bytes.keep(position, 2);
    }
  }

  private int endMarker(int limit) {
    return source.has(limit - 2, 2) && source.uint16At(limit - 2) == EOC ? limit - 2 : limit;
  }

  /** Takes over marker segments; gives the position of what is none or begins or holds a tile. */
  private int segments(int start, int limit) {
    int position = start;
    while (position <= limit - 4) {
      int marker = source.uint16At(position);
      int length = source.uint16At(position + 2);
      if (marker == SOT || marker == SOD || marker < 0xFF00 || length < 2) {
        return position;
      }
      bytes.keep(position, 4);
      int content = Math.min(length - 2, limit - position - 4);
      if (marker == COM && content >= 2) {
        bytes.keep(position + 4, 2);
        bytes.put(position + 6, comments.mask(source.latin1(position + 6, content - 2)));
      } else if (CODING.contains(marker) && content <= MAX_CODING) {
        bytes.keep(position + 4, content);
      }
      position += 2 + length;
    }
    return position;
  }
}
