package ridgeproof.imagery.standin;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import ridgeproof.imagery.GrayImage;
import ridgeproof.transaction.record.ByteSource;

/** Another picture as PNG (W3C PNG), among the chunks that there were. */
final class PngStandIn {

  private static final int SIGNATURE_BYTES = 8;
  private static final int CHUNK_OVERHEAD = 12;
  private static final int DEPTH_AT = 24;
  private static final int COLOR_AT = 25;
  private static final int INTERLACE_AT = 28;
  private static final int GRAY = 0;
  private static final int RGB = 2;
  private static final byte FILTER_UP = 2;

  /** Ancillary, private, safe to copy: no decoder looks at it. */
  private static final String PADDING = "paDd";

  private final ByteSource image;
  private final byte[] blank;

  PngStandIn(ByteSource image, byte[] blank) {
    this.image = image;
    this.blank = blank;
  }

  Optional<byte[]> of(GrayImage picture) {
    int start = dataStart();
    if (start < 0 || samples() == 0 || image.byteAt(INTERLACE_AT) != 0) {
      return Optional.empty();
    }
    int room = dataEnd(start) - start;
    return Coarsened.fitting(picture, simple -> data(simple, room))
        .map(
            bytes -> {
              byte[] whole = blank.clone();
              System.arraycopy(bytes, 0, whole, start, bytes.length);
              return whole;
            });
  }

  /** Bytes of a pixel; 0 for depths and colors that are not written here, -1 for 1 bit. */
  private int samples() {
    int depth = image.byteAt(DEPTH_AT);
    int color = image.byteAt(COLOR_AT);
    if (color == GRAY && depth == 1) {
      return -1;
    }
    return depth != 8 ? 0 : color == GRAY ? 1 : color == RGB ? 3 : 0;
  }

  private int dataStart() {
    int position = SIGNATURE_BYTES;
    while (image.has(position, CHUNK_OVERHEAD)) {
      if (image.latin1(position + 4, 4).equals("IDAT")) {
        return position;
      }
      position = next(position);
    }
    return -1;
  }

  private int dataEnd(int start) {
    int position = start;
    while (image.has(position, CHUNK_OVERHEAD) && image.latin1(position + 4, 4).equals("IDAT")) {
      position = next(position);
    }
    return position;
  }

  private int next(int position) {
    long end = position + CHUNK_OVERHEAD + image.uint32At(position);
    return (int) Math.min(end, image.length());
  }

  /** One chunk of data and one of padding; empty where they have no room. */
  private Optional<byte[]> data(GrayImage picture, int room) {
    byte[] data = chunk("IDAT", deflated(picture));
    int spare = room - data.length;
    if (spare < 0 || spare > 0 && spare < CHUNK_OVERHEAD) {
      return Optional.empty();
    }
    return Optional.of(
        spare == 0
            ? data
            : SegmentPadding.inserted(
                data, data.length, chunk(PADDING, new byte[spare - CHUNK_OVERHEAD])));
  }

  private byte[] deflated(GrayImage picture) {
    int samples = samples();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
    try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater)) {
      byte[] above = new byte[samples < 0 ? (picture.width() + 7) / 8 : samples * picture.width()];
      for (int y = 0; y < picture.height(); y++) {
        byte[] line = line(picture, y, samples, above.length);
        byte[] filtered = new byte[1 + line.length];
        filtered[0] = FILTER_UP;
        for (int i = 0; i < line.length; i++) {
          filtered[1 + i] = (byte) (line[i] - above[i]);
        }
        out.write(filtered);
        above = line;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      deflater.end();
    }
    return bytes.toByteArray();
  }

  private static byte[] line(GrayImage picture, int y, int samples, int length) {
    byte[] line = new byte[length];
    for (int x = 0; x < picture.width(); x++) {
      int gray = picture.grayAt(x, y);
      if (samples < 0) {
        line[x / 8] |= (byte) ((gray >> 7) << 7 - x % 8);
      } else {
        for (int i = 0; i < samples; i++) {
          line[samples * x + i] = (byte) gray;
        }
      }
    }
    return line;
  }

  private static byte[] chunk(String type, byte[] content) {
    byte[] typed =
        ByteBuffer.allocate(4 + content.length)
            .put(type.getBytes(StandardCharsets.ISO_8859_1))
            .put(content)
            .array();
    CRC32 crc = new CRC32();
    crc.update(typed);
    return ByteBuffer.allocate(CHUNK_OVERHEAD + content.length)
        .putInt(content.length)
        .put(typed)
        .putInt((int) crc.getValue())
        .array();
  }
}
