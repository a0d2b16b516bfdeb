package ridgeproof.imagery.standin;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.plugins.tiff.BaselineTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.plugins.tiff.TIFFTag;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.codec.JdkImageWriters;

/** Another picture as TIFF 6.0 or as bare Group 4 data (ITU-T T.6), by the JDK. */
final class TiffStandIn {

  private static final String GROUP_4 = "CCITT T.6";
  private static final String NO_COMPRESSION = "none";

  /** The codings without loss by what the header reader calls them, and what the JDK does. */
  private static final Map<String, String> CODINGS =
      Map.of(
          "none", NO_COMPRESSION,
          "CCITT modified Huffman", "CCITT RLE",
          "CCITT Group 3", "CCITT T.4",
          "CCITT Group 4", GROUP_4,
          "LZW", "LZW",
          "Deflate", "Deflate",
          "PackBits", "PackBits");

  private static final int DIRECTORY_AT = 4;
  private static final int ENTRY_BYTES = 12;
  private static final int VALUE_AT = 8;
  private static final int INCHES = 2;
  private static final long RATIONAL_PARTS = 1000;

  private TiffStandIn() {}

  /**
   * A file as long as the room.
   *
   * @return empty for codings and depths that are not written here, and where it does not fit
   */
  static Optional<byte[]> of(int room, ImageHeader header, GrayImage picture) {
    String coding = CODINGS.get(header.facts().getOrDefault("compression", ""));
    int bits = header.bitsPerPixel();
    if (coding == null || bits != 1 && bits != 8 && bits != 24) {
      return Optional.empty();
    }
    return bits == 1
        ? Bilevel.fitting(picture, simple -> padded(room, header, coding, simple))
        : Coarsened.fitting(picture, simple -> padded(room, header, coding, simple));
  }

  /** Coded data without a file around it, and zeros behind it, which no line needs. */
  static Optional<byte[]> group4(int room, GrayImage picture) {
    return Bilevel.fitting(
        picture,
        simple -> {
          ByteOrder order = ByteOrder.BIG_ENDIAN;
          byte[] file = written(simple, 1, GROUP_4, order, Optional.empty());
          ByteBuffer bytes = ByteBuffer.wrap(file).order(order);
          int start = bytes.getInt(value(bytes, BaselineTIFFTagSet.TAG_STRIP_OFFSETS));
          int count = bytes.getInt(value(bytes, BaselineTIFFTagSet.TAG_STRIP_BYTE_COUNTS));
          return count > room
              ? Optional.empty()
              : Optional.of(Arrays.copyOf(Arrays.copyOfRange(file, start, start + count), room));
        });
  }

  /** The coded data is the end of the file, and takes what room is left. */
  private static Optional<byte[]> padded(
      int room, ImageHeader header, String coding, GrayImage picture) {
    ByteOrder order =
        header.facts().getOrDefault("byte order", "").startsWith("little")
            ? ByteOrder.LITTLE_ENDIAN
            : ByteOrder.BIG_ENDIAN;
    byte[] file = written(picture, header.bitsPerPixel(), coding, order, header.density());
    if (file.length > room) {
      return Optional.empty();
    }
    ByteBuffer bytes = ByteBuffer.wrap(Arrays.copyOf(file, room)).order(order);
    int start = bytes.getInt(value(bytes, BaselineTIFFTagSet.TAG_STRIP_OFFSETS));
    bytes.putInt(value(bytes, BaselineTIFFTagSet.TAG_STRIP_BYTE_COUNTS), room - start);
    return Optional.of(bytes.array());
  }

  /** Where in a file of one strip the single number of a tag stands. */
  private static int value(ByteBuffer file, int tag) {
    int entry = file.getInt(DIRECTORY_AT) + Short.BYTES;
    while (Short.toUnsignedInt(file.getShort(entry)) != tag) {
      entry += ENTRY_BYTES;
    }
    return entry + VALUE_AT;
  }

  private static byte[] written(
      GrayImage picture, int bits, String coding, ByteOrder order, Optional<PixelDensity> density) {
    BufferedImage image =
        bits == 1 ? Bilevel.buffered(picture) : JpegStandIn.buffered(picture, bits > 8);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = JdkImageWriters.open("tiff");
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      out.setByteOrder(order);
      ImageWriteParam param = writer.getDefaultWriteParam();
      if (!coding.equals(NO_COMPRESSION)) {
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionType(coding);
      }
      IIOMetadata metadata =
          writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), param);
      TIFFDirectory directory = TIFFDirectory.createFromMetadata(metadata);
      number(directory, BaselineTIFFTagSet.TAG_ROWS_PER_STRIP, picture.height());
      density.ifPresent(ppi -> resolution(directory, ppi));
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, directory.getAsMetadata()), param);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static void resolution(TIFFDirectory directory, PixelDensity density) {
    rational(directory, BaselineTIFFTagSet.TAG_X_RESOLUTION, density.horizontalPpi());
    rational(directory, BaselineTIFFTagSet.TAG_Y_RESOLUTION, density.verticalPpi());
    number(directory, BaselineTIFFTagSet.TAG_RESOLUTION_UNIT, INCHES);
  }

  private static void number(TIFFDirectory directory, int tag, int value) {
    TIFFTag known = BaselineTIFFTagSet.getInstance().getTag(tag);
    directory.addTIFFField(new TIFFField(known, value));
  }

  private static void rational(TIFFDirectory directory, int tag, double value) {
    long[][] parts = {{Math.round(value * RATIONAL_PARTS), RATIONAL_PARTS}};
    directory.addTIFFField(
        new TIFFField(
            BaselineTIFFTagSet.getInstance().getTag(tag), TIFFTag.TIFF_RATIONAL, 1, parts));
  }
}
