package ridgeproof.imagery.codec;

import java.util.Locale;
import java.util.Optional;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageDefect.Kind;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.record.ByteSource;

/** Whether a stated size may be believed, before anything of that size is allocated. */
final class ImageSizeGuard {

  /** Gray or colour, each with alpha. */
  private static final int MAX_COMPONENTS = 4;

  private static final int MAX_BITS_PER_SAMPLE = 16;

  /** Deflate repeats at most 258 bytes for 2 bits (RFC 1951). */
  private static final long DEFLATE_BYTES_PER_BYTE = 1032;

  /** Baseline JPEG spends at least 2 bits on a block of 64 samples: end-of-block and DC. */
  private static final long JPEG_PIXELS_PER_BYTE = 256;

  /** Lossless JPEG spends at least 1 bit on a pixel. */
  private static final long LOSSLESS_JPEG_PIXELS_PER_BYTE = 8;

  private ImageSizeGuard() {}

  /** Why the codestream is not decoded, if so. */
  static Optional<ImageDefect> refusal(
      ByteSource codestream, ImageHeader header, DecodingLimits limits) {
    int offset = header.extent().offset();
    if (header.format() == ImageFormat.RAW) {
      return Optional.empty();
    }
    if (header.width() <= 0 || header.height() <= 0) {
      return Optional.of(new ImageDefect(Kind.DAMAGE, offset, "the image states no size"));
    }
    if (header.components() > MAX_COMPONENTS) {
      return Optional.of(
          new ImageDefect(Kind.LIMIT, offset, header.components() + " color components"));
    }
    // Readers keep a table of all values that a sample may have.
    if (header.bitsPerPixel() > MAX_BITS_PER_SAMPLE * Math.max(1, header.components())) {
      return Optional.of(
          new ImageDefect(Kind.LIMIT, offset, header.bitsPerPixel() + " bits per pixel"));
    }
    long pixels = (long) header.width() * header.height();
    if (pixels > mostPixels(codestream, header)) {
      String detail =
          String.format(
              Locale.ROOT,
              "states %d x %d pixels, more than %d bytes can hold",
              header.width(),
              header.height(),
              codestream.length());
      return Optional.of(new ImageDefect(Kind.DAMAGE, offset, detail));
    }
    return refusal(header.width(), header.height(), offset, limits);
  }

  /** The limit on pixels alone. */
  static Optional<ImageDefect> refusal(long width, long height, int offset, DecodingLimits limits) {
    // An array holds no more, whatever the limit is.
    long most = Math.min(limits.maxPixels(), Integer.MAX_VALUE - 8L);
    return width * height > most
        ? Optional.of(
            new ImageDefect(
                Kind.LIMIT,
                offset,
                String.format(Locale.ROOT, "%d x %d pixels, more than %d", width, height, most)))
        : Optional.empty();
  }

  private static long mostPixels(ByteSource codestream, ImageHeader header) {
    long bytes = codestream.length();
    return switch (header.format()) {
      case PNG -> bytes * DEFLATE_BYTES_PER_BYTE * 8 / pngBits(header);
      case JPEG ->
          header.facts().getOrDefault("coding process", "").equals("baseline DCT")
              ? bytes * JPEG_PIXELS_PER_BYTE
              : Long.MAX_VALUE;
      case JPEG_LOSSLESS ->
          header.facts().getOrDefault("coding process", "").equals("lossless")
              ? bytes * LOSSLESS_JPEG_PIXELS_PER_BYTE
              : Long.MAX_VALUE;
      default -> Long.MAX_VALUE;
    };
  }

  /** Bits of a pixel as stored, which is the index where there is a palette. */
  private static int pngBits(ImageHeader header) {
    boolean palette = header.facts().getOrDefault("color type", "").equals("palette");
    return palette ? 1 : Math.max(1, header.bitsPerPixel());
  }
}
