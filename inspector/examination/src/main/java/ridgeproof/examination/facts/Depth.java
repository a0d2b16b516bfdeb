package ridgeproof.examination.facts;

/** How deep an examination goes. */
public enum Depth {
  /** Records, fields, codes and completeness; no image is opened. */
  STRUCTURE,
  /** Also the headers and pixels of every image. */
  IMAGES,
  /** Also what the ridges show, finger by finger, and whether each is in its place. */
  RIDGES
}
