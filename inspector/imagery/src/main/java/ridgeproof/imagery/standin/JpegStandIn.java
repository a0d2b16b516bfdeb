package ridgeproof.imagery.standin;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.record.ByteSource;

/** Another picture as JPEG (ITU-T T.81) with loss, by the JDK. */
final class JpegStandIn {

  private static final int SOI_BYTES = 2;
  private static final int COMMENT = 0xFE;
  private static final int SHORTEST = 4;
  private static final int COLOR_COMPONENTS = 3;
  private static final double[] QUALITIES = {0.95, 0.85, 0.75, 0.6, 0.45, 0.3, 0.2, 0.1, 0.05};

  /** Marker, length, name, version, unit, two densities and the size of a thumbnail. */
  private static final int JFIF_SEGMENT = 20;

  private JpegStandIn() {}

  static Optional<byte[]> of(ByteSource image, ImageHeader header, GrayImage picture) {
    int room = image.length();
    for (double quality : QUALITIES) {
      byte[] bytes = encoded(picture, header.components() == COLOR_COMPONENTS, (float) quality);
      byte[] dense = withJfifOf(image, bytes);
      int spare = room - dense.length;
      if (SegmentPadding.fills(spare, SHORTEST)) {
        return Optional.of(
            SegmentPadding.inserted(
                dense,
                SOI_BYTES + jfif(image).length,
                SegmentPadding.of(COMMENT, SHORTEST, spare)));
      }
    }
    return Optional.empty();
  }

  /** With the JFIF segment of the image in place of that of the writer. */
  private static byte[] withJfifOf(ByteSource image, byte[] bytes) {
    int own = hasJfif(ByteSource.of(bytes)) ? JFIF_SEGMENT - SOI_BYTES : 0;
    byte[] without = Arrays.copyOfRange(bytes, own, bytes.length);
    System.arraycopy(bytes, 0, without, 0, SOI_BYTES);
    return SegmentPadding.inserted(without, SOI_BYTES, jfif(image));
  }

  /** The JFIF segment of an image without its thumbnail; empty where there is none. */
  static byte[] jfif(ByteSource image) {
    if (!hasJfif(image)) {
      return new byte[0];
    }
    byte[] segment = image.slice(SOI_BYTES, JFIF_SEGMENT - SOI_BYTES).toArray();
    segment[2] = 0;
    segment[3] = JFIF_SEGMENT - 2 * SOI_BYTES;
    segment[segment.length - 1] = 0;
    segment[segment.length - 2] = 0;
    return segment;
  }

  private static boolean hasJfif(ByteSource jpeg) {
    return jpeg.has(0, JFIF_SEGMENT)
        && jpeg.uint16At(SOI_BYTES) == 0xFFE0
        && jpeg.startsWith(6, 'J', 'F', 'I', 'F', 0);
  }

  private static byte[] encoded(GrayImage picture, boolean color, float quality) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality);
      writer.setOutput(out);
      writer.write(null, new IIOImage(buffered(picture, color), null, null), param);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** Color in bytes: of whole numbers the JPEG 2000 writer takes the upper half for negative. */
  static BufferedImage buffered(GrayImage picture, boolean color) {
    BufferedImage copy =
        new BufferedImage(
            picture.width(),
            picture.height(),
            color ? BufferedImage.TYPE_3BYTE_BGR : BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < picture.height(); y++) {
      for (int x = 0; x < picture.width(); x++) {
        for (int band = 0; band < copy.getRaster().getNumBands(); band++) {
          copy.getRaster().setSample(x, y, band, picture.grayAt(x, y));
        }
      }
    }
    return copy;
  }
}
