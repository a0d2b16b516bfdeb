package ridgeproof.examination.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.limit.MeasuredImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.measure.Enlargement;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.ridges.matching.SequenceResult;

/** What rules of causes make of a card whose images were measured as a test says. */
public final class MeasuredCard {

  private final FindingsReport card;
  private final List<ExaminedImage> images;
  private final Depth depth;
  private final Optional<SequenceComparison> sequence;

  private MeasuredCard(
      FindingsReport card,
      List<ExaminedImage> images,
      Depth depth,
      Optional<SequenceComparison> sequence) {
    this.card = card;
    this.images = images;
    this.depth = depth;
    this.sequence = sequence;
  }

  /** The images of the card, of which nothing was measured yet. */
  public static MeasuredCard of(SampleCard card) {
    FindingsReport report =
        SampleCard.examine(card.bytes(), ExaminationOptions.standard().withDepth(Depth.STRUCTURE));
    return new MeasuredCard(report, report.images(), Depth.IMAGES, Optional.empty());
  }

  public static MeasuredCard ofRolls() {
    return of(SampleCard.rolledTagged());
  }

  public MeasuredCard depth(Depth other) {
    return new MeasuredCard(card, images, other, sequence);
  }

  /** The images were compared with this result, of which causes use the prints themselves. */
  public MeasuredCard compared(SequenceResult result) {
    return compared(new SequenceComparison(result, Map.of(), Map.of()));
  }

  public MeasuredCard compared(SequenceComparison comparison) {
    return new MeasuredCard(card, images, depth, Optional.of(comparison));
  }

  public ExaminedImage image(int record) {
    return images.stream().filter(i -> i.record().ordinal() == record).findFirst().orElseThrow();
  }

  private MeasuredCard change(int record, UnaryOperator<ExaminedImage> change) {
    List<ExaminedImage> changed = new ArrayList<>(images);
    changed.replaceAll(image -> image.record().ordinal() == record ? change.apply(image) : image);
    return new MeasuredCard(card, changed, depth, sequence);
  }

  public MeasuredCard pixels(int record, MeasuredImage measured) {
    return change(
        record, image -> opened(image, image.header(), Optional.of(measured.statistics())));
  }

  /** Pixels of a sound print with these signs of enlargement. */
  public MeasuredCard enlarged(int record, double evenness, double fineDetail) {
    PixelStatistics sound = MeasuredImage.sound().statistics();
    GrayLevelStatistics print = sound.print().orElseThrow();
    PixelStatistics enlarged =
        new PixelStatistics(
            sound.width(),
            sound.height(),
            sound.grayLevels(),
            sound.darkest(),
            sound.brightest(),
            Optional.of(
                new GrayLevelStatistics(
                    print.all(),
                    print.print(),
                    print.fading(),
                    print.bare(),
                    print.padding(),
                    print.ridges(),
                    new Enlargement(evenness, fineDetail),
                    print.emptyBand(),
                    print.wraparound())),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return change(record, image -> opened(image, image.header(), Optional.of(enlarged)));
  }

  public MeasuredCard header(int record, ImageHeader header) {
    return change(record, image -> opened(image, Optional.of(header), image.pixels()));
  }

  public MeasuredCard ridges(int record, RidgeAnalysis seen) {
    return change(
        record, image -> SampleRecords.image(image, image.statedFormat(), Optional.of(seen)));
  }

  private static ExaminedImage opened(
      ExaminedImage image, Optional<ImageHeader> header, Optional<PixelStatistics> pixels) {
    return SampleRecords.image(image, image.statedFormat(), header, pixels, image.ridges());
  }

  public ExaminationInput examinee() {
    return new ExaminationInput(
        card.transaction(),
        SampleCard.TABLES,
        depth,
        images,
        Optional.empty(),
        false,
        ExaminationOptions.standard().withToday(SampleCard.TODAY),
        sequence);
  }

  /**
   * A line for each cause: its rule, place, what was observed and is required, its evidence, and
   * after an arrow the findings that it explains.
   */
  public List<String> told(CauseRule rule, Finding... found) {
    CauseLog log = new CauseLog(SampleCard.TABLES);
    rule.establish(examinee(), List.of(found), log);
    return log.causes().stream().map(cause -> line(cause, List.of(found))).toList();
  }

  private static String line(Cause cause, List<Finding> found) {
    Finding finding = cause.finding();
    StringBuilder line = new StringBuilder(Established.name(finding));
    line.append(": ").append(finding.observed().text()).append("; ").append(finding.required());
    finding.evidence().forEach(measure -> line.append("; ").append(words(measure)));
    String explained = explained(cause, found);
    return explained.isEmpty() ? line.toString() : line + " -> " + explained;
  }

  private static String words(Measure measure) {
    String value = number(measure.value());
    return (measure.name() + " " + value + " " + measure.unit()).trim()
        + (measure.limit().isPresent()
            ? " (limit " + number(measure.limit().getAsDouble()) + ")"
            : "");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceFirst("\\.?0+$", "");
  }

  private static String explained(Cause cause, List<Finding> found) {
    return String.join(
        ", ", found.stream().filter(cause.consequences()::include).map(Established::name).toList());
  }

  /** One finding of each rule, in the record of that ordinal at that position. */
  public static Finding[] inRecord(int record, int position, String... rules) {
    Finding[] findings = new Finding[rules.length];
    for (int i = 0; i < rules.length; i++) {
      findings[i] = at(rules[i], record, position);
    }
    return findings;
  }

  public static Finding at(String rule, int record, int position) {
    return Established.finding(
        rule, Location.inRecord(record, 14).withPosition(OptionalInt.of(position)));
  }

  public static Finding[] all(Finding[]... parts) {
    List<Finding> all = new ArrayList<>();
    for (Finding[] part : parts) {
      all.addAll(List.of(part));
    }
    return all.toArray(Finding[]::new);
  }
}
