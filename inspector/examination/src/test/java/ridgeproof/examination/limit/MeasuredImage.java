package ridgeproof.examination.limit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.card.InvertedImages;
import ridgeproof.examination.cause.print.BrokenScanCause;
import ridgeproof.examination.cause.print.RidgePeriodCause;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.rules.image.ImageRules;
import ridgeproof.finding.Finding;
import ridgeproof.finding.FindingLog;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.imagery.measure.EdgePadding;
import ridgeproof.imagery.measure.EmptyBand;
import ridgeproof.imagery.measure.Enlargement;
import ridgeproof.imagery.measure.GrayHistogram;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.imagery.measure.RidgePeriod;
import ridgeproof.imagery.measure.Wraparound;

/**
 * What is measured of an image, as a test wants it: a sound print of 100 lines unless it says
 * otherwise.
 *
 * @param print pixels of the print by gray level
 */
public record MeasuredImage(
    int[] print,
    int[] fading,
    int[] bare,
    EdgePadding padding,
    Optional<RidgePeriod> ridges,
    EmptyBand band,
    Wraparound edges) {

  private static final int LINES = 100;

  public static MeasuredImage sound() {
    return new MeasuredImage(
            new int[256],
            new int[256],
            new int[256],
            new EdgePadding(0, 0, 0, 0),
            Optional.empty(),
            new EmptyBand(0, 0, 0),
            new Wraparound(0, 0, false))
        .levels(210, 42_000);
  }

  private static int[] at(int gray, int pixels) {
    int[] counts = new int[256];
    counts[gray] = pixels;
    return counts;
  }

  /** A print of so many gray levels, the brightest 255, over so many pixels. */
  public MeasuredImage levels(int levels, int pixels) {
    int[] counts = new int[256];
    for (int i = 0; i < pixels; i++) {
      counts[255 - i % levels]++;
    }
    return new MeasuredImage(counts, fading, bare, padding, ridges, band, edges);
  }

  /** One more gray level, which so few pixels have. */
  MeasuredImage rare(int pixels) {
    int[] counts = print.clone();
    counts[0] = pixels;
    return new MeasuredImage(counts, fading, bare, padding, ridges, band, edges);
  }

  /** The print in dark, light, and this share of it between. */
  MeasuredImage slopes(double share) {
    int pixels = Arrays.stream(print).sum();
    int[] counts = new int[256];
    counts[128] = (int) Math.round(share * pixels);
    // Many gray levels, all of them near to dark or light.
    for (int i = 0; i < pixels - counts[128]; i++) {
      counts[i % 2 == 0 ? i / 2 % 64 : 192 + i / 2 % 64]++;
    }
    return new MeasuredImage(counts, fading, bare, padding, ridges, band, edges);
  }

  MeasuredImage fading(int gray, int pixels) {
    return new MeasuredImage(print, at(gray, pixels), bare, padding, ridges, band, edges);
  }

  public MeasuredImage bare(int gray, int pixels) {
    return new MeasuredImage(print, fading, at(gray, pixels), padding, ridges, band, edges);
  }

  public MeasuredImage padding(EdgePadding lines) {
    return new MeasuredImage(print, fading, bare, lines, ridges, band, edges);
  }

  public MeasuredImage ridges(RidgePeriod period) {
    return new MeasuredImage(print, fading, bare, padding, Optional.of(period), band, edges);
  }

  public MeasuredImage band(EmptyBand rows) {
    return new MeasuredImage(print, fading, bare, padding, ridges, rows, edges);
  }

  MeasuredImage edges(Wraparound wraparound) {
    return new MeasuredImage(print, fading, bare, padding, ridges, band, wraparound);
  }

  public PixelStatistics statistics() {
    GrayHistogram printed = GrayHistogram.of(print);
    GrayHistogram all = printed.plus(GrayHistogram.of(fading)).plus(GrayHistogram.of(bare));
    return new PixelStatistics(
        (int) (all.total() / LINES),
        LINES,
        all.levels(1),
        all.quantile(0),
        all.quantile(1),
        Optional.of(
            new GrayLevelStatistics(
                all,
                printed,
                GrayHistogram.of(fading),
                GrayHistogram.of(bare),
                padding,
                ridges,
                new Enlargement(1, 1),
                band,
                edges)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The rules and causes of pixels that are found in images so measured, each at 500 ppi. */
  static Set<String> found(List<MeasuredImage> measured) {
    FindingsReport card =
        SampleCard.examine(
            SampleCard.rolledTagged().bytes(),
            ExaminationOptions.standard().withDepth(Depth.STRUCTURE));
    List<ExaminedImage> images = new ArrayList<>();
    for (int i = 0; i < measured.size(); i++) {
      ExaminedImage image = card.images().get(i);
      images.add(
          image.opened(
              ImageHeaders.read(image.data().orElseThrow()),
              Optional.of(measured.get(i).statistics()),
              List.of(),
              Optional.empty()));
    }
    ExaminationInput input =
        new ExaminationInput(
            card.transaction(),
            SampleCard.TABLES,
            Depth.IMAGES,
            images,
            Optional.empty(),
            false,
            ExaminationOptions.standard(),
            Optional.empty());
    FindingLog log = new FindingLog(SampleCard.TABLES, 100);
    for (Rule rule : ImageRules.all()) {
      rule.check(input, log);
    }
    CauseLog causes = new CauseLog(SampleCard.TABLES);
    for (CauseRule cause :
        List.of(new InvertedImages(), new BrokenScanCause(), new RidgePeriodCause())) {
      cause.establish(input, log.findings(), causes);
    }
    Set<String> found = new TreeSet<>();
    log.findings().stream().map(Finding::ruleId).forEach(found::add);
    causes.causes().forEach(cause -> found.add(cause.finding().ruleId()));
    return found;
  }
}
