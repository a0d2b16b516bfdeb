package ridgeproof.report.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.finding.CausedBy;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.finding.TextPlace;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.report.FileFacts;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Reports;
import ridgeproof.ridges.matching.SequenceResult;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Source.Knowledge;
import ridgeproof.transaction.record.ByteRange;

/** A report that has once everything that a report can have. */
public final class MadeFindings {

  public static final FileFacts FILE = new FileFacts("pilot card.an2", 1234567, "c".repeat(64));

  /** Its version is none that exists; after the Type-2 record come three images. */
  private static final FindingsReport BASE =
      Reports.examine(
          PilotCard.ascii().header(2, "0").inOrder(List.of(2, 7, 13)).bytes(), Depth.STRUCTURE);

  private MadeFindings() {}

  /** The file as a whole, with two consequences. */
  public static Finding missing() {
    return finding(
            rule("RP-TXN-004", Severity.BLOCKING, "Print is missing", "Capture {finger}."),
            Location.file(),
            Observed.of("no image of the right thumb"),
            "one image of the right thumb",
            new Source("DESIGN", "", Knowledge.COMMON_PRACTICE))
        .explaining(2);
  }

  /** One of its consequences. */
  static Finding unlisted() {
    return finding(
            rule("RP-STR-015", Severity.NOTE, "Count differs", "No action is needed."),
            Location.inRecord(1, 1).in(new FieldNumber(1, 3)),
            Observed.of("4 records"),
            "5 records",
            new Source("ITL2011", "Field 1.003", Knowledge.FROM_MEMORY))
        .causedBy(new CausedBy("RP-TXN-004", Location.file()));
  }

  /** A value that tells of a person, in two subfields. */
  static Finding personal() {
    Finding second = nameAt(2, 7, "SPECIMEN,EVE");
    return nameAt(1, 3, "SPECIMEN,ADA").repeatedAt(List.of(second));
  }

  private static Finding nameAt(int subfield, int item, String name) {
    Location place =
        new Location(
            OptionalInt.of(2),
            OptionalInt.of(2),
            OptionalInt.of(0),
            Optional.of(new FieldNumber(2, 18)),
            OptionalInt.of(subfield),
            OptionalInt.of(item),
            Optional.of(new ByteRange(200 + subfield, 12)),
            OptionalInt.empty(),
            Optional.empty());
    return finding(
        rule("RP-FLD-005", Severity.LIKELY, "Invalid character", "Re-enter the field."),
        place,
        Observed.personal(name),
        "letters, \"-\"",
        new Source("EBTS", "NAM 2.018", Knowledge.PUBLISHED));
  }

  /** Asks for another capture of the right index finger. */
  public static Finding poor() {
    return new Finding(
        rule("RP-RDG-017", Severity.LIKELY, "Poor print", "Recapture {finger}."),
        Severity.LIKELY,
        Location.inRecord(3, 14)
            .withIdc(OptionalInt.of(2))
            .at(new ByteRange(400, 900))
            .withPosition(OptionalInt.of(2)),
        Observed.of("score 36 of 100"),
        "a score of at least 40",
        "The bureau may not find the person.",
        "Recapture the right index finger.",
        new Source("DESIGN", "score", Knowledge.COMMON_PRACTICE),
        List.of(
            Measure.against("overall score", 36, "points", 40), Measure.of("minutiae", 12.5, "")));
  }

  /** A file that is text has lines; its values may hold what a terminal or a sheet would act on. */
  public static Finding hostile() {
    Location place =
        Location.inRecord(5, 14)
            .in(new FieldNumber(14, 4))
            .at(new ByteRange(2000, 5))
            .withPosition(OptionalInt.of(13))
            .withText(new TextPlace(17, 9, "itl:A/itl:B/biom:C[2]/nc:D"));
    return finding(
        rule("RP-COD-001", Severity.ADVICE, "Code is not listed", "Select a listed code."),
        place,
        Observed.of("=1+1\u001B[31m"),
        "a listed code\u202E",
        new Source("OUTSIDE", "table 3", Knowledge.DISPUTED));
  }

  private static RuleRow rule(String id, Severity severity, String title, String remedy) {
    Source source = new Source("DESIGN", "", Knowledge.COMMON_PRACTICE);
    return new RuleRow(id, severity, title, "Why {name} matters: " + id + ".", remedy, source);
  }

  private static Finding finding(
      RuleRow rule, Location place, Observed observed, String required, Source source) {
    return new Finding(
        rule,
        rule.severity(),
        place,
        observed,
        required,
        "The bureau cannot use it: " + rule.id() + ".",
        rule.remedy().replace("{finger}", "the right thumb"),
        source,
        List.of());
  }

  static List<Finding> findings() {
    return List.of(missing(), personal(), poor(), hostile());
  }

  private static List<Finding> every() {
    return List.of(
        missing(),
        unlisted(),
        nameAt(1, 3, "SPECIMEN,ADA"),
        nameAt(2, 7, "SPECIMEN,EVE"),
        poor(),
        hostile());
  }

  /** The same fault at that many places, item by item of one field. */
  public static Finding repeated(int places) {
    List<Finding> all =
        IntStream.rangeClosed(1, places).mapToObj(item -> nameAt(1, item, "X" + item)).toList();
    return all.get(0).repeatedAt(all.subList(1, places));
  }

  /** Everything at once. */
  public static FindingsReport all() {
    List<RecommendedAction> actions =
        List.of(
            new RecommendedAction(
                "Capture the right thumb.", Severity.BLOCKING, List.of(missing())),
            new RecommendedAction(
                "Re-enter the names.", Severity.LIKELY, List.of(personal(), personal(), poor())));
    return report(
        findings(), every(), actions, images(), Optional.of(MadeRidges.comparison()), Verdict.HOLD);
  }

  /** A report of the same file with these findings alone, and nothing else to say. */
  public static FindingsReport with(Finding... findings) {
    List<Finding> all = List.of(findings);
    return new FindingsReport(
        BASE.transaction(),
        BASE.tables(),
        Depth.STRUCTURE,
        LocalDate.of(2026, 3, 2),
        List.of(),
        Optional.empty(),
        false,
        List.of(),
        all,
        all,
        List.of(),
        Optional.empty(),
        Verdict.READY);
  }

  private static FindingsReport report(
      List<Finding> findings,
      List<Finding> every,
      List<RecommendedAction> actions,
      List<ExaminedImage> images,
      Optional<SequenceResult> answers,
      Verdict verdict) {
    return new FindingsReport(
        BASE.transaction(),
        BASE.tables(),
        Depth.RIDGES,
        LocalDate.of(2026, 3, 4),
        images,
        Optional.of(
            new SubmissionProfile(
                "pilots",
                "Pilots' licenses",
                "",
                List.of(),
                new Source("DESIGN", "", Knowledge.COMMON_PRACTICE))),
        false,
        List.of(new RelaxedRule("RP-IMG-004", "ADVICE", "NOTE")),
        findings,
        every,
        actions,
        answers.map(each -> new SequenceComparison(each, Map.of(), Map.of())),
        verdict);
  }

  /** The first has everything, the second nothing, the third is a slap. */
  private static List<ExaminedImage> images() {
    return Stream.of(full(BASE.images().get(0)), bare(BASE.images().get(1)), slap()).toList();
  }

  private static ExaminedImage full(ExaminedImage image) {
    return new ExaminedImage(
        image.record(),
        image.layout(),
        List.of(2),
        OptionalInt.of(1),
        OptionalInt.of(804),
        OptionalInt.of(750),
        OptionalInt.of(8),
        Optional.of(new PixelDensity(500.126, 1000.124)),
        Optional.of("WSQ20"),
        Optional.of(ImageFormat.WSQ),
        image.data(),
        Optional.empty(),
        Optional.of(
            new PixelStatistics(
                803,
                751,
                201,
                3,
                254,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty())),
        List.of(),
        Optional.of(
            new RidgeAnalysis(
                Impression.ROLLED,
                Map.of(FingerPosition.RIGHT_INDEX, unmeasured(90)),
                Optional.empty())));
  }

  private static FingerAnalysis unmeasured(int score) {
    return new FingerAnalysis(
        List.of(FingerAnalysis.Doubt.NO_RIDGES, FingerAnalysis.Doubt.NO_CORE),
        Optional.empty(),
        new QualityScore(score, List.of()));
  }

  private static ExaminedImage bare(ExaminedImage image) {
    return new ExaminedImage(
        image.record(),
        image.layout(),
        List.of(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        Optional.of(PixelDensity.ofPpi(600)),
        Optional.of("QZ"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  private static ExaminedImage slap() {
    ExaminedImage image = BASE.images().get(2);
    return new ExaminedImage(
        image.record(),
        image.layout(),
        List.of(13, 99),
        OptionalInt.of(0),
        OptionalInt.of(1600),
        OptionalInt.of(1500),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(ImageFormat.RAW),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.of(MadeRidges.slap()));
  }
}
