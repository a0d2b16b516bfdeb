package ridgeproof.imagery.blank;

import java.util.function.BiPredicate;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.record.ByteSource;

/**
 * Makes, in the place of an image, a blank one of the same format, size and number of bytes. What
 * the codestream says of its coding stays; pixels, comments and all that is told beside do not.
 */
public final class BlankImages {

  private static final int GRAY = 0x80;
  private static final int WHITE_IF_BILEVEL = 0x00;
  private static final int LINES_LIKE_THE_WHITE_ONE_ABOVE = 0xFF;
  private static final int PEN_AT_REST = 0x00;

  private final BiPredicate<String, String> harmless;

  /**
   * @param harmless the key-value lines of comments that may stay
   */
  public BlankImages(BiPredicate<String, String> harmless) {
    this.harmless = harmless;
  }

  /**
   * As many bytes as the image has.
   *
   * @param stated what the record says the bytes are; counts where they do not tell themselves
   * @param bitsPerPixel as the record states it, 0 where it does not
   * @param sound whether the image can be decoded; the damage of any other is to stay, so that only
   *     the skeleton of its codestream does
   */
  public byte[] inPlaceOf(ByteSource image, ImageFormat stated, int bitsPerPixel, boolean sound) {
    CommentRedactor comments = new CommentRedactor(harmless);
    return switch (ImageHeaders.formatOf(image)) {
      case WSQ -> new BlankWsq(image, comments).bytes(sound);
      case JPEG, JPEG_LOSSLESS -> new BlankJpeg(image, comments).bytes(sound);
      case JPEG_2000 -> new BlankJpeg2000(image, comments).bytes();
      case PNG -> new BlankPng(image).bytes(sound);
      case TIFF -> new BlankTiff(image).bytes();
      case RAW, GROUP_4, PEN_VECTORS ->
          new ImageBytes(
                  image,
                  switch (stated) {
                    case GROUP_4 -> LINES_LIKE_THE_WHITE_ONE_ABOVE;
                    case PEN_VECTORS -> PEN_AT_REST;
                    default -> bitsPerPixel == 1 ? WHITE_IF_BILEVEL : GRAY;
                  })
              .toArray();
    };
  }
}
