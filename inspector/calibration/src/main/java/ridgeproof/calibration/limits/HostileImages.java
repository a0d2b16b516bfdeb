package ridgeproof.calibration.limits;

import com.github.jaiimageio.jpeg2000.impl.J2KImageWriterSpi;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Optional;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.codec.PngWriter;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;

/** Images that cost much for their bytes. */
final class HostileImages {

  private static final int TILE = 450;
  private static final int PERIOD = 9;
  private static final int WAVES = 24;
  private static final int SCAN = 0xDA;

  private HostileImages() {}

  /** One gray level. */
  static GrayImage even(int width, int height) {
    return GrayImage.owning(width, height, new byte[width * height]);
  }

  /** Ridges that run straight across the whole image. */
  static GrayImage stripes(int width, int height) {
    byte[] pixels = new byte[width * height];
    for (int i = 0; i < pixels.length; i++) {
      double phase = 2 * Math.PI * (i / width + 0.2 * (i % width)) / PERIOD;
      pixels[i] = (byte) Math.round(128 + 110 * Math.sin(phase));
    }
    return GrayImage.owning(width, height, pixels);
  }

  /** Ridges without any order, with more endings and forks than any finger has. */
  static GrayImage labyrinth(int width, int height) {
    byte[] tile = tile();
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        pixels[y * width + x] = tile[y % TILE * TILE + x % TILE];
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  private static byte[] tile() {
    Random random = new Random(14);
    double[] across = new double[WAVES];
    double[] down = new double[WAVES];
    double[] start = new double[WAVES];
    for (int i = 0; i < WAVES; i++) {
      double angle = Math.PI * (i + random.nextDouble()) / WAVES;
      across[i] = 2 * Math.PI * Math.round(TILE / PERIOD * Math.cos(angle)) / TILE;
      down[i] = 2 * Math.PI * Math.round(TILE / PERIOD * Math.sin(angle)) / TILE;
      start[i] = 2 * Math.PI * random.nextDouble();
    }
    byte[] tile = new byte[TILE * TILE];
    for (int at = 0; at < tile.length; at++) {
      double sum = 0;
      for (int i = 0; i < WAVES; i++) {
        sum += Math.cos(across[i] * (at % TILE) + down[i] * (at / TILE) + start[i]);
      }
      tile[at] = (byte) Math.max(0, Math.min(255, Math.round(128 + 60 * sum)));
    }
    return tile;
  }

  static byte[] png(GrayImage image) {
    return PngWriter.encode(image, Optional.of(PixelDensity.ofPpi(500)));
  }

  static byte[] wsq(GrayImage image, double bitsPerPixel) {
    return WsqEncoder.encode(image, new WsqEncoding(bitsPerPixel, 500, 0));
  }

  /** A WSQ image whose header states another size. */
  static byte[] wsqStating(int side, byte[] wsq) {
    byte[] stating = wsq.clone();
    for (int i = 0; i + 10 < stating.length; i++) {
      if ((stating[i] & 0xFF) == 0xFF && (stating[i + 1] & 0xFF) == 0xA2) {
        for (int at : new int[] {i + 6, i + 8}) {
          stating[at] = (byte) (side >> 8);
          stating[at + 1] = (byte) side;
        }
        return stating;
      }
    }
    throw new IllegalStateException("no frame header");
  }

  static byte[] jpeg2000(GrayImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriter writer = new J2KImageWriterSpi().createWriterInstance(null);
      writer.setOutput(out);
      writer.write(buffered(image));
      writer.dispose();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** A progressive JPEG whose last scan is there again and again. */
  static byte[] scans(GrayImage image, int bytes) {
    byte[] jpeg = progressive(image);
    int last = jpeg.length - 2;
    while ((jpeg[last] & 0xFF) != 0xFF || (jpeg[last + 1] & 0xFF) != SCAN) {
      last--;
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, last);
    while (out.size() < bytes) {
      out.write(jpeg, last, jpeg.length - 2 - last);
    }
    out.write(jpeg, jpeg.length - 2, 2);
    return out.toByteArray();
  }

  private static byte[] progressive(GrayImage image) {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("jpeg");
    ImageWriter writer = writers.next();
    ImageWriteParam settings = writer.getDefaultWriteParam();
    settings.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(buffered(image), null, null), settings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  private static BufferedImage buffered(GrayImage image) {
    BufferedImage buffered =
        new BufferedImage(image.width(), image.height(), BufferedImage.TYPE_BYTE_GRAY);
    image.asBuffer().get(((DataBufferByte) buffered.getRaster().getDataBuffer()).getData());
    return buffered;
  }
}
