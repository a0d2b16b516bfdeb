package ridgeproof.corpus.scenario;

/** How images are stored, with the codes of ANSI/NIST-ITL (from memory). */
public enum Compression {
  NONE(0, "NONE"),
  WSQ(1, "WSQ20"),
  /** Only from version 0400 on; its bytes depend on the compression library of the machine. */
  PNG(6, "PNG");

  private final int binaryCode;
  private final String taggedCode;

  Compression(int binaryCode, String taggedCode) {
    this.binaryCode = binaryCode;
    this.taggedCode = taggedCode;
  }

  /** The code in a binary record. */
  public int binaryCode() {
    return binaryCode;
  }

  /** The code in a tagged record. */
  public String taggedCode() {
    return taggedCode;
  }
}
