package ridgeproof.imagery;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.testing.LosslessJpeg;

/** Small synthetic images in every format, made here or read from the test resources. */
public final class ImageSamples {

  public static final int WIDTH = 61;
  public static final int HEIGHT = 47;

  private ImageSamples() {}

  /** One file of each kind by a speaking name. */
  public static Map<String, byte[]> all() {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String name :
        new String[] {
          "gray-53.j2k",
          "gray-97.jp2",
          "gray-tiles.jp2",
          "colour-53.jp2",
          "colour-progressive.jpg",
          "gray-restart.jpg",
          "gray-arithmetic.jpg"
        }) {
      files.put(name, resource(name));
    }
    files.put("baseline.jpg", jpeg(gray()));
    files.put("lossless.jpg", LosslessJpeg.encode(WIDTH, HEIGHT, grayImage().toArray(), 0));
    files.put("old-lossless.jpg", LosslessJpeg.encode(WIDTH, HEIGHT, grayImage().toArray(), 1));
    files.put("gray.png", png(gray()));
    files.put("group4.tif", tiff(bilevel(), "CCITT T.6"));
    files.put("gray.wsq", wsq());
    return files;
  }

  public static byte[] resource(String name) {
    try (InputStream in = ImageSamples.class.getResourceAsStream("/samples/" + name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The pixels of a binary PGM or PPM file after its header of three lines. */
  public static byte[] pixelsOf(String pnm, int count) {
    byte[] file = resource(pnm);
    byte[] pixels = new byte[count];
    System.arraycopy(file, file.length - count, pixels, 0, count);
    return pixels;
  }

  public static GrayImage grayImage() {
    return GrayImage.owning(WIDTH, HEIGHT, pixelsOf("gray.pgm", WIDTH * HEIGHT));
  }

  public static BufferedImage gray() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
    image.getRaster().setDataElements(0, 0, WIDTH, HEIGHT, grayImage().toArray());
    return image;
  }

  public static BufferedImage colour() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(5);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        image.setRGB(x, y, random.nextInt(0x1000000));
      }
    }
    return image;
  }

  /** Black strokes on white. */
  public static BufferedImage bilevel() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_BINARY);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        image.setRGB(x, y, (x * x + y * 7) % 31 < 9 ? 0 : 0xFFFFFF);
      }
    }
    return image;
  }

  public static byte[] jpeg(BufferedImage image) {
    return written(image, "jpeg", null, null);
  }

  public static byte[] png(BufferedImage image) {
    return written(image, "png", null, null);
  }

  public static byte[] png(BufferedImage image, int pixelsPerMetre) {
    IIOMetadataNode physical = new IIOMetadataNode("pHYs");
    physical.setAttribute("pixelsPerUnitXAxis", Integer.toString(pixelsPerMetre));
    physical.setAttribute("pixelsPerUnitYAxis", Integer.toString(pixelsPerMetre));
    physical.setAttribute("unitSpecifier", "meter");
    return written(image, "png", null, physical);
  }

  public static byte[] tiff(BufferedImage image, String compression) {
    return written(image, "tiff", compression, null);
  }

  private static byte[] written(
      BufferedImage image, String format, String compression, IIOMetadataNode extra) {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName(format);
    ImageWriter writer = writers.next();
    while (!writer.getClass().getName().startsWith("com.sun.imageio.")) {
      writer = writers.next();
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      if (compression != null) {
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionType(compression);
      }
      IIOMetadata metadata = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), param);
      if (extra != null) {
        IIOMetadataNode root =
            (IIOMetadataNode) metadata.getAsTree(metadata.getNativeMetadataFormatName());
        root.appendChild(extra);
        metadata.setFromTree(metadata.getNativeMetadataFormatName(), root);
      }
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, metadata), param);
      out.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** The gray image at 500 ppi by encoding software number 42123. */
  public static byte[] wsq() {
    return WsqEncoder.encode(
        grayImage(), new WsqEncoding(WsqEncoding.HIGH_BITS_PER_PIXEL, 500, 42_123));
  }
}
