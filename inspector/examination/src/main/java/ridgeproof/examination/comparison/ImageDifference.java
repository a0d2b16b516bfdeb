package ridgeproof.examination.comparison;

/** How the image of one record differs from that of the other. */
public sealed interface ImageDifference {

  /** Whether anything differs, be it only the encoding. */
  default boolean differs() {
    return !(this instanceof SameBytes);
  }

  /** The bytes are the same. */
  record SameBytes() implements ImageDifference {}

  /** The bytes differ and the pixels do not: encoded anew without loss. */
  record SamePixels() implements ImageDifference {}

  /**
   * Pixels of the same size differ.
   *
   * @param largest gray levels, 1 to 255
   * @param mean gray levels, over all pixels
   * @param pixels how many differ
   * @param ofPixels how many there are
   * @param agreement correlation of the gray levels, at most 1; 0 where one image is of one level
   */
  record DifferentPixels(int largest, double mean, long pixels, long ofPixels, double agreement)
      implements ImageDifference {

    /** Two captures never agree so far; one capture does after any usual compression. */
    private static final double SAME_CAPTURE = 0.95;

    /** Whether both are one capture, of which one was compressed again with loss. */
    public boolean isSameCapture() {
      return agreement >= SAME_CAPTURE;
    }

    /** The share of pixels that differ, over 0 to 1. */
    public double share() {
      return (double) pixels / ofPixels;
    }
  }

  /** The sizes differ, in pixels. */
  record DifferentSize(int firstWidth, int firstHeight, int secondWidth, int secondHeight)
      implements ImageDifference {}

  /** The bytes differ, and at least one of the images cannot be decoded. */
  record NotDecoded(boolean first, boolean second) implements ImageDifference {}

  /** The bytes differ, and the pixels were not asked for. */
  record NotOpened() implements ImageDifference {}
}
