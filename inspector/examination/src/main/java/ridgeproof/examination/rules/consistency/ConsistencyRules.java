package ridgeproof.examination.rules.consistency;

import java.util.List;
import ridgeproof.examination.rules.Rule;

/** What records have to agree in. */
public final class ConsistencyRules {

  private ConsistencyRules() {}

  /** The rules of this package, in the order in which they run. */
  public static List<Rule> all() {
    return List.of(
        new RecordLinkRule(),
        new CrossReferenceRule(),
        new SegmentShapeRule(),
        new SegmentFingersRule(),
        new DeclaredFingerRule(),
        new QualityFieldsRule(),
        new FeatureCountRule(),
        new FeatureCoordinatesRule(),
        new FeatureImageSizeRule(),
        new FeatureFingerRule(),
        new PositionDescriptorRule(),
        new CaptureDateRule());
  }
}
