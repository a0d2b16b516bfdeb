package ridgeproof.imagery.standin;

import java.util.Arrays;
import java.util.Optional;
import ridgeproof.imagery.GrayImage;
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
   * @param picture of the same size
   * @return empty for formats that are not written here, and where the picture does not fit into as
   *     many bytes
   */
  public static Optional<byte[]> inPlaceOf(ByteSource image, byte[] blank, GrayImage picture) {
    ImageHeader header = ImageHeaders.read(image);
    int room = image.length();
    return switch (header.format()) {
      case RAW -> raw(room, picture);
      case WSQ -> WsqStandIn.of(room, header, picture);
      case PNG -> new PngStandIn(image, blank).of(picture);
      case JPEG -> JpegStandIn.of(image, header, picture);
      case JPEG_LOSSLESS -> LosslessJpegStandIn.of(image, header, picture);
      case JPEG_2000 -> new Jpeg2000StandIn(image, blank, header).of(picture);
      default -> Optional.empty();
    };
  }

  /** What follows the pixels shows nothing. */
  private static Optional<byte[]> raw(int room, GrayImage picture) {
    byte[] pixels = picture.toArray();
    return pixels.length > room ? Optional.empty() : Optional.of(Arrays.copyOf(pixels, room));
  }
}
