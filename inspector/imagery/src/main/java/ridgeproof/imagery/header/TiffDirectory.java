package ridgeproof.imagery.header;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.transaction.record.ByteSource;

/** An image file directory of TIFF 6.0, which Exif shares. */
final class TiffDirectory {

  static final int X_RESOLUTION = 282;
  static final int Y_RESOLUTION = 283;
  static final int RESOLUTION_UNIT = 296;

  /** Strip and tile lists of an image of ours are far shorter. */
  private static final int MAX_VALUES = 100_000;

  private static final int ENTRY_BYTES = 12;

  /**
   * One entry.
   *
   * @param position of its value or values
   */
  private record Entry(int type, long count, int position) {}

  private final ByteSource tiff;
  private final boolean littleEndian;
  private final Map<Integer, Entry> entries = new LinkedHashMap<>();
  private int damagedEntries;
  private int end;
  private long next;

  private TiffDirectory(ByteSource tiff) {
    this.tiff = tiff;
    this.littleEndian = tiff.byteAt(0) == 'I';
  }

  /** The first directory, or empty where the bytes hold none. */
  static Optional<TiffDirectory> first(ByteSource tiff) {
    if (!tiff.startsWith(0, 'I', 'I', 42, 0) && !tiff.startsWith(0, 'M', 'M', 0, 42)
        || tiff.length() < 8) {
      return Optional.empty();
    }
    TiffDirectory directory = new TiffDirectory(tiff);
    return directory.readAt(directory.uint32(4)) ? Optional.of(directory) : Optional.empty();
  }

  /** The directory that follows, or empty after the last one. */
  Optional<TiffDirectory> following() {
    TiffDirectory directory = new TiffDirectory(tiff);
    return next > 0 && directory.readAt(next) ? Optional.of(directory) : Optional.empty();
  }

  private boolean readAt(long offset) {
    if (offset < 8 || offset > Integer.MAX_VALUE || !tiff.has((int) offset, 2)) {
      return false;
    }
    int start = (int) offset + 2;
    int count = uint16((int) offset);
    int whole = Math.min(count, (tiff.length() - start) / ENTRY_BYTES);
    damagedEntries = count - whole;
    for (int i = 0; i < whole; i++) {
      readEntry(start + i * ENTRY_BYTES);
    }
    int after = start + whole * ENTRY_BYTES;
    next = tiff.has(after, 4) ? uint32(after) : 0;
    end = Math.max(end, Math.min(after + 4, tiff.length()));
    return true;
  }

  private void readEntry(int at) {
    int type = uint16(at + 2);
    long count = uint32(at + 4);
    long bytes = count * sizeOf(type);
    long position = bytes <= 4 ? at + 8 : uint32(at + 8);
    if (bytes == 0 || position + bytes > tiff.length()) {
      damagedEntries++;
      return;
    }
    entries.put(uint16(at), new Entry(type, count, (int) position));
    end = Math.max(end, (int) (position + bytes));
  }

  private static int sizeOf(int type) {
    return switch (type) {
      case 1, 2, 6, 7 -> 1;
      case 3, 8 -> 2;
      case 4, 9, 11, 13 -> 4;
      case 5, 10, 12 -> 8;
      default -> 0;
    };
  }

  /** Entries that are cut off, of no known type, or point outside the bytes. */
  int damagedEntries() {
    return damagedEntries;
  }

  /** The position after the last byte that the directory or its values take. */
  int end() {
    return end;
  }

  /** The first value of a tag, where it is a whole number. */
  OptionalLong number(int tag) {
    List<Long> values = numbers(tag);
    return values.isEmpty() ? OptionalLong.empty() : OptionalLong.of(values.get(0));
  }

  /** All values of a tag, where they are whole numbers and not too many. */
  List<Long> numbers(int tag) {
    Entry entry = entries.get(tag);
    List<Long> values = new ArrayList<>();
    if (entry != null && entry.count() <= MAX_VALUES) {
      for (int i = 0; i < entry.count(); i++) {
        switch (entry.type()) {
          case 1 -> values.add((long) tiff.byteAt(entry.position() + i));
          case 3 -> values.add((long) uint16(entry.position() + 2 * i));
          case 4 -> values.add(uint32(entry.position() + 4 * i));
          default -> {}
        }
      }
    }
    return values;
  }

  /** From XResolution, YResolution and ResolutionUnit (inch unless it says otherwise). */
  Optional<PixelDensity> density() {
    double x = rational(X_RESOLUTION);
    double y = rational(Y_RESOLUTION);
    if (x <= 0 || y <= 0) {
      return Optional.empty();
    }
    return switch ((int) number(RESOLUTION_UNIT).orElse(2)) {
      case 2 -> Optional.of(new PixelDensity(x, y));
      case 3 -> Optional.of(PixelDensity.ofPpcm(x, y));
      default -> Optional.empty();
    };
  }

  private double rational(int tag) {
    Entry entry = entries.get(tag);
    if (entry == null || entry.type() != 5) {
      return 0;
    }
    long denominator = uint32(entry.position() + 4);
    return denominator == 0 ? 0 : (double) uint32(entry.position()) / denominator;
  }

  private int uint16(int at) {
    return littleEndian ? tiff.byteAt(at) | tiff.byteAt(at + 1) << 8 : tiff.uint16At(at);
  }

  private long uint32(int at) {
    return littleEndian ? uint16(at) | (long) uint16(at + 2) << 16 : tiff.uint32At(at);
  }
}
