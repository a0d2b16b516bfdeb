package ridgeproof.ridges;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/**
 * The fingers of a slap with the measures of each.
 *
 * @param slap where they are
 * @param fingers the measures of those found, positions in pixels of the slap
 */
public record SlapAnalysis(Slap slap, Map<FingerPosition, FingerAnalysis> fingers) {

  public SlapAnalysis {
    Map<FingerPosition, FingerAnalysis> copy = new EnumMap<>(FingerPosition.class);
    copy.putAll(fingers);
    fingers = Collections.unmodifiableMap(copy);
  }
}
