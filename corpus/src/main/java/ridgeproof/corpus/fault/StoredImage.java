package ridgeproof.corpus.fault;

import com.github.jaiimageio.jpeg2000.impl.J2KImageWriterSpi;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.codec.PngWriter;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;

/** Images in the formats that stations write, rightly or wrongly. */
final class StoredImage {

  private StoredImage() {}

  static byte[] wsq(GrayImage image, double bitsPerPixel, int ppi) {
    return WsqEncoder.encode(image, new WsqEncoding(bitsPerPixel, ppi, 0));
  }

  static byte[] png(GrayImage image, int ppi) {
    return PngWriter.encode(image, Optional.of(PixelDensity.ofPpi(ppi)));
  }

  static byte[] jpeg(GrayImage image) {
    return other(image, "jpeg");
  }

  static byte[] jpeg2000(GrayImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      // Asked for by name: what the registry of image writers holds differs from thread to thread.
      ImageWriter writer = new J2KImageWriterSpi().createWriterInstance(null);
      writer.setOutput(out);
      writer.write(buffered(image, BufferedImage.TYPE_BYTE_GRAY));
      writer.dispose();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  static byte[] other(GrayImage image, String format) {
    return written(buffered(image, BufferedImage.TYPE_BYTE_GRAY), format);
  }

  static byte[] color(GrayImage image, String format) {
    return written(buffered(image, BufferedImage.TYPE_INT_RGB), format);
  }

  static byte[] bilevel(GrayImage image) {
    return written(buffered(image, BufferedImage.TYPE_BYTE_BINARY), "png");
  }

  private static BufferedImage buffered(GrayImage image, int type) {
    BufferedImage copy = new BufferedImage(image.width(), image.height(), type);
    int bands = copy.getRaster().getNumBands();
    for (int y = 0; y < image.height(); y++) {
      for (int x = 0; x < image.width(); x++) {
        int gray = image.grayAt(x, y);
        for (int band = 0; band < bands; band++) {
          int sample = type == BufferedImage.TYPE_BYTE_BINARY ? gray >> 7 : gray;
          copy.getRaster().setSample(x, y, band, sample);
        }
      }
    }
    return copy;
  }

  private static byte[] written(BufferedImage image, String format) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, bytes)) {
        throw new IllegalArgumentException("this machine writes no " + format);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
