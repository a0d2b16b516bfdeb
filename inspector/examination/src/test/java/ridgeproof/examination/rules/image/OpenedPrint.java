package ridgeproof.examination.rules.image;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.spec.agency.AgencyProfileReader;
import ridgeproof.spec.agency.ProfileReading;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.writer.RecordDraft;

/**
 * The right thumb of the conforming card, with what its codestream says of itself and what is
 * measured of it as a test wants it.
 */
final class OpenedPrint {

  static final ExaminationOptions STRUCTURE =
      ExaminationOptions.standard().withToday(SampleCard.TODAY).withDepth(Depth.STRUCTURE);

  private final FindingsReport card;
  private final ExaminedImage image;

  private OpenedPrint(FindingsReport card, ExaminedImage image) {
    this.card = card;
    this.image = image;
  }

  static OpenedPrint of(UnaryOperator<RecordDraft> change) {
    FindingsReport card =
        SampleCard.examine(SampleCard.rolledTagged().with(3, change).bytes(), STRUCTURE);
    return new OpenedPrint(card, card.images().get(0));
  }

  /** The print as its record states it: 32 x 24 pixels of 8 bits at 500 ppi. */
  static OpenedPrint sample() {
    return of(draft -> draft);
  }

  OpenedPrint saying(ImageHeader header) {
    return with(header, image.pixels(), image.decodingDefects());
  }

  OpenedPrint showing(PixelStatistics pixels) {
    return with(image.header().orElseThrow(), Optional.of(pixels), image.decodingDefects());
  }

  OpenedPrint meeting(ImageDefect... defects) {
    return with(image.header().orElseThrow(), image.pixels(), List.of(defects));
  }

  private OpenedPrint with(
      ImageHeader header, Optional<PixelStatistics> pixels, List<ImageDefect> defects) {
    return new OpenedPrint(card, image.opened(header, pixels, defects, Optional.empty()));
  }

  /** The print of a record whose compression field stands for another format. */
  OpenedPrint stated(ImageFormat format) {
    return new OpenedPrint(card, SampleRecords.image(image, Optional.of(format), image.ridges()));
  }

  List<Finding> findings(Rule rule, ExaminationOptions options) {
    FindingLog log = new FindingLog(SampleCard.TABLES, 100);
    rule.check(input(options), log);
    return log.findings();
  }

  ExaminationInput input(ExaminationOptions options) {
    return new ExaminationInput(
        card.transaction(),
        SampleCard.TABLES,
        Depth.IMAGES,
        List.of(image),
        Optional.empty(),
        false,
        options,
        Optional.empty());
  }

  /** What the rule finds: its row, what it found, and what it wants. */
  List<String> found(Rule rule, ExaminationOptions options) {
    return findings(rule, options).stream()
        .map(f -> f.ruleId() + " " + f.observed().text() + "; " + f.required())
        .toList();
  }

  List<String> found(Rule rule) {
    return found(rule, STRUCTURE);
  }

  static ExaminationOptions agency(String limits) {
    String text = "name = \"tidewater\"\ntitle = \"Tidewater Harbour Pilots\"\n[limits]\n" + limits;
    ProfileReading reading = AgencyProfileReader.read(text, SampleCard.TABLES);
    AgencyProfile profile = ((ProfileReading.Usable) reading).profile();
    return STRUCTURE.withAgency(profile);
  }

  /** A header that agrees with the record of the sample but for its format. */
  static ImageHeader header(ImageFormat format) {
    return header(
        format, SampleCard.WIDTH, SampleCard.HEIGHT, 8, Optional.of(PixelDensity.ofPpi(500)));
  }

  static ImageHeader header(
      ImageFormat format, int width, int height, int bits, Optional<PixelDensity> density) {
    return new ImageHeader(
        format,
        width,
        height,
        bits,
        1,
        density,
        Optional.empty(),
        OptionalDouble.empty(),
        new ByteRange(0, 100),
        Map.of(),
        Map.of(),
        List.of());
  }

  /** A header of a codestream of so many bytes, and of a rate where its tables tell one. */
  static ImageHeader compressed(ImageFormat format, int bytes, OptionalDouble rate) {
    return new ImageHeader(
        format,
        SampleCard.WIDTH,
        SampleCard.HEIGHT,
        8,
        1,
        Optional.empty(),
        Optional.of(false),
        rate,
        new ByteRange(0, bytes),
        Map.of(),
        Map.of(),
        List.of());
  }
}
