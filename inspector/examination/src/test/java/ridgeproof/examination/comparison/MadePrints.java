package ridgeproof.examination.comparison;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.finding.Finding;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Reports of sample cards whose images show made-up prints: blots of ink by chance, each letter
 * another finger, in which an extractor finds minutiae that no other letter has.
 */
final class MadePrints {

  static final int PPI = 500;
  private static final int SIDE = 240;
  private static final int BLOT = 4;
  private static final int PAPER = 240;
  private static final int INK = 20;
  private static final int USUAL_SCORE = 60;
  private static final Map<String, Minutiae> KNOWN = new ConcurrentHashMap<>();

  private final SampleCard card;
  private final Map<Integer, Map<FingerPosition, FingerAnalysis>> prints;

  private MadePrints(SampleCard card, Map<Integer, Map<FingerPosition, FingerAnalysis>> prints) {
    this.card = card;
    this.prints = prints;
  }

  /** A card whose images show nothing yet; every image of another seed differs in its pixels. */
  static MadePrints on(SampleCard card, int seed) {
    SampleCard other = card;
    int records = card.examine().transaction().records().size();
    for (int record = 3; record <= records; record++) {
      byte[] pixels = pixels(seed, record);
      other = other.with(record, draft -> RuleExamples.data(draft, pixels));
    }
    return new MadePrints(other, Map.of());
  }

  /** What an image of a card of this seed holds. */
  static byte[] pixels(int seed, int record) {
    byte[] pixels = new byte[SampleCard.WIDTH * SampleCard.HEIGHT];
    new Random(100L * seed + record).nextBytes(pixels);
    return pixels;
  }

  MadePrints change(UnaryOperator<SampleCard> change) {
    return new MadePrints(change.apply(card), prints);
  }

  /** The card with the print of a letter in one of its images. */
  MadePrints with(int record, int finger, String letter) {
    return with(record, finger, analysis(letter, USUAL_SCORE));
  }

  MadePrints with(int record, int finger, FingerAnalysis analysis) {
    Map<Integer, Map<FingerPosition, FingerAnalysis>> more = new HashMap<>(prints);
    Map<FingerPosition, FingerAnalysis> image = new EnumMap<>(FingerPosition.class);
    image.putAll(prints.getOrDefault(record, Map.of()));
    image.put(FingerPosition.values()[finger - 1], analysis);
    more.put(record, image);
    return new MadePrints(card, more);
  }

  static FingerAnalysis analysis(String letter, int score) {
    FingerMeasures measures =
        new FingerMeasures(null, null, null, null, null, null, null, null, minutiae(letter), null);
    return new FingerAnalysis(List.of(), Optional.of(measures), new QualityScore(score, List.of()));
  }

  /**
   * A blank is a print without minutiae; a small letter lies 12 pixels to the right of the capital.
   */
  static Minutiae minutiae(String letter) {
    return KNOWN.computeIfAbsent(letter, MadePrints::made);
  }

  private static Minutiae made(String letter) {
    byte[] pixels = new byte[SIDE * SIDE];
    Arrays.fill(pixels, (byte) PAPER);
    Random random = new Random(letter.toUpperCase(Locale.ROOT).charAt(0));
    int right = Character.isLowerCase(letter.charAt(0)) ? 12 : 0;
    for (int y = 0; y < SIDE && !letter.isBlank(); y += BLOT) {
      for (int x = 0; x < SIDE; x += BLOT) {
        boolean blot = random.nextBoolean();
        for (int i = 0; blot && x + right < SIDE && i < BLOT * BLOT; i++) {
          pixels[(y + i / BLOT) * SIDE + x + right + i % BLOT] = INK;
        }
      }
    }
    return Minutiae.of(pixels, SIDE, SIDE, PPI);
  }

  /** The report without any finding, so that prints alone decide. */
  FindingsReport report() {
    return report(List.of());
  }

  FindingsReport report(List<Finding> findings) {
    FindingsReport report = Compared.report(card, Depth.STRUCTURE);
    List<ExaminedImage> images =
        report.images().stream()
            .map(image -> seen(image, prints.getOrDefault(image.record().ordinal(), Map.of())))
            .toList();
    return new FindingsReport(
        report.transaction(),
        report.tables(),
        Depth.RIDGES,
        report.asOf(),
        images,
        report.profile(),
        report.profileNamed(),
        report.relaxed(),
        findings,
        findings,
        List.of(),
        Optional.empty(),
        report.verdict());
  }

  private static ExaminedImage seen(
      ExaminedImage image, Map<FingerPosition, FingerAnalysis> fingers) {
    return SampleRecords.image(
        image,
        image.statedFormat(),
        Optional.of(new RidgeAnalysis(Impression.ROLLED, fingers, Optional.empty())));
  }
}
