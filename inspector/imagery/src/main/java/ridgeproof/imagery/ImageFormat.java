package ridgeproof.imagery;

/** What kind of codestream an image is stored as, told by its own first bytes. */
public enum ImageFormat {
  WSQ("WSQ"),
  JPEG("JPEG"),
  JPEG_LOSSLESS("lossless JPEG"),
  JPEG_2000("JPEG 2000"),
  PNG("PNG"),
  TIFF("TIFF"),
  /** Coded lines alone, or in a TIFF file; nothing in the first bytes tells it. */
  GROUP_4("Group 4 facsimile"),
  /** Points of a pen; nothing in the first bytes tells it. */
  PEN_VECTORS("pen vectors"),
  /** Nothing that begins like a codestream: pixels as they are, or not an image. */
  RAW("uncompressed");

  private final String label;

  ImageFormat(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
