package ridgeproof.imagery.header;

import java.util.Locale;
import java.util.Optional;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.transaction.record.ByteSource;

/** Walks the boxes of a JP2 file (ITU-T T.800 Annex I) down to its codestream. */
final class Jp2BoxReader {

  private static final double METRES_PER_INCH = 0.0254;
  private static final int RESOLUTION_BYTES = 10;

  private final ImageHeaderBuilder draft;
  private final ByteSource source;
  private boolean codestreamSeen;
  private boolean captureDensitySeen;
  private long boxHeight;
  private long boxWidth;

  Jp2BoxReader(ByteSource source) {
    this.draft = new ImageHeaderBuilder(source, ImageFormat.JPEG_2000);
    this.source = source;
  }

  /**
   * One box.
   *
   * @param content position of its first byte after the box header
   * @param end position after its last byte
   */
  private record Box(String type, int content, int end, boolean cut) {}

  ImageHeader read() {
    draft.fact("file", "JP2");
    int position = 0;
    while (position < source.length()) {
      if (!isBox(position, source.length())) {
        break;
      }
      Box box = boxAt(position, source.length());
      if (box.cut()) {
        if (!codestreamSeen && !box.type().equals("jp2c")) {
          draft.damage(position, "ends within box " + box.type());
          take(box);
          return draft.finish();
        }
        if (codestreamSeen) {
          break;
        }
        draft.damage(position, "ends within its codestream box");
      }
      take(box);
      position = box.end();
    }
    if (codestreamSeen) {
      draft.endsAt(position);
    } else {
      draft.damage(position, "holds no codestream box (jp2c)");
    }
    return draft.finish();
  }

  /** Whether a box header stands here: four printable characters after a possible length. */
  private boolean isBox(int position, int limit) {
    if (position > limit - 8) {
      return false;
    }
    long length = source.uint32At(position);
    for (int i = 4; i < 8; i++) {
      int c = source.byteAt(position + i);
      if (c < 0x20 || c > 0x7E) {
        return false;
      }
    }
    return length == 0 || length >= 8 || length == 1 && position <= limit - 16;
  }

  private Box boxAt(int position, int limit) {
    String type = source.latin1(position + 4, 4);
    long length = source.uint32At(position);
    int header = 8;
    if (length == 1) {
      header = 16;
      // The upper half of an extended length counts more bytes than there can be.
      length = source.uint32At(position + 8) > 0 ? Long.MAX_VALUE : source.uint32At(position + 12);
      length = Math.max(length, header);
    }
    boolean cut = length > limit - position;
    int end = length == 0 || cut ? limit : position + (int) length;
    return new Box(type, position + header, end, cut);
  }

  private void take(Box box) {
    switch (box.type()) {
      case "jp2h", "res " -> children(box);
      case "ftyp" -> fileType(box);
      case "ihdr" -> imageHeader(box);
      case "colr" -> colour(box);
      case "resc" -> resolution(box, true);
      case "resd" -> resolution(box, false);
      case "jp2c" -> codestream(box);
      default -> {}
    }
  }

  private void children(Box parent) {
    int position = parent.content();
    while (isBox(position, parent.end())) {
      Box box = boxAt(position, parent.end());
      if (box.cut()) {
        draft.damage(position, "box " + box.type() + " reaches beyond the box that holds it");
      } else if (mayHold(parent, box)) {
        take(box);
      }
      position = box.end();
    }
  }

  /** A box nested in its own kind would let a file choose how deep we go. */
  private static boolean mayHold(Box parent, Box child) {
    return switch (child.type()) {
      case "ihdr", "colr", "res " -> parent.type().equals("jp2h");
      case "resc", "resd" -> parent.type().equals("res ");
      default -> false;
    };
  }

  private static int length(Box box) {
    return box.end() - box.content();
  }

  private void fileType(Box box) {
    if (length(box) >= 4) {
      String brand = source.latin1(box.content(), 4).strip();
      draft.fact("brand", brand.matches("[ -~]+") ? brand : "unreadable");
    }
  }

  private void imageHeader(Box box) {
    if (length(box) < 14) {
      draft.damage(box.content(), "the image header box (ihdr) is too short");
      return;
    }
    boxHeight = source.uint32At(box.content());
    boxWidth = source.uint32At(box.content() + 4);
  }

  private void colour(Box box) {
    if (length(box) < 3 || draft.fact("color space").isPresent()) {
      return;
    }
    int method = source.byteAt(box.content());
    long number = length(box) >= 7 ? source.uint32At(box.content() + 3) : 0;
    String name =
        switch (method == 1 ? (int) number : -1) {
          case 16 -> "sRGB";
          case 17 -> "grayscale";
          case 18 -> "sYCC";
          case -1 -> "ICC profile";
          default -> "number " + number;
        };
    draft.fact("color space", name);
  }

  /** Samples per metre as fractions with decimal exponents; capture goes before display. */
  private void resolution(Box box, boolean capture) {
    if (length(box) < RESOLUTION_BYTES) {
      draft.damage(box.content(), "a resolution box is too short");
      return;
    }
    int at = box.content();
    double vertical = perMetre(at, at + 8);
    double horizontal = perMetre(at + 4, at + 9);
    draft.fact(
        capture ? "capture resolution" : "display resolution",
        String.format(Locale.ROOT, "%s x %s per meter", horizontal, vertical));
    if (capture && !captureDensitySeen) {
      captureDensitySeen = true;
      draft.density = Optional.empty();
    }
    draft.density(new PixelDensity(horizontal * METRES_PER_INCH, vertical * METRES_PER_INCH));
  }

  private double perMetre(int fraction, int exponent) {
    int denominator = source.uint16At(fraction + 2);
    return denominator == 0
        ? 0
        : source.uint16At(fraction) * Math.pow(10, (byte) source.byteAt(exponent)) / denominator;
  }

  private void codestream(Box box) {
    if (codestreamSeen) {
      return;
    }
    codestreamSeen = true;
    int end = new Jpeg2000HeaderReader(draft, box.content(), box.end()).walk().orElse(box.end());
    if (end < box.end()) {
      draft.fact("bytes after the end marker in the codestream box", box.end() - end);
    }
    if (draft.width > 0 && boxWidth > 0 && (boxWidth != draft.width || boxHeight != draft.height)) {
      draft.damage(
          box.content(),
          String.format(
              Locale.ROOT,
              "the image header box states %d x %d pixels, the codestream %d x %d",
              boxWidth,
              boxHeight,
              draft.width,
              draft.height));
    }
  }
}
