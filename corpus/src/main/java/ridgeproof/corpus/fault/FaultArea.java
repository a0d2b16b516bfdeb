package ridgeproof.corpus.fault;

/** What kind of fault it is. */
public enum FaultArea {
  /** What happened to the bytes on the way, or to their structure. */
  TRANSPORT,
  /** The Type-1 record. */
  HEADER,
  /** Biographic data of the Type-2 record. */
  PARTICULARS,
  /** Which prints there are, and what they are called. */
  SET,
  /** What an image record says and what its image is. */
  IMAGE,
  /** How a finger was captured. */
  RIDGES,
  /** Whose finger a print is of. */
  SEQUENCE,
  /** Boxes of fingers within an image. */
  SEGMENTS,
  /** Records of minutiae and of palms. */
  FEATURES;

  /** Whether the structure of a file shows its faults, so that no image needs to be opened. */
  public boolean isOfStructure() {
    return switch (this) {
      case TRANSPORT, HEADER, PARTICULARS, SET -> true;
      case IMAGE, RIDGES, SEQUENCE, SEGMENTS, FEATURES -> false;
    };
  }
}
