package ridgeproof.imagery.header;

import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.record.ByteSource;

/** Tells what an image is stored as by its first bytes, and reads what it says of itself. */
public final class ImageHeaders {

  private static final int[] PNG_SIGNATURE = {0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final int[] JP2_SIGNATURE = {
    0, 0, 0, 12, 'j', 'P', ' ', ' ', '\r', '\n', 0x87, '\n'
  };

  private ImageHeaders() {}

  /**
   * Reads the header of a codestream, walking all of it but decoding nothing.
   *
   * @return the header, with a defect for whatever is wrong; {@link ImageFormat#RAW} with zero
   *     sizes where the bytes begin like no codestream
   */
  public static ImageHeader read(ByteSource codestream) {
    return switch (formatOf(codestream)) {
      case WSQ -> new WsqHeaderReader(codestream).read();
      case JPEG, JPEG_LOSSLESS -> new JpegHeaderReader(codestream).read();
      case JPEG_2000 ->
          isJp2(codestream)
              ? new Jp2BoxReader(codestream).read()
              : Jpeg2000HeaderReader.headerOf(codestream);
      case PNG -> new PngHeaderReader(codestream).read();
      case TIFF -> new TiffHeaderReader(codestream).read();
      case RAW, GROUP_4, PEN_VECTORS ->
          new ImageHeaderBuilder(codestream, ImageFormat.RAW).finish();
    };
  }

  /**
   * The format by the first bytes alone; a lossless JPEG cannot be told from another JPEG so soon.
   */
  public static ImageFormat formatOf(ByteSource codestream) {
    if (beginsWithMarker(codestream, 0xA0)) {
      return ImageFormat.WSQ;
    }
    if (beginsWithMarker(codestream, 0xD8)) {
      return ImageFormat.JPEG;
    }
    if (codestream.startsWith(0, 0xFF, 0x4F, 0xFF, 0x51) || isJp2(codestream)) {
      return ImageFormat.JPEG_2000;
    }
    if (codestream.startsWith(0, PNG_SIGNATURE)) {
      return ImageFormat.PNG;
    }
    if (codestream.startsWith(0, 'I', 'I', 42, 0) || codestream.startsWith(0, 'M', 'M', 0, 42)) {
      return ImageFormat.TIFF;
    }
    return ImageFormat.RAW;
  }

  private static boolean isJp2(ByteSource codestream) {
    return codestream.startsWith(0, JP2_SIGNATURE);
  }

  /** Two bytes alone could be pixels as well, so the next marker has to begin right behind. */
  private static boolean beginsWithMarker(ByteSource codestream, int code) {
    return codestream.startsWith(0, 0xFF, code)
        && (codestream.length() == 2 || codestream.byteAt(2) == 0xFF);
  }
}
