package ridgeproof.imagery.blank;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.transaction.record.ByteSource;

/**
 * Codes scans in which no sample differs from the one predicted (ITU-T T.81 F.1.2 and H.1.2): of
 * each block the difference 0 and the end of the block, of each lossless sample the difference 0.
 */
final class JpegScanBlank {

  private static final int DHT = 0xC4;
  private static final int DRI = 0xDD;
  private static final int RST0 = 0xD0;
  private static final int LOSSLESS = 0xC3;
  private static final int LAST_SEQUENTIAL = 0xC1;
  private static final int BLOCK = 8;
  private static final int AC_TABLES = 0x10;
  private static final int LENGTHS = 16;

  private record Component(int horizontal, int vertical) {}

  /** A code word; none where it has no bits. */
  private record Word(int bits, int length) {}

  private final Map<Integer, Word> wordsOfZero;
  private final Map<Integer, Component> components;
  private final int process;
  private final int width;
  private final int height;
  private final int interval;

  JpegScanBlank() {
    this(Map.of(), Map.of(), 0, 0, 0, 0);
  }

  private JpegScanBlank(
      Map<Integer, Word> wordsOfZero,
      Map<Integer, Component> components,
      int process,
      int width,
      int height,
      int interval) {
    this.wordsOfZero = wordsOfZero;
    this.components = components;
    this.process = process;
    this.width = width;
    this.height = height;
    this.interval = interval;
  }

  /** The same after another segment. */
  JpegScanBlank with(int code, ByteSource body) {
    if (code == DHT) {
      return new JpegScanBlank(tables(body), components, process, width, height, interval);
    }
    if (code == DRI && body.has(0, 2)) {
      return new JpegScanBlank(wordsOfZero, components, process, width, height, body.uint16At(0));
    }
    boolean frame = code == 0xC0 || code == LAST_SEQUENTIAL || code == LOSSLESS;
    return frame && body.has(0, 6) ? frame(code, body) : this;
  }

  private JpegScanBlank frame(int code, ByteSource body) {
    Map<Integer, Component> found = new HashMap<>();
    for (int i = 0; i < body.byteAt(5) && body.has(6 + 3 * i, 3); i++) {
      int factors = body.byteAt(7 + 3 * i);
      found.put(body.byteAt(6 + 3 * i), new Component(factors >> 4, factors & 0xF));
    }
    return new JpegScanBlank(
        wordsOfZero, found, code, body.uint16At(3), body.uint16At(1), interval);
  }

  private Map<Integer, Word> tables(ByteSource body) {
    Map<Integer, Word> words = new HashMap<>(wordsOfZero);
    int at = 0;
    while (body.has(at, 1 + LENGTHS)) {
      int symbol = at + 1 + LENGTHS;
      int code = 0;
      for (int length = 1; length <= LENGTHS; length++) {
        for (int i = 0; i < body.byteAt(at + length) && body.has(symbol, 1); i++) {
          if (body.byteAt(symbol++) == 0) {
            words.put(body.byteAt(at), new Word(code, length));
          }
          code++;
        }
        code <<= 1;
      }
      at = symbol;
    }
    return words;
  }

  /**
   * The coded data of a scan, empty where it cannot be coded or would be longer than there is room.
   */
  Optional<byte[]> scan(ByteSource header, int room) {
    int count = header.isEmpty() ? 0 : header.byteAt(0);
    if (process == 0 || count == 0 || !header.has(0, 1 + 2 * count) || height == 0) {
      return Optional.empty();
    }
    Word[] unit = new Word[0];
    for (int i = 0; i < count; i++) {
      Component component = components.get(header.byteAt(1 + 2 * i));
      Optional<Word[]> words = words(header.byteAt(2 + 2 * i));
      if (component == null || words.isEmpty()) {
        return Optional.empty();
      }
      int blocks = count == 1 ? 1 : component.horizontal() * component.vertical();
      for (int block = 0; block < blocks; block++) {
        int length = unit.length;
        unit = Arrays.copyOf(unit, length + words.get().length);
        System.arraycopy(words.get(), 0, unit, length, words.get().length);
      }
    }
    OptionalInt units = units(count == 1 ? components.get(header.byteAt(1)) : null);
    return units.isEmpty() ? Optional.empty() : coded(unit, units.getAsInt(), room);
  }

  private Optional<Word[]> words(int selectors) {
    Word difference = wordsOfZero.get(selectors >> 4);
    Word end = wordsOfZero.get(AC_TABLES | selectors & 0xF);
    if (difference == null || process != LOSSLESS && end == null) {
      return Optional.empty();
    }
    return Optional.of(
        process == LOSSLESS ? new Word[] {difference} : new Word[] {difference, end});
  }

  /** How many blocks, samples or groups of them the scan holds (T.81 A.2). */
  private OptionalInt units(Component alone) {
    int across = components.values().stream().mapToInt(Component::horizontal).max().orElse(0);
    int down = components.values().stream().mapToInt(Component::vertical).max().orElse(0);
    if (across == 0 || down == 0) {
      return OptionalInt.empty();
    }
    int side = process == LOSSLESS ? 1 : BLOCK;
    long columns;
    long rows;
    if (alone == null) {
      columns = up(width, side * across);
      rows = up(height, side * down);
    } else {
      columns = up(up((long) width * alone.horizontal(), across), side);
      rows = up(up((long) height * alone.vertical(), down), side);
    }
    long units = columns * rows;
    return units > Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of((int) units);
  }

  private static long up(long number, long step) {
    return (number + step - 1) / step;
  }

  private Optional<byte[]> coded(Word[] unit, int units, int room) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    long buffer = 0;
    int buffered = 0;
    int restarts = 0;
    for (int i = 0; i < units; i++) {
      if (interval > 0 && i > 0 && i % interval == 0) {
        flush(out, buffer, buffered);
        buffered = 0;
        out.write(0xFF);
        out.write(RST0 + restarts++ % 8);
      }
      for (Word word : unit) {
        buffer = buffer << word.length() | word.bits();
        buffered += word.length();
        while (buffered >= 8) {
          buffered -= 8;
          write(out, (int) (buffer >>> buffered) & 0xFF);
        }
      }
      if (out.size() > room) {
        return Optional.empty();
      }
    }
    flush(out, buffer, buffered);
    return out.size() > room ? Optional.empty() : Optional.of(out.toByteArray());
  }

  /** Fills the last byte up with ones (T.81 F.1.2.3). */
  private static void flush(ByteArrayOutputStream out, long buffer, int buffered) {
    if (buffered > 0) {
      write(out, (int) (buffer << 8 - buffered | 0xFF >>> buffered) & 0xFF);
    }
  }

  private static void write(ByteArrayOutputStream out, int value) {
    out.write(value);
    if (value == 0xFF) {
      out.write(0);
    }
  }
}
