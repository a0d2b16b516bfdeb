package ridgeproof.examination;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/**
 * Conforming records that go beside those of {@link SampleCard}, and what tests ask of a report.
 */
public final class SampleRecords {

  /** Where the right and the left slap stand in {@link SampleCard#rolledTagged()}. */
  public static final int RIGHT_SLAP = 15;

  public static final int LEFT_SLAP = 16;

  private static final int BOX_WIDTH = SampleCard.WIDTH / 4;

  private SampleRecords() {}

  /** A tenprint card of Type-14 records with one of them changed. */
  public static SampleCard tagged(int record, UnaryOperator<RecordDraft> change) {
    return SampleCard.rolledTagged().with(record, change);
  }

  /** Boxes side by side, as wide as a quarter of the image, for fingers from left to right. */
  public static List<List<String>> boxes(int... fingers) {
    List<List<String>> boxes = new ArrayList<>();
    for (int i = 0; i < fingers.length; i++) {
      boxes.add(box(fingers[i], i * BOX_WIDTH, (i + 1) * BOX_WIDTH, 2, SampleCard.HEIGHT));
    }
    return boxes;
  }

  public static List<String> box(int finger, int left, int right, int top, int bottom) {
    return texts(finger, left, right, top, bottom);
  }

  public static List<String> texts(int... numbers) {
    return IntStream.of(numbers).mapToObj(Integer::toString).toList();
  }

  /** Minutiae of the older standard format in an image of 1.6 x 1.2 mm. */
  public static RecordDraft standardFeatures(int idc, int finger) {
    return features(idc, "S")
        .with(5, List.of(List.of("TIDEWATER", "A")))
        .with(6, "%02d".formatted(finger))
        .with(7, List.of(List.of("T", "UN")))
        .with(8, "00800060")
        .with(9, "01600120")
        .with(10, "2")
        .with(11, "0")
        .with(
            12,
            List.of(
                List.of("001", "00000000000", "30", "A"),
                List.of("002", "01620121359", "30", "B")));
  }

  /** Minutiae by pixels of an image of {@link SampleCard#WIDTH} by {@link SampleCard#HEIGHT}. */
  public static RecordDraft pixelFeatures(int idc, int finger) {
    return features(idc, "U")
        .with(126, List.of(List.of("27", "513", "unspecified")))
        .with(127, List.of(List.of("NONE", "0")))
        .with(128, Integer.toString(SampleCard.WIDTH))
        .with(129, Integer.toString(SampleCard.HEIGHT))
        .with(130, "1")
        .with(131, "500")
        .with(132, "500")
        .with(133, "0")
        .with(134, "%02d".formatted(finger))
        .with(135, List.of(List.of("80", "000F", "1")))
        .with(136, "2")
        .with(
            137,
            List.of(
                List.of("001", "0", "0", "0", "1", "80"),
                List.of("002", "31", "23", "179", "2", "80")))
        .with(139, List.of(List.of("16", "12", "0")))
        .with(140, List.of(List.of("20", "20", "0")));
  }

  private static RecordDraft features(int idc, String format) {
    return RecordDraft.tagged(
        9,
        List.of(
            SampleCard.text(9, 1, ""),
            SampleCard.text(9, 2, "%02d".formatted(idc)),
            SampleCard.text(9, 3, "1"),
            SampleCard.text(9, 4, format)));
  }

  public static FieldDraft isr(int value) {
    return FieldDraft.binary(new FieldNumber(4, 5), 1, value);
  }

  /** An image with another format that its record states, and other ridges. */
  public static ExaminedImage image(
      ExaminedImage image, Optional<ImageFormat> statedFormat, Optional<RidgeAnalysis> ridges) {
    return image(image, statedFormat, image.header(), image.pixels(), ridges);
  }

  /** An image with these parts in place of its own. */
  public static ExaminedImage image(
      ExaminedImage image,
      Optional<ImageFormat> statedFormat,
      Optional<ImageHeader> header,
      Optional<PixelStatistics> pixels,
      Optional<RidgeAnalysis> ridges) {
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
        statedFormat,
        image.data(),
        header,
        pixels,
        image.decodingDefects(),
        ridges);
  }

  /** How often a report names a rule, each place counted. */
  public static long count(SampleCard card, String rule) {
    return card.examine().everyFinding().stream().filter(f -> f.ruleId().equals(rule)).count();
  }

  public static boolean reports(SampleCard card, String rule) {
    return count(card, rule) > 0;
  }

  /**
   * What a report finds by these rules: the rule, its place, what is observed, and what is required
   * there. Personal values are marked.
   */
  public static List<String> found(SampleCard card, String... rules) {
    return found(card.examine(), rules);
  }

  public static List<String> found(FindingsReport report, String... rules) {
    return report.everyFinding().stream()
        .filter(finding -> List.of(rules).contains(finding.ruleId()))
        .map(SampleRecords::line)
        .toList();
  }

  private static String line(Finding finding) {
    Location place = finding.location();
    StringBuilder line = new StringBuilder(finding.ruleId());
    place.record().ifPresent(record -> line.append(" record ").append(record));
    place.field().ifPresent(field -> line.append(" field ").append(field));
    place.subfield().ifPresent(number -> line.append(" subfield ").append(number));
    place.item().ifPresent(number -> line.append(" item ").append(number));
    place.position().ifPresent(code -> line.append(" position ").append(code));
    return line.append(finding.observed().personal() ? ": personal " : ": ")
        .append(finding.observed().text())
        .append("; ")
        .append(finding.required())
        .toString();
  }
}
