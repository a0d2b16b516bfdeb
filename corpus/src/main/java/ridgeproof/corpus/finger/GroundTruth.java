package ridgeproof.corpus.finger;

import java.util.List;

/**
 * What is known of an image because it was made: coordinates are pixels of that image.
 *
 * @param minutiae endings and bifurcations that the image shows
 * @param singularPoints cores and deltas that the image shows
 * @param mask where the image shows ridges
 */
public record GroundTruth(
    List<TrueMinutia> minutiae, List<TrueSingularPoint> singularPoints, TrueRidgeMask mask) {

  public GroundTruth {
    minutiae = List.copyOf(minutiae);
    singularPoints = List.copyOf(singularPoints);
  }
}
