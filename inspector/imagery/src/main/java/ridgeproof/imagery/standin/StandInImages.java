package ridgeproof.imagery.standin;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.transaction.record.ByteSource;

/** Puts another picture into the place of an uncompressed or WSQ image, byte for byte as long. */
public final class StandInImages {

  private static final int SOI_BYTES = 2;
  private static final byte[] COMMENT = {(byte) 0xFF, (byte) 0xA8};
  private static final int SEGMENT_HEAD = 4;
  private static final int MAX_SEGMENT = 2 + 0xFFFF;

  /** Nearer to the room that there is than this share no further rate is tried. */
  private static final double NEAR = 0.85;

  private static final int MAX_RATES = 8;
  private static final double MIN_RATE = 0.05;

  private StandInImages() {}

  /**
   * The bytes of the picture.
   *
   * @param image whose place it takes
   * @param picture of the same size
   * @param ppi as the image states it
   * @return empty for other formats, and where the picture does not fit into as many bytes
   */
  public static Optional<byte[]> inPlaceOf(ByteSource image, GrayImage picture, int ppi) {
    ImageFormat format = ImageHeaders.formatOf(image);
    if (format == ImageFormat.RAW) {
      byte[] pixels = picture.toArray();
      return pixels.length == image.length() ? Optional.of(pixels) : Optional.empty();
    }
    return format == ImageFormat.WSQ ? wsq(image.length(), picture, ppi) : Optional.empty();
  }

  /** The finest of a few rates that leaves room for no more than padding. */
  private static Optional<byte[]> wsq(int room, GrayImage picture, int ppi) {
    Optional<byte[]> best = Optional.empty();
    double rate = WsqEncoding.STANDARD_BITS_PER_PIXEL;
    for (int i = 0; i < MAX_RATES; i++) {
      byte[] bytes = WsqEncoder.encode(picture, new WsqEncoding(rate, ppi, 0));
      int spare = room - bytes.length;
      boolean fits = spare == 0 || spare >= SEGMENT_HEAD;
      if (fits && best.map(b -> b.length < bytes.length).orElse(true)) {
        best = Optional.of(bytes);
      }
      if (fits && bytes.length >= NEAR * room) {
        break;
      }
      rate =
          Math.max(
              MIN_RATE,
              Math.min(WsqEncoding.HIGH_BITS_PER_PIXEL, rate * (0.95 * room) / bytes.length));
    }
    return best.map(bytes -> padded(bytes, room));
  }

  /** Comments of zeros after the first marker. */
  private static byte[] padded(byte[] wsq, int length) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(length);
    out.write(wsq, 0, SOI_BYTES);
    int left = length - wsq.length;
    while (left > 0) {
      int size = Math.min(left, MAX_SEGMENT);
      // What is left over has to hold a segment of its own.
      size -= left > size && left - size < SEGMENT_HEAD ? SEGMENT_HEAD : 0;
      out.writeBytes(COMMENT);
      out.write(size - 2 >>> 8);
      out.write(size - 2);
      out.writeBytes(new byte[size - SEGMENT_HEAD]);
      left -= size;
    }
    out.writeBytes(Arrays.copyOfRange(wsq, SOI_BYTES, wsq.length));
    return out.toByteArray();
  }
}
