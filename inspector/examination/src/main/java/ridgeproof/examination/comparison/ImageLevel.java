package ridgeproof.examination.comparison;

/** How much two images have in common, the most first. */
public enum ImageLevel {
  /** The same bytes. */
  SAME_BYTES("same bytes"),
  /** Other bytes of the same pixels. */
  SAME_PIXELS("same pixels"),
  /** Other pixels of the same capture: compressed again with loss. */
  SAME_CAPTURE("same capture, encoded again"),
  /** Other pixels of the same finger, or of the same fingers. */
  SAME_FINGER("same finger, different capture"),
  /** A print in one is clearly of another finger than that in the other. */
  DIFFERENT_FINGER("different finger"),
  /** Other pixels, and no finger is in them or none was asked for. */
  DIFFERENT_PIXELS("different pixels"),
  /** Neither the same nor a different finger can be said. */
  CANNOT_BE_TOLD("not determined");

  private final String words;

  ImageLevel(String words) {
    this.words = words;
  }

  /** In plain words. */
  public String words() {
    return words;
  }

  /** Whether both are one capture, encoded again or not. */
  public boolean isSameCapture() {
    return compareTo(SAME_CAPTURE) <= 0;
  }
}
