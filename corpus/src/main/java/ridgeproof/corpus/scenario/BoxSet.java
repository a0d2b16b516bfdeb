package ridgeproof.corpus.scenario;

import java.util.List;
import java.util.stream.IntStream;

/** Which boxes a set of prints has, by their position codes (ANSI/NIST-ITL, from memory). */
public enum BoxSet {
  /** Ten rolled fingers, two plain thumbs, the plain four fingers of each hand. */
  ROLLED_CARD(IntStream.rangeClosed(1, 14).boxed().toList()),
  /** The plain four fingers of each hand and both thumbs together. */
  FLATS(List.of(13, 14, 15)),
  /** No fingerprints. */
  NONE(List.of());

  private final List<Integer> boxes;

  BoxSet(List<Integer> boxes) {
    this.boxes = boxes;
  }

  /** Position codes in the order of the file. */
  public List<Integer> boxes() {
    return boxes;
  }
}
