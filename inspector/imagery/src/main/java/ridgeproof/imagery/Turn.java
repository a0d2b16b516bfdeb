package ridgeproof.imagery;

/** A turn of an image by right angles, clockwise as seen. */
public enum Turn {
  NONE(0),
  QUARTER_RIGHT(90),
  HALF(180),
  QUARTER_LEFT(270);

  private final int degrees;

  Turn(int degrees) {
    this.degrees = degrees;
  }

  /** Degrees clockwise, 0 to 270. */
  public int degrees() {
    return degrees;
  }

  /** Whether width and height change places. */
  public boolean isQuarter() {
    return degrees % 180 != 0;
  }

  /** The image turned. */
  public GrayImage of(GrayImage image) {
    if (this == NONE) {
      return image;
    }
    int width = isQuarter() ? image.height() : image.width();
    int height = isQuarter() ? image.width() : image.height();
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int gray =
            switch (this) {
              case QUARTER_RIGHT -> image.grayAt(y, image.height() - 1 - x);
              case HALF -> image.grayAt(image.width() - 1 - x, image.height() - 1 - y);
              default -> image.grayAt(image.width() - 1 - y, x);
            };
        pixels[y * width + x] = (byte) gray;
      }
    }
    return GrayImage.owning(width, height, pixels);
  }
}
