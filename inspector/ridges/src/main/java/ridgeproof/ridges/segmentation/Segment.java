package ridgeproof.ridges.segmentation;

import java.util.List;
import java.util.Optional;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.SequenceCheck;
import ridgeproof.spec.layout.FingerPosition;

/**
 * One finger looked for in an image of several.
 *
 * @param position the finger
 * @param box around its distal print, in pixels of the image; nothing when not found
 * @param confidence that this print is the distal print of this finger by where it lies and what it
 *     looks like, 0..1; whose finger it is only {@link SequenceCheck} can tell
 * @param areaMm2 of the print, square millimetres
 * @param doubts why the print was not found, or what makes it doubtful
 */
public record Segment(
    FingerPosition position,
    Optional<RotatedBox> box,
    double confidence,
    double areaMm2,
    List<Doubt> doubts) {

  /** What can be wrong with a segment. */
  public enum Doubt {
    /** The resolution is outside 240 to 4800 ppi, or the image is too large at it. */
    UNUSABLE_RESOLUTION,
    /** Nowhere in the image are there friction ridges. */
    NO_RIDGES,
    /** There are fewer prints than fingers, and this place is the one left over. */
    FEWER_PRINTS_THAN_FINGERS,
    /** Which of the fingers has no print could as well be another. */
    PLACE_AMBIGUOUS,
    /** The top edge cuts the print. */
    CUT_AT_TOP,
    /** A side or the bottom edge cuts the print. */
    CUT_AT_SIDE,
    /** Less of the print is there than of a distal print pressed flat. */
    SMALL,
    /** It was cut from a longer print at the place where its ridges are weakest. */
    CUT_FROM_PHALANX,
    /** The prints do not lie as the fingers of a hand do. */
    UNUSUAL_ARRANGEMENT
  }

  public Segment {
    doubts = List.copyOf(doubts);
  }

  /** A finger without a print, and why. */
  static Segment missing(FingerPosition position, Doubt why) {
    return new Segment(position, Optional.empty(), 0, 0, List.of(why));
  }
}
