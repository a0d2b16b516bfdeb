package ridgeproof.imagery.codec;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.finding.Quantity;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageCodec;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageDefect.Kind;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.transaction.record.ByteSource;

/**
 * Pixels without compression, row by row from the top left: 8 or 16 bits of gray (big-endian), 24
 * bits of red, green and blue, or 1 bit with 1 for black, the most significant bit first.
 */
public final class RawCodec implements ImageCodec {

  @Override
  public Set<ImageFormat> formats() {
    return Set.of(ImageFormat.RAW);
  }

  @Override
  public Decoding decode(ByteSource pixels, StatedSize stated, DecodingLimits limits) {
    int offset = pixels.origin();
    int bits = stated.bitsPerPixel();
    if (stated.width() < 1 || stated.height() < 1) {
      return damaged(
          offset, String.format(Locale.ROOT, "%d x %d pixels", stated.width(), stated.height()));
    }
    if (bits != 1 && bits != 8 && bits != 16 && bits != 24) {
      return damaged(offset, Quantity.of(bits, "bit") + " for each pixel");
    }
    Optional<ImageDefect> refusal =
        ImageSizeGuard.refusal(stated.width(), stated.height(), offset, limits);
    if (refusal.isPresent()) {
      return Decoding.failed(refusal.get());
    }
    long rowBits = rowBits(pixels, stated);
    long needed = (rowBits * stated.height() + 7) / 8;
    int rows = (int) Math.min(stated.height(), pixels.length() * 8L / rowBits);
    if (rows == 0) {
      return damaged(offset, missing(needed, pixels.length()));
    }
    GrayImage image = image(pixels, stated, rows, rowBits);
    if (needed > pixels.length()) {
      return new Decoding(
          Optional.of(image),
          List.of(
              new ImageDefect(
                  Kind.DAMAGE,
                  offset + pixels.length(),
                  missing(needed, pixels.length())
                      + (rows == 1
                          ? ": the first row is shown"
                          : ": the first " + rows + " rows are shown"))));
    }
    if (needed < pixels.length()) {
      long surplus = pixels.length() - needed;
      String detail = Quantity.of(surplus, "byte") + " after the last row of pixels";
      return new Decoding(
          Optional.of(image),
          List.of(new ImageDefect(Kind.TRAILING_BYTES, offset + (int) needed, detail)));
    }
    return new Decoding(Optional.of(image), List.of());
  }

  private static Decoding damaged(int offset, String detail) {
    return Decoding.failed(new ImageDefect(Kind.DAMAGE, offset, detail));
  }

  private static String missing(long needed, int there) {
    return Quantity.of(there, "byte") + " of pixels where " + needed + " are expected";
  }

  /** Binary rows begin on a whole byte, unless only rows without padding fill the bytes exactly. */
  private static long rowBits(ByteSource pixels, StatedSize stated) {
    long bits = (long) stated.width() * stated.bitsPerPixel();
    long padded = (bits + 7) / 8 * 8;
    boolean packed = (bits * stated.height() + 7) / 8 == pixels.length();
    return packed && padded / 8 * stated.height() != pixels.length() ? bits : padded;
  }

  private static GrayImage image(ByteSource source, StatedSize stated, int rows, long rowBits) {
    int width = stated.width();
    byte[] gray = new byte[width * rows];
    if (stated.bitsPerPixel() == 8) {
      source.asBuffer().get(0, gray);
      return GrayImage.owning(width, rows, gray);
    }
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < width; x++) {
        gray[y * width + x] = (byte) level(source, y * rowBits, x, stated.bitsPerPixel());
      }
    }
    return GrayImage.owning(width, rows, gray);
  }

  private static int level(ByteSource source, long rowBit, int x, int bits) {
    long bit = rowBit + (long) x * bits;
    int at = (int) (bit / 8);
    return switch (bits) {
      case 1 -> (source.byteAt(at) >> (7 - bit % 8) & 1) == 1 ? 0 : 255;
      case 16 -> GrayConverter.level(source.uint16At(at), 16);
      default ->
          GrayConverter.luminance(source.byteAt(at), source.byteAt(at + 1), source.byteAt(at + 2));
    };
  }
}
