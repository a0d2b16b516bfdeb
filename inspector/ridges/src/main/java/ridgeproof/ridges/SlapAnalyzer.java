package ridgeproof.ridges;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.quality.GrayLevels;
import ridgeproof.ridges.segmentation.SlapSegmenter;
import ridgeproof.spec.layout.FingerPosition;

/** Finds and measures the fingers of a slap in one pass over the image. */
public final class SlapAnalyzer {

  private SlapAnalyzer() {}

  /**
   * Looks for the fingers expected and measures those found.
   *
   * @param ppi pixels per inch, 240 to 4800
   * @param expected the fingers declared to be there, without those missing
   */
  public static SlapAnalysis analyse(GrayImage image, double ppi, List<FingerPosition> expected) {
    if (!RidgeMaps.canBeMade(image, ppi)) {
      return new SlapAnalysis(SlapSegmenter.unusable(expected), Map.of());
    }
    RidgeMaps maps = RidgeMaps.of(image, ppi);
    SlapSegmenter.Finding finding = SlapSegmenter.find(maps, expected);
    GrayLevels levels = new GrayLevels(maps);
    Map<FingerPosition, FingerAnalysis> fingers = new EnumMap<>(FingerPosition.class);
    finding
        .regions()
        .forEach(
            (position, region) ->
                fingers.put(
                    position, FingerAnalyzer.analyse(maps, region, List.of(), levels, false)));
    return new SlapAnalysis(finding.slap(), fingers);
  }
}
