package ridgeproof.imagery.header;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import ridgeproof.finding.Quantity;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.record.ByteSource;

/** Reads the directories of a TIFF file (TIFF 6.0); the image is the first of them. */
final class TiffHeaderReader {

  private static final int IMAGE_WIDTH = 256;
  private static final int IMAGE_LENGTH = 257;
  private static final int BITS_PER_SAMPLE = 258;
  private static final int COMPRESSION = 259;
  private static final int PHOTOMETRIC = 262;
  private static final int FILL_ORDER = 266;
  private static final int STRIP_OFFSETS = 273;
  private static final int SAMPLES_PER_PIXEL = 277;
  private static final int STRIP_BYTE_COUNTS = 279;
  private static final int TILE_OFFSETS = 324;
  private static final int TILE_BYTE_COUNTS = 325;
  private static final int MAX_DIRECTORIES = 64;

  private final ImageHeaderBuilder draft;
  private final ByteSource source;

  TiffHeaderReader(ByteSource source) {
    this.draft = new ImageHeaderBuilder(source, ImageFormat.TIFF);
    this.source = source;
  }

  ImageHeader read() {
    draft.fact("byte order", source.byteAt(0) == 'I' ? "little-endian" : "big-endian");
    Optional<TiffDirectory> first = TiffDirectory.first(source);
    if (first.isEmpty()) {
      draft.damage(Math.min(4, source.length()), "holds no image file directory");
      return draft.finish();
    }
    image(first.get());
    int end = 8;
    int directories = 0;
    Optional<TiffDirectory> directory = first;
    while (directory.isPresent() && directories < MAX_DIRECTORIES) {
      directories++;
      if (directory.get().damagedEntries() > 0) {
        draft.damage(4, directory.get().damagedEntries() + " directory entries that do not fit");
      }
      end = Math.max(end, Math.max(directory.get().end(), dataEnd(directory.get())));
      directory = directory.get().following();
    }
    draft.fact("directories", directories);
    draft.endsAt(end);
    return draft.finish();
  }

  private void image(TiffDirectory directory) {
    OptionalLong width = directory.number(IMAGE_WIDTH);
    OptionalLong height = directory.number(IMAGE_LENGTH);
    draft.size(width.orElse(0), height.orElse(0), 0);
    samples(directory);
    draft.density = directory.density();
    int compression = (int) directory.number(COMPRESSION).orElse(1);
    draft.fact("compression", compression(compression));
    draft.lossless =
        switch (compression) {
          case 6 -> Optional.of(false);
          case 1, 2, 3, 4, 5, 8, 32773, 32946 -> Optional.of(true);
          default -> Optional.empty();
        };
    directory.number(PHOTOMETRIC).ifPresent(p -> draft.fact("photometric", photometric(p)));
    directory.number(FILL_ORDER).ifPresent(order -> draft.fact("fill order", order));
  }

  private void samples(TiffDirectory directory) {
    List<Long> bits = directory.numbers(BITS_PER_SAMPLE);
    long samples = directory.number(SAMPLES_PER_PIXEL).orElse(1);
    long firstBits = bits.isEmpty() ? 1 : bits.get(0);
    if (samples < 1 || samples > 16 || firstBits < 1 || firstBits > 64) {
      draft.damage(
          0,
          Quantity.of(samples, "sample")
              + " of "
              + Quantity.of(firstBits, "bit")
              + " for each pixel");
      return;
    }
    draft.components = (int) samples;
    draft.bitsPerPixel = (int) (samples * firstBits);
  }

  /** The end of the pixels' data, which is cut off where its strips reach beyond the bytes. */
  private int dataEnd(TiffDirectory directory) {
    boolean tiled = !directory.numbers(TILE_OFFSETS).isEmpty();
    List<Long> offsets = directory.numbers(tiled ? TILE_OFFSETS : STRIP_OFFSETS);
    List<Long> counts = directory.numbers(tiled ? TILE_BYTE_COUNTS : STRIP_BYTE_COUNTS);
    if (offsets.isEmpty() || offsets.size() != counts.size()) {
      draft.damage(4, "no usable list of strips");
      return 0;
    }
    long end = 0;
    for (int i = 0; i < offsets.size(); i++) {
      end = Math.max(end, offsets.get(i) + counts.get(i));
    }
    if (end > source.length()) {
      draft.damage(source.length(), "ends within its image data");
    }
    return (int) Math.min(end, source.length());
  }

  private static String compression(int number) {
    return switch (number) {
      case 1 -> "none";
      case 2 -> "CCITT modified Huffman";
      case 3 -> "CCITT Group 3";
      case 4 -> "CCITT Group 4";
      case 5 -> "LZW";
      case 6, 7 -> "JPEG";
      case 8, 32946 -> "Deflate";
      case 32773 -> "PackBits";
      default -> "number " + number;
    };
  }

  private static String photometric(long number) {
    return switch ((int) number) {
      case 0 -> "white is zero";
      case 1 -> "black is zero";
      case 2 -> "RGB";
      case 3 -> "palette";
      case 6 -> "YCbCr";
      default -> "number " + number;
    };
  }
}
