package ridgeproof.examination.rules.consistency;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.transaction.record.LogicalRecord;

/** The images that records of features describe: those with their IDC. */
final class FeatureImageIndex {

  private final Map<Integer, Set<Integer>> described;
  private final Map<Integer, List<ExaminedImage>> byIdc = new HashMap<>();

  FeatureImageIndex(ExaminationInput examinee) {
    described = examinee.tables().agreements().describedTypes();
    for (ExaminedImage image : examinee.images()) {
      image
          .record()
          .idc()
          .ifPresent(idc -> byIdc.computeIfAbsent(idc, key -> new ArrayList<>()).add(image));
    }
  }

  List<ExaminedImage> of(LogicalRecord features) {
    if (features.idc().isEmpty()) {
      return List.of();
    }
    Set<Integer> types = described.getOrDefault(features.type(), Set.of());
    return byIdc.getOrDefault(features.idc().getAsInt(), List.of()).stream()
        .filter(image -> types.contains(image.record().type()))
        .toList();
  }
}
