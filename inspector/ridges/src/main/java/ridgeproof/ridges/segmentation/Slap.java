package ridgeproof.ridges.segmentation;

import java.util.List;
import java.util.Optional;
import ridgeproof.spec.layout.FingerPosition;

/**
 * The fingers of an image of several.
 *
 * @param segments one for each finger expected, from left to right
 * @param degrees how far the fingers lean to the right from straight up, together
 * @param apparentHand the hand that the heights and widths of at least three prints speak for, if
 *     they clearly do; weak evidence
 */
public record Slap(
    List<Segment> segments, double degrees, Optional<FingerPosition.Hand> apparentHand) {

  public Slap {
    segments = List.copyOf(segments);
  }

  /** Whether a finger was not found, so that the names of the others are less than certain. */
  public boolean lacksPrints() {
    return segments.stream().anyMatch(segment -> segment.box().isEmpty());
  }
}
