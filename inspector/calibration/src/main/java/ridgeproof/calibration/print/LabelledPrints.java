package ridgeproof.calibration.print;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import ridgeproof.corpus.batch.SubjectPlan;
import ridgeproof.corpus.composition.CaptureSession;
import ridgeproof.corpus.composition.CapturedPrint;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.wsq.WsqDecoder;
import ridgeproof.imagery.wsq.WsqEncoder;
import ridgeproof.imagery.wsq.WsqEncoding;
import ridgeproof.ridges.PrintAnalyzer;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.ridges.quality.QualityScore;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.record.ByteSource;

/**
 * Cards and sets of flats as a batch of the corpus has them, without exchanged fingers: measured as
 * they are read back from WSQ, for a file has them no other way.
 */
public final class LabelledPrints {

  private static final FingerAnalysis NOT_FOUND =
      new FingerAnalysis(List.of(), Optional.empty(), QualityScore.NONE);

  private final long seed;
  private final SubjectPlan plan;

  LabelledPrints(DrawOptions draw) {
    this.seed = draw.seed;
    this.plan = draw.plan();
  }

  /** Every print of so many cards, card by card, on all cores. */
  List<MeasuredPrint> measure(int cards) {
    return IntStream.rangeClosed(1, cards)
        .parallel()
        .mapToObj(this::measureCard)
        .collect(Collectors.toList())
        .stream()
        .flatMap(List::stream)
        .toList();
  }

  private List<MeasuredPrint> measureCard(int card) {
    Scenario scenario = plan.scenario(card);
    List<MeasuredPrint> prints = new ArrayList<>();
    for (CapturedPrint taken : new CaptureSession(scenario, new SubjectCache()).prints()) {
      GrayImage image = stored(taken, scenario.prints().bitsPerPixel());
      values(image, taken.labelledPpi(), taken.box())
          .forEach((finger, values) -> prints.add(labelled(card, taken, finger, values)));
    }
    return withWidthRatios(prints);
  }

  /** As a file has it: through WSQ and back. */
  public static GrayImage stored(CapturedPrint taken, double bitsPerPixel) {
    byte[] wsq =
        WsqEncoder.encode(
            taken.impression().image(), new WsqEncoding(bitsPerPixel, taken.labelledPpi(), 0));
    return WsqDecoder.decode(ByteSource.of(wsq)).image().orElseThrow();
  }

  /** What there is of each finger that the box is for; one not found has no measures. */
  public static Map<FingerPosition, FingerAnalysis> analyse(GrayImage image, double ppi, int box) {
    return filled(seen(image, ppi, box), box);
  }

  public static PrintAnalyzer.Seen seen(GrayImage image, double ppi, int box) {
    return PrintAnalyzer.analyse(image, ppi, FingerPosition.shownBy(box), finger -> false);
  }

  private static Map<FingerPosition, FingerAnalysis> filled(PrintAnalyzer.Seen seen, int box) {
    Map<FingerPosition, FingerAnalysis> found = new EnumMap<>(FingerPosition.class);
    found.putAll(seen.fingers());
    FingerPosition.shownBy(box).forEach(finger -> found.putIfAbsent(finger, NOT_FOUND));
    return found;
  }

  /** What was measured of each finger of an image; those of a hand share what it has as a whole. */
  static Map<FingerPosition, Map<QualityMetric, Double>> values(
      GrayImage image, double ppi, int box) {
    PrintAnalyzer.Seen seen = seen(image, ppi, box);
    Map<FingerPosition, Map<QualityMetric, Double>> values = new EnumMap<>(FingerPosition.class);
    filled(seen, box)
        .forEach(
            (finger, analysis) -> {
              Map<QualityMetric, Double> own = MeasuredPrint.valuesOf(analysis);
              if (!own.isEmpty()) {
                seen.slap()
                    .ifPresent(
                        slap -> own.put(QualityMetric.HAND_ROTATION, Math.abs(slap.degrees())));
                QualityMetric.handCoreToBorder(seen.fingers().values())
                    .ifPresent(value -> own.put(QualityMetric.HAND_CORE_TO_BORDER, value));
              }
              values.put(finger, own);
            });
    return values;
  }

  private MeasuredPrint labelled(
      int card, CapturedPrint taken, FingerPosition finger, Map<QualityMetric, Double> values) {
    Optional<Map.Entry<CaptureDefect, Double>> defect =
        taken.defects().entrySet().stream().findFirst();
    return new MeasuredPrint(
        seed,
        card,
        taken.box(),
        finger,
        taken.isRolled() ? Impression.ROLLED : Impression.PLAIN,
        defect.map(Map.Entry::getKey),
        defect.map(Map.Entry::getValue).orElse(0.0),
        values);
  }

  /** A roll is held against the plain print of the same finger, whatever either is spoilt by. */
  static List<MeasuredPrint> withWidthRatios(List<MeasuredPrint> prints) {
    Map<FingerPosition, Double> plain = new EnumMap<>(FingerPosition.class);
    for (MeasuredPrint print : prints) {
      OptionalDouble width = print.value(QualityMetric.WIDTH);
      if (print.kind() == Impression.PLAIN && width.isPresent() && width.getAsDouble() > 0) {
        plain.put(print.finger(), width.getAsDouble());
      }
    }
    List<MeasuredPrint> rated = new ArrayList<>();
    for (MeasuredPrint print : prints) {
      OptionalDouble width = print.value(QualityMetric.WIDTH);
      Double flat = plain.get(print.finger());
      rated.add(
          print.kind() == Impression.ROLLED && width.isPresent() && flat != null
              ? print.with(QualityMetric.ROLL_TO_PLAIN_WIDTH, width.getAsDouble() / flat)
              : print);
    }
    return rated;
  }
}
