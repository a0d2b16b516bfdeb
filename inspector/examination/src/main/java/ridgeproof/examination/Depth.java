package ridgeproof.examination;

/** How deep an examination goes. */
public enum Depth {
  /** Records, fields, codes and completeness; no image is opened. */
  STRUCTURE,
  /** Also the headers and pixels of every image. */
  IMAGES,
  /** Also the friction ridges of every print. */
  RIDGES
}
