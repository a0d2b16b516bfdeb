package ridgeproof.examination.facts;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/**
 * What the ridges of an image show.
 *
 * @param impression how the fingers were laid down
 * @param fingers what each print shows, by the name that the image gives the finger
 * @param slap where the fingers of an image of several were found
 * @param surplusPrints clear prints in it beyond those of the fingers that are not declared missing
 */
public record RidgeAnalysis(
    Impression impression,
    Map<FingerPosition, FingerAnalysis> fingers,
    Optional<Slap> slap,
    int surplusPrints) {

  public RidgeAnalysis(
      Impression impression, Map<FingerPosition, FingerAnalysis> fingers, Optional<Slap> slap) {
    this(impression, fingers, slap, 0);
  }

  /** What limits of ridges tell apart. */
  public enum Impression {
    ROLLED("rolled"),
    PLAIN("plain");

    private final String key;

    Impression(String key) {
      this.key = key;
    }

    /** As tables of limits write it. */
    public String key() {
      return key;
    }

    /**
     * The impression that tables write so.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Impression ofKey(String key) {
      return Arrays.stream(values())
          .filter(impression -> impression.key.equals(key))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException(key + " is neither rolled nor plain"));
    }
  }

  public RidgeAnalysis {
    Map<FingerPosition, FingerAnalysis> copy = new EnumMap<>(FingerPosition.class);
    copy.putAll(fingers);
    fingers = Collections.unmodifiableMap(copy);
  }

  /** The lowest score of its prints, 0 to 100; 0 without a print. */
  public int lowestScore() {
    return fingers.values().stream().mapToInt(finger -> finger.score().value()).min().orElse(0);
  }
}
