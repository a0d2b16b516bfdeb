package ridgeproof.imagery.standin;

import com.github.jaiimageio.jpeg2000.J2KImageWriteParam;
import com.github.jaiimageio.jpeg2000.impl.J2KImageWriterSpi;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.record.ByteSource;

/** Another picture as JPEG 2000 (ITU-T T.800), in the boxes that there were. */
final class Jpeg2000StandIn {

  private static final int SOC = 0xFF4F;
  private static final int SOT = 0xFF90;
  private static final int COMMENT = 0x64;

  /** Marker, length, registration and one byte (T.800 A.9.2). */
  private static final int SHORTEST = 7;

  /** As text: of any other registration the decoder warns. */
  private static final int[] REGISTERED = {0, 1};

  private static final int BOX_HEADER = 8;
  private static final int COLOR_COMPONENTS = 3;
  private static final int COLOR_BITS = 24;
  private static final double FIRST_BITS_PER_PIXEL = 1;
  private static final double MAX_BITS_PER_PIXEL = 8;

  private final ByteSource image;
  private final byte[] blank;
  private final ImageHeader header;

  Jpeg2000StandIn(ByteSource image, byte[] blank, ImageHeader header) {
    this.image = image;
    this.blank = blank;
    this.header = header;
  }

  Optional<byte[]> of(GrayImage picture) {
    int start = codestream();
    boolean gray = header.components() == 1;
    boolean color = header.components() == COLOR_COMPONENTS && header.bitsPerPixel() == COLOR_BITS;
    if (start < 0 || !gray && !color) {
      return Optional.empty();
    }
    int room = header.extent().end() - header.extent().offset() - start;
    return coded(picture, room)
        .map(
            bytes -> SegmentPadding.inserted(bytes, firstTile(bytes), padding(room - bytes.length)))
        .map(
            bytes -> {
              byte[] whole = blank.clone();
              System.arraycopy(bytes, 0, whole, start, bytes.length);
              return whole;
            });
  }

  private static byte[] padding(int spare) {
    return SegmentPadding.of(COMMENT, SHORTEST, spare, REGISTERED);
  }

  /**
   * Where the codestream begins, at once or in the box that holds it; -1 where it cannot be told.
   */
  private int codestream() {
    if (image.has(0, 2) && image.uint16At(0) == SOC) {
      return 0;
    }
    int position = 0;
    while (image.has(position, 2 * BOX_HEADER)) {
      long length = image.uint32At(position);
      int content = position + (length == 1 ? 2 * BOX_HEADER : BOX_HEADER);
      if (image.latin1(position + 4, 4).equals("jp2c")) {
        return image.uint16At(content) == SOC ? content : -1;
      }
      if (length < BOX_HEADER || length > image.length() - position) {
        return -1;
      }
      position += (int) length;
    }
    return -1;
  }

  private Optional<byte[]> coded(GrayImage picture, int room) {
    try {
      return fitting(picture, room);
    } catch (IllegalArgumentException e) {
      return Optional.empty(); // so few bytes that the library finds no room for headers
    }
  }

  private Optional<byte[]> fitting(GrayImage picture, int room) {
    if (header.lossless().orElse(false)) {
      return Coarsened.fitting(
          picture,
          simple ->
              Optional.of(encoded(simple, 0))
                  .filter(b -> SegmentPadding.fills(room - b.length, SHORTEST)));
    }
    return Rates.fitting(
        room, SHORTEST, FIRST_BITS_PER_PIXEL, MAX_BITS_PER_PIXEL, rate -> encoded(picture, rate));
  }

  private static int firstTile(byte[] codestream) {
    ByteSource bytes = ByteSource.of(codestream);
    int position = 2;
    while (bytes.uint16At(position) != SOT) {
      position += 2 + bytes.uint16At(position + 2);
    }
    return position;
  }

  /**
   * The codestream.
   *
   * @param bitsPerPixel 0 for no loss
   */
  private byte[] encoded(GrayImage picture, double bitsPerPixel) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      // Asked for by name: what the registry of image writers holds differs from thread to thread.
      ImageWriter writer = new J2KImageWriterSpi().createWriterInstance(null);
      J2KImageWriteParam param = (J2KImageWriteParam) writer.getDefaultWriteParam();
      param.setWriteCodeStreamOnly(true);
      param.setLossless(bitsPerPixel == 0);
      if (bitsPerPixel > 0) {
        param.setFilter(J2KImageWriteParam.FILTER_97);
        param.setEncodingRate(bitsPerPixel);
      }
      writer.setOutput(out);
      writer.write(
          null,
          new IIOImage(JpegStandIn.buffered(picture, header.components() > 1), null, null),
          param);
      writer.dispose();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
