package ridgeproof.ridges;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;

/** Measures the prints of an image by the fingers that its position code is for. */
public final class PrintAnalyzer {

  /**
   * What was seen.
   *
   * @param fingers the measures of each, by the name that the image gives it
   * @param slap where the fingers of an image of several are
   */
  public record Seen(Map<FingerPosition, FingerAnalysis> fingers, Optional<Slap> slap) {

    /** What was seen of the other fingers; no slap where none of its fingers is left. */
    public Seen without(Predicate<FingerPosition> left) {
      Map<FingerPosition, FingerAnalysis> others = new EnumMap<>(FingerPosition.class);
      others.putAll(fingers);
      others.keySet().removeIf(left);
      return new Seen(
          others,
          slap.map(
                  all ->
                      new Slap(
                          all.segments().stream()
                              .filter(segment -> !left.test(segment.position()))
                              .toList(),
                          all.degrees(),
                          all.apparentHand()))
              .filter(rest -> !rest.segments().isEmpty()));
    }
  }

  private PrintAnalyzer() {}

  /**
   * Measures the one finger of an image, or looks for those of several.
   *
   * @param ppi pixels per inch, 240 to 4800
   * @param shown the fingers of the position code, from left to right; at least one
   * @param missing which of several are declared missing, and not looked for
   */
  public static Seen analyse(
      GrayImage image, double ppi, List<FingerPosition> shown, Predicate<FingerPosition> missing) {
    if (shown.size() == 1) {
      return new Seen(Map.of(shown.get(0), FingerAnalyzer.analyse(image, ppi)), Optional.empty());
    }
    List<FingerPosition> expected = shown.stream().filter(missing.negate()).toList();
    if (expected.isEmpty()) {
      return new Seen(Map.of(), Optional.empty());
    }
    SlapAnalysis analysis = SlapAnalyzer.analyse(image, ppi, expected);
    return new Seen(analysis.fingers(), Optional.of(analysis.slap()));
  }
}
