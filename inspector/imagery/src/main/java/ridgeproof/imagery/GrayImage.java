package ridgeproof.imagery;

import java.nio.ByteBuffer;
import java.util.Objects;

/** An 8-bit gray image, row by row from the top; 0 is black, 255 white. */
public final class GrayImage {

  private final int width;
  private final int height;
  private final byte[] pixels;

  private GrayImage(int width, int height, byte[] pixels) {
    if (width < 1 || height < 1 || (long) width * height != pixels.length) {
      throw new IllegalArgumentException(
          width + " x " + height + " with " + pixels.length + " pixels");
    }
    this.width = width;
    this.height = height;
    this.pixels = pixels;
  }

  /** Takes the array over without copying it; the caller gives it up. */
  public static GrayImage owning(int width, int height, byte[] pixels) {
    return new GrayImage(width, height, pixels);
  }

  /** Pixels in a row. */
  public int width() {
    return width;
  }

  /** Rows. */
  public int height() {
    return height;
  }

  /** The gray level of a pixel, 0 to 255. */
  public int grayAt(int x, int y) {
    return pixels[y * width + x] & 0xFF;
  }

  /**
   * A copy of a part.
   *
   * @throws IndexOutOfBoundsException if it is empty or reaches beyond the image
   */
  public GrayImage part(int left, int top, int partWidth, int partHeight) {
    Objects.checkFromIndexSize(left, partWidth, width);
    Objects.checkFromIndexSize(top, partHeight, height);
    if (partWidth == 0 || partHeight == 0) {
      throw new IndexOutOfBoundsException("an empty part");
    }
    byte[] part = new byte[partWidth * partHeight];
    for (int y = 0; y < partHeight; y++) {
      System.arraycopy(pixels, (top + y) * width + left, part, y * partWidth, partWidth);
    }
    return new GrayImage(partWidth, partHeight, part);
  }

  /** A read-only view of all pixels. */
  public ByteBuffer asBuffer() {
    return ByteBuffer.wrap(pixels).asReadOnlyBuffer();
  }

  /** A copy of all pixels. */
  public byte[] toArray() {
    return pixels.clone();
  }
}
