package ridgeproof.report.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Reports;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;

/** Reports of cards in which nothing was found but what a test says. */
final class MadeCardReport {

  static final FileFacts FILE = new FileFacts("card.an2", 1234567, "ab".repeat(32));

  private static final SpecTables TABLES = Reports.TABLES;

  private MadeCardReport() {}

  static FindingsReport of(PilotCard card, Finding... findings) {
    return of(Reports.examine(card.bytes(), Depth.STRUCTURE), List.of(findings), List.of());
  }

  /** The report with these findings alone. */
  static FindingsReport of(FindingsReport base, Finding... findings) {
    return of(base, List.of(findings), List.of());
  }

  /**
   * The report with these findings alone.
   *
   * @param consequences what is reported by its cause alone
   */
  static FindingsReport of(
      FindingsReport base, List<Finding> findings, List<Finding> consequences) {
    List<Finding> every = new ArrayList<>(findings);
    every.addAll(consequences);
    List<RecommendedAction> actions =
        findings.stream()
            .filter(finding -> finding.severity() != Severity.NOTE)
            .map(
                finding ->
                    new RecommendedAction(finding.remedy(), finding.severity(), List.of(finding)))
            .toList();
    return copy(base, base.images(), base.profile(), findings, every, actions);
  }

  static FindingsReport withActions(FindingsReport base, RecommendedAction... actions) {
    return copy(
        base,
        base.images(),
        base.profile(),
        base.findings(),
        base.everyFinding(),
        List.of(actions));
  }

  static FindingsReport withProfile(FindingsReport base, Optional<SubmissionProfile> profile) {
    return copy(base, base.images(), profile, base.findings(), base.everyFinding(), base.actions());
  }

  /** The report with each print of every slap seen by itself. */
  static FindingsReport withSlapsSeen(FindingsReport base) {
    List<ExaminedImage> images = base.images().stream().map(MadeCardReport::seen).toList();
    return copy(base, images, base.profile(), base.findings(), base.everyFinding(), base.actions());
  }

  private static FindingsReport copy(
      FindingsReport base,
      List<ExaminedImage> images,
      Optional<SubmissionProfile> profile,
      List<Finding> findings,
      List<Finding> every,
      List<RecommendedAction> actions) {
    return new FindingsReport(
        base.transaction(),
        base.tables(),
        base.depth(),
        base.asOf(),
        images,
        profile,
        base.profileNamed(),
        base.relaxed(),
        findings,
        every,
        actions,
        base.sequence(),
        base.verdict());
  }

  private static ExaminedImage seen(ExaminedImage image) {
    List<FingerPosition> fingers =
        switch (image.position().orElse(0)) {
          case 13 ->
              List.of(
                  FingerPosition.RIGHT_INDEX,
                  FingerPosition.RIGHT_MIDDLE,
                  FingerPosition.RIGHT_RING,
                  FingerPosition.RIGHT_LITTLE);
          case 15 -> List.of(FingerPosition.LEFT_THUMB, FingerPosition.RIGHT_THUMB);
          default -> List.of();
        };
    if (fingers.isEmpty()) {
      return image;
    }
    Map<FingerPosition, FingerAnalysis> prints = new EnumMap<>(FingerPosition.class);
    fingers.forEach(
        finger ->
            prints.put(
                finger,
                new FingerAnalysis(
                    List.of(), Optional.empty(), new QualityScore(50 + finger.code(), List.of()))));
    Slap slap = new Slap(List.of(), 0, Optional.empty());
    return with(image, new RidgeAnalysis(Impression.PLAIN, prints, Optional.of(slap)));
  }

  private static ExaminedImage with(ExaminedImage image, RidgeAnalysis ridges) {
    return new ExaminedImage(
        image.record(),
        image.layout(),
        image.positions(),
        image.impression(),
        image.width(),
        image.height(),
        image.bitsPerPixel(),
        image.density(),
        image.compression(),
        image.statedFormat(),
        image.data(),
        image.header(),
        image.pixels(),
        image.decodingDefects(),
        Optional.of(ridges));
  }

  static ReportModel page(FindingsReport report) {
    return new ReportModelBuilder(FILE, report, RenderOptions.standard(), Optional.empty()).page();
  }

  static ReportModel page(PilotCard card, Finding... findings) {
    return page(of(card, findings));
  }

  /** The page with black images. */
  static ReportModel pageWithImages(FindingsReport report) {
    GrayImage black = GrayImage.owning(32, 24, new byte[32 * 24]);
    return new ReportModelBuilder(
            FILE, report, RenderOptions.standard(), Optional.of(image -> Optional.of(black)))
        .page();
  }

  static RuleRow rule(String id) {
    return TABLES.catalogue().rule(id);
  }

  static Finding finding(String id, Severity severity, Location place, Measure... measures) {
    RuleRow rule = rule(id);
    return new Finding(
        rule,
        severity,
        place,
        Observed.of("observed"),
        "required",
        rule.explanation(),
        rule.remedy(),
        rule.source(),
        List.of(measures));
  }

  /** A finding with the severity of its rule. */
  static Finding finding(String id, Location place) {
    return finding(id, rule(id).severity(), place);
  }

  /** In the Type-14 record of that ordinal. */
  static Location print(int record) {
    return Location.inRecord(record, 14);
  }

  /** A print in the Type-14 record of that ordinal. */
  static Location print(int record, int position) {
    return print(record).withPosition(OptionalInt.of(position));
  }

  /** A position of the file that no record has. */
  static Location position(int code) {
    return Location.file().withPosition(OptionalInt.of(code));
  }

  static Location field(int record, int type, int number) {
    return Location.inRecord(record, type).in(new FieldNumber(type, number));
  }
}
