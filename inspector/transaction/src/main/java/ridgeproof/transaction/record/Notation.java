package ridgeproof.transaction.record;

/** The two encodings that the standard has. */
public enum Notation {
  /** Tagged fields between separators, and binary records. */
  TRADITIONAL,
  /** NIEM-conformant XML. */
  XML
}
