package ridgeproof.imagery.header;

import java.util.Optional;
import java.util.zip.CRC32;
import ridgeproof.finding.Quantity;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.transaction.record.ByteSource;

/** Walks the chunks of a PNG datastream (ISO/IEC 15948, W3C PNG). */
final class PngHeaderReader {

  private static final int SIGNATURE_BYTES = 8;
  private static final int CHUNK_OVERHEAD = 12;
  private static final int IHDR_BYTES = 13;
  private static final double METRES_PER_INCH = 0.0254;

  private final ImageHeaderBuilder draft;
  private final ByteSource source;
  private int dataChunks;
  private boolean dataEnded;

  PngHeaderReader(ByteSource source) {
    this.draft = new ImageHeaderBuilder(source, ImageFormat.PNG);
    this.source = source;
  }

  ImageHeader read() {
    draft.lossless = Optional.of(true);
    int position = SIGNATURE_BYTES;
    if (!"IHDR".equals(typeAt(position))) {
      draft.damage(position, "the first chunk is not IHDR");
    }
    boolean ended = false;
    while (!ended && isWhole(position)) {
      int length = (int) source.uint32At(position);
      String type = typeAt(position);
      checkCrc(position, length, type);
      take(type, source.slice(position + 8, length), position);
      position += CHUNK_OVERHEAD + length;
      ended = type.equals("IEND");
    }
    if (ended) {
      draft.endsAt(position);
    }
    if (dataChunks == 0) {
      draft.damage(position, "holds no image data (IDAT)");
    }
    draft.fact("data chunks", dataChunks);
    return draft.finish();
  }

  private boolean isWhole(int position) {
    if (source.length() == position) {
      draft.damage(position, "ends before the IEND chunk");
      return false;
    }
    long length = source.has(position, 8) ? source.uint32At(position) : Long.MAX_VALUE;
    if (length > source.length() - position - (long) CHUNK_OVERHEAD) {
      draft.damage(position, "ends within a chunk");
      return false;
    }
    return true;
  }

  private String typeAt(int position) {
    return source.has(position, 8) ? source.latin1(position + 4, 4) : "";
  }

  private void checkCrc(int position, int length, String type) {
    CRC32 crc = new CRC32();
    crc.update(source.slice(position + 4, length + 4).asBuffer());
    if (crc.getValue() != source.uint32At(position + 8 + length)) {
      draft.damage(position, "the checksum (CRC) of chunk " + printable(type) + " is wrong");
    }
  }

  private void take(String type, ByteSource data, int position) {
    dataEnded |= dataChunks > 0 && !type.equals("IDAT");
    switch (type) {
      case "IHDR" -> header(data, position);
      case "pHYs" -> physical(data);
      case "IDAT" -> {
        if (dataEnded) {
          draft.damage(position, "the image data (IDAT) is not in one piece");
        }
        dataChunks++;
      }
      case "tEXt" -> text(data);
      default -> {}
    }
  }

  private void header(ByteSource data, int position) {
    if (data.length() != IHDR_BYTES || position != SIGNATURE_BYTES) {
      draft.damage(
          position,
          "an IHDR chunk of " + Quantity.of(data.length(), "byte") + " that does not fit");
      return;
    }
    draft.size(data.uint32At(0), data.uint32At(4), position);
    int depth = data.byteAt(8);
    int colourType = data.byteAt(9);
    String name = colourType(colourType);
    if (name.isEmpty() || !isDepth(depth, colourType)) {
      draft.damage(position, "color type " + colourType + " with bit depth " + depth);
      return;
    }
    draft.fact("color type", name);
    draft.fact("bit depth", depth);
    draft.fact("interlace", data.byteAt(12) == 0 ? "none" : "Adam7");
    draft.components =
        switch (colourType) {
          case 0 -> 1;
          case 4 -> 2;
          case 6 -> 4;
          default -> 3;
        };
    // A palette holds samples of 8 bits, however short the index is.
    draft.bitsPerPixel = draft.components * (colourType == 3 ? 8 : depth);
  }

  private static String colourType(int number) {
    return switch (number) {
      case 0 -> "grayscale";
      case 2 -> "truecolour";
      case 3 -> "palette";
      case 4 -> "grayscale with alpha";
      case 6 -> "truecolor with alpha";
      default -> "";
    };
  }

  private static boolean isDepth(int depth, int colourType) {
    return switch (depth) {
      case 1, 2, 4 -> colourType == 0 || colourType == 3;
      case 8 -> true;
      case 16 -> colourType != 3;
      default -> false;
    };
  }

  private void physical(ByteSource data) {
    if (data.length() != 9) {
      return;
    }
    boolean metres = data.byteAt(8) == 1;
    draft.fact("pHYs unit", metres ? "metre" : "unknown");
    if (metres) {
      draft.density(
          new PixelDensity(data.uint32At(0) * METRES_PER_INCH, data.uint32At(4) * METRES_PER_INCH));
    }
  }

  private void text(ByteSource data) {
    int separator = data.indexOf(0, 0);
    if (separator > 0) {
      int start = separator + 1;
      draft.comment(data.latin1(0, separator), data.latin1(start, data.length() - start));
    }
  }

  private static String printable(String type) {
    return type.chars().allMatch(c -> c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z')
        ? type
        : "of no possible type";
  }
}
