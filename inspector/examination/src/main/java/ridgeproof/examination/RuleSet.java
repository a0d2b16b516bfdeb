package ridgeproof.examination;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The rules of an examination, in the order in which they run. */
final class RuleSet {

  private static final List<Rule> RULES =
      List.of(
          new LayoutRule(),
          new CodeCaseRule(),
          new ResolutionFieldsRule(),
          new IdcRule(),
          new PositionRule(),
          new DeclaredMissingRule(),
          new TransactionTypeRule(),
          new CompletenessRule(),
          new NeededImagesRule(),
          new RecordLimitsRule(),
          new MissingMarksRule(),
          new ImageAgreementRule(),
          new ImageSoundnessRule(),
          new ImageLimitsRule(),
          new CompressionRule(),
          new ImageHistoryRule(),
          new BlankImageRule(),
          new GrayRangeRule(),
          new ImageGroundRule(),
          new SecondDecoderRule(),
          new RidgeLimitsRule(),
          new SlapRule(),
          new SequenceRule(),
          new RecordLinkRule(),
          new CrossReferenceRule(),
          new HeaderResolutionRule(),
          new SegmentShapeRule(),
          new SegmentFingersRule(),
          new DeclaredFingerRule(),
          new QualityFieldsRule(),
          new FeatureCountRule(),
          new FeaturePlaceRule(),
          new FeatureFrameRule(),
          new FeatureFingerRule(),
          new PositionDescriptorRule(),
          new CaptureDateRule(),
          new TransactionTimeRule(),
          new PrintCompressionRule(),
          new NeededParticularsRule(),
          new BirthplaceRule(),
          new DateOrderRule(),
          new AgeRule(),
          new NumberFormRule(),
          new MeasuresRule(),
          new MiscellaneousNumberRule(),
          new NameRule(),
          new AgencyFieldsRule());

  private RuleSet() {}

  static List<Rule> standard() {
    return RULES;
  }

  /** Every row of the catalogue that some rule can report. */
  static Set<String> ids() {
    Set<String> ids = new TreeSet<>();
    RULES.forEach(rule -> ids.addAll(rule.ids()));
    return ids;
  }
}
