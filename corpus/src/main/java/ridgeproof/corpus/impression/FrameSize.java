package ridgeproof.corpus.impression;

/**
 * The size of an image in pixels at 500 ppi. The largest sizes are those of ANSI/NIST-ITL, finger
 * position table (from memory).
 */
public record FrameSize(int width, int height) {

  /** 1.6 x 1.5 in. */
  public static final FrameSize ROLLED = new FrameSize(800, 750);

  /** 1.0 x 2.0 in. */
  public static final FrameSize PLAIN_THUMB = new FrameSize(500, 1000);

  /** One plain finger on a single-finger sensor, 1.0 x 1.5 in (common practice). */
  public static final FrameSize PLAIN_FINGER = new FrameSize(500, 750);

  /** 3.2 x 3.0 in. */
  public static final FrameSize FOUR_FINGERS = new FrameSize(1600, 1500);

  /** 2.0 x 2.0 in. */
  public static final FrameSize TWO_THUMBS = new FrameSize(1000, 1000);

  public FrameSize {
    if (width < 32 || height < 32 || width > 8000 || height > 8000) {
      throw new IllegalArgumentException(width + " x " + height + " is outside 32 to 8000 pixels");
    }
  }
}
