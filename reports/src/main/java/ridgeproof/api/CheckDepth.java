package ridgeproof.api;

/** How much of a file is checked; each includes the one before, and takes several times as long. */
public enum CheckDepth {
  /** Records, fields, and codes. */
  STRUCTURE,
  /** Also the images. */
  IMAGES,
  /** Also print quality and finger positions. */
  RIDGES
}
