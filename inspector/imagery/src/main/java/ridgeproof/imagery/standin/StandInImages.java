package ridgeproof.imagery.standin;

import java.util.Arrays;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

/** Puts another picture into the place of an image, in its format and byte for byte as long. */
public final class StandInImages {

  private StandInImages() {}

  /**
   * The bytes of the picture.
   *
   * @param image whose place it takes
   * @param blank the same image without anything that it shows, as long; gives what is around the
   *     coded data
   * @param stated what the record says the bytes are; counts where they do not tell themselves
   * @param bitsPerPixel as the record states it, 0 where it does not
   * @param picture of the same size
   * @return empty for formats that are not written here, and where the picture does not fit into as
   *     many bytes
   */
  public static Optional<byte[]> inPlaceOf(
      ByteSource image, byte[] blank, ImageFormat stated, int bitsPerPixel, GrayImage picture) {
    ImageHeader header = ImageHeaders.read(image);
    int end = Math.min(header.extent().length(), image.length());
    return (header.format() == ImageFormat.RAW
            ? plain(end, stated, bitsPerPixel, picture)
            : coded(image.slice(0, end), Arrays.copyOf(blank, end), header, picture))
        .map(bytes -> Arrays.copyOf(bytes, image.length()));
  }

  /** What stands behind the end of an image is no part of it: there are zeros in its place. */
  private static Optional<byte[]> coded(
      ByteSource image, byte[] blank, ImageHeader header, GrayImage picture) {
    int room = image.length();
    return switch (header.format()) {
      case WSQ -> WsqStandIn.of(room, header, picture);
      case PNG -> new PngStandIn(image, blank).of(picture);
      case JPEG -> JpegStandIn.of(image, header, picture);
      case JPEG_LOSSLESS -> LosslessJpegStandIn.of(image, header, picture);
      case JPEG_2000 -> new Jpeg2000StandIn(image, blank, header).of(picture);
      case TIFF -> TiffStandIn.of(room, header, picture);
      default -> Optional.empty();
    };
  }

  /** What begins like no codestream is what the record says. */
  private static Optional<byte[]> plain(
      int room, ImageFormat stated, int bitsPerPixel, GrayImage picture) {
    return stated == ImageFormat.GROUP_4
        ? TiffStandIn.group4(room, picture)
        : RawStandIn.of(room, bitsPerPixel, picture);
  }
}
