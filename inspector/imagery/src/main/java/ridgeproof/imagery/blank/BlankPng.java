package ridgeproof.imagery.blank;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import ridgeproof.transaction.record.ByteSource;

/**
 * A blank PNG (W3C PNG): its chunks stay where they are, their content goes, and each checksum is
 * right or wrong as it was.
 */
final class BlankPng {

  private static final int SIGNATURE_BYTES = 8;
  private static final int CHUNK_OVERHEAD = 12;
  private static final int IHDR_BYTES = 13;
  private static final int PALETTE = 3;

  /** Chunks of a few numbers on how pixels are meant. */
  private static final Set<String> KEPT = Set.of("IHDR", "pHYs", "gAMA", "cHRM", "sRGB", "sBIT");

  private static final int MAX_KEPT = 32;

  /** Ancillary, private, safe to copy: no decoder looks at it. */
  private static final String PADDING = "paDd";

  private static final int[][] ADAM7 = {
    {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
  };
  private static final int[][] NOT_INTERLACED = {{0, 0, 1, 1}};

  private final ByteSource source;
  private int dataStart = -1;
  private int dataEnd;

  BlankPng(ByteSource source) {
    this.source = source;
  }

  byte[] bytes(boolean sound) {
    ImageBytes bytes = new ImageBytes(source, 0);
    bytes.keep(0, SIGNATURE_BYTES);
    int position = SIGNATURE_BYTES;
    String type = "";
    while (!type.equals("IEND") && source.has(position, CHUNK_OVERHEAD)) {
      long length = source.uint32At(position);
      if (length > source.length() - position - CHUNK_OVERHEAD) {
        bytes.keep(position, 8);
        break;
      }
      type = source.latin1(position + 4, 4);
      chunk(bytes, type, position, (int) length);
      position += CHUNK_OVERHEAD + (int) length;
    }
    if (sound && dataStart >= 0) {
      blankData().ifPresent(data -> bytes.put(dataStart, data));
    }
    return bytes.toArray();
  }

  private void chunk(ImageBytes bytes, String type, int position, int length) {
    if (type.equals("IDAT")) {
      dataStart = dataStart < 0 ? position : dataStart;
      dataEnd = position + CHUNK_OVERHEAD + length;
    }
    byte[] content = new byte[length];
    if (KEPT.contains(type) && length <= MAX_KEPT) {
      source.slice(position + 8, length).asBuffer().get(content);
    }
    ByteSource typed = source.slice(position + 4, 4 + length);
    boolean right = crc(typed.toArray()) == source.uint32At(position + 8 + length);
    byte[] chunk = chunk(type, content);
    // A wrong checksum stays wrong.
    chunk[chunk.length - 1] ^= (byte) (right ? 0 : 1);
    bytes.put(position, chunk);
  }

  /** One chunk of data and one of padding in the place of all data there was. */
  private Optional<byte[]> blankData() {
    byte[] data = chunk("IDAT", deflated());
    int spare = dataEnd - dataStart - data.length;
    if (spare < 0 || spare > 0 && spare < CHUNK_OVERHEAD) {
      return Optional.empty();
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(data);
    if (spare > 0) {
      out.writeBytes(chunk(PADDING, new byte[spare - CHUNK_OVERHEAD]));
    }
    return Optional.of(out.toByteArray());
  }

  private byte[] deflated() {
    ByteSource header = source.slice(SIGNATURE_BYTES + 8, IHDR_BYTES);
    int colour = header.byteAt(9);
    long bits = (long) header.byteAt(8) * samples(colour);
    int level = colour == PALETTE ? 0 : 0xFF;
    int[][] passes = header.byteAt(12) == 0 ? NOT_INTERLACED : ADAM7;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
    byte[] buffer = new byte[8192];
    for (int[] pass : passes) {
      long columns = (header.uint32At(0) - pass[0] + pass[2] - 1) / pass[2];
      long rows = (header.uint32At(4) - pass[1] + pass[3] - 1) / pass[3];
      byte[] line = new byte[columns > 0 ? 1 + (int) ((columns * bits + 7) / 8) : 0];
      Arrays.fill(line, (byte) level);
      for (long y = 0; y < rows && line.length > 0; y++) {
        line[0] = 0;
        deflater.setInput(line);
        while (!deflater.needsInput()) {
          out.write(buffer, 0, deflater.deflate(buffer));
        }
      }
    }
    deflater.finish();
    while (!deflater.finished()) {
      out.write(buffer, 0, deflater.deflate(buffer));
    }
    deflater.end();
    return out.toByteArray();
  }

  private static int samples(int colour) {
    return switch (colour) {
      case 2 -> 3;
      case 4 -> 2;
      case 6 -> 4;
      default -> 1;
    };
  }

  private static byte[] chunk(String type, byte[] content) {
    byte[] typed =
        ByteBuffer.allocate(4 + content.length)
            .put(type.getBytes(StandardCharsets.ISO_8859_1))
            .put(content)
            .array();
    return ByteBuffer.allocate(CHUNK_OVERHEAD + content.length)
        .putInt(content.length)
        .put(typed)
        .putInt((int) crc(typed))
        .array();
  }

  private static long crc(byte[] bytes) {
    CRC32 crc = new CRC32();
    crc.update(bytes);
    return crc.getValue();
  }
}
