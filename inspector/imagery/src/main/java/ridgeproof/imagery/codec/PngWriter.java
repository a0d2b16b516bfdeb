package ridgeproof.imagery.codec;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;

/** Writes 8-bit gray images as PNG (ISO/IEC 15948); the same image always gives the same bytes. */
public final class PngWriter {

  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final double INCHES_PER_METRE = 1 / 0.0254;
  private static final int BIT_DEPTH = 8;
  private static final int GRAYSCALE = 0;
  private static final int METRE = 1;
  private static final byte FILTER_UP = 2;

  private PngWriter() {}

  /** Writes the image, with a pHYs chunk where its density is known; leaves the stream open. */
  public static void write(GrayImage image, Optional<PixelDensity> density, OutputStream out)
      throws IOException {
    out.write(SIGNATURE);
    chunk(out, "IHDR", header(image));
    if (density.isPresent()) {
      chunk(out, "pHYs", physical(density.get()));
    }
    chunk(out, "IDAT", compressed(image));
    chunk(out, "IEND", new byte[0]);
  }

  /** The bytes of the same. */
  public static byte[] encode(GrayImage image, Optional<PixelDensity> density) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      write(image, density, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static byte[] header(GrayImage image) {
    return ByteBuffer.allocate(13)
        .putInt(image.width())
        .putInt(image.height())
        .put((byte) BIT_DEPTH)
        .put((byte) GRAYSCALE)
        .array();
  }

  private static byte[] physical(PixelDensity density) {
    return ByteBuffer.allocate(9)
        .putInt((int) Math.round(density.horizontalPpi() * INCHES_PER_METRE))
        .putInt((int) Math.round(density.verticalPpi() * INCHES_PER_METRE))
        .put((byte) METRE)
        .array();
  }

  private static byte[] compressed(GrayImage image) throws IOException {
    int width = image.width();
    byte[] pixels = image.toArray();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Deflater deflater = new Deflater();
    try (DeflaterOutputStream deflated = new DeflaterOutputStream(bytes, deflater)) {
      byte[] line = new byte[width + 1];
      line[0] = FILTER_UP;
      for (int y = 0; y < image.height(); y++) {
        for (int x = 0; x < width; x++) {
          int at = y * width + x;
          line[x + 1] = (byte) (pixels[at] - (y == 0 ? 0 : pixels[at - width]));
        }
        deflated.write(line);
      }
    } finally {
      deflater.end();
    }
    return bytes.toByteArray();
  }

  private static void chunk(OutputStream out, String type, byte[] data) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(data);
    out.write(ByteBuffer.allocate(4).putInt(data.length).array());
    out.write(name);
    out.write(data);
    out.write(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }
}
