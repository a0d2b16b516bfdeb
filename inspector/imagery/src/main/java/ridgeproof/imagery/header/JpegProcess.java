package ridgeproof.imagery.header;

/** The coding process that a frame header's marker stands for (ITU-T T.81 Table B.1). */
enum JpegProcess {
  BASELINE("baseline DCT", false, true),
  EXTENDED("extended sequential DCT", false, true),
  PROGRESSIVE("progressive DCT", false, true),
  LOSSLESS("lossless", true, true),
  HIERARCHICAL_SEQUENTIAL("hierarchical sequential DCT", false, true),
  HIERARCHICAL_PROGRESSIVE("hierarchical progressive DCT", false, true),
  HIERARCHICAL_LOSSLESS("hierarchical lossless", true, true),
  ARITHMETIC_SEQUENTIAL("sequential DCT with arithmetic coding", false, false),
  ARITHMETIC_PROGRESSIVE("progressive DCT with arithmetic coding", false, false),
  ARITHMETIC_LOSSLESS("lossless with arithmetic coding", true, false),
  HIERARCHICAL_ARITHMETIC_SEQUENTIAL(
      "hierarchical sequential DCT with arithmetic coding", false, false),
  HIERARCHICAL_ARITHMETIC_PROGRESSIVE(
      "hierarchical progressive DCT with arithmetic coding", false, false),
  HIERARCHICAL_ARITHMETIC_LOSSLESS("hierarchical lossless with arithmetic coding", true, false),
  /** ITU-T T.87, which borrows the marker structure. */
  JPEG_LS("JPEG-LS", true, false);

  private final String label;
  private final boolean lossless;
  private final boolean huffman;

  JpegProcess(String label, boolean lossless, boolean huffman) {
    this.label = label;
    this.lossless = lossless;
    this.huffman = huffman;
  }

  /** The process of a SOF marker's second byte. */
  static JpegProcess of(int code) {
    return switch (code) {
      case 0xC0 -> BASELINE;
      case 0xC1 -> EXTENDED;
      case 0xC2 -> PROGRESSIVE;
      case 0xC3 -> LOSSLESS;
      case 0xC5 -> HIERARCHICAL_SEQUENTIAL;
      case 0xC6 -> HIERARCHICAL_PROGRESSIVE;
      case 0xC7 -> HIERARCHICAL_LOSSLESS;
      case 0xC9 -> ARITHMETIC_SEQUENTIAL;
      case 0xCA -> ARITHMETIC_PROGRESSIVE;
      case 0xCB -> ARITHMETIC_LOSSLESS;
      case 0xCD -> HIERARCHICAL_ARITHMETIC_SEQUENTIAL;
      case 0xCE -> HIERARCHICAL_ARITHMETIC_PROGRESSIVE;
      case 0xCF -> HIERARCHICAL_ARITHMETIC_LOSSLESS;
      case 0xF7 -> JPEG_LS;
      default -> throw new IllegalArgumentException("no frame marker: " + code);
    };
  }

  String label() {
    return label;
  }

  boolean isLossless() {
    return lossless;
  }

  boolean usesHuffman() {
    return huffman;
  }

  boolean usesQuantization() {
    return !lossless;
  }
}
