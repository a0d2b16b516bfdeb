package ridgeproof.calibration.statistics;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.PrimitiveIterator;
import java.util.stream.IntStream;
import ridgeproof.calibration.print.LabelledPrints;
import ridgeproof.corpus.batch.SubjectPlan;
import ridgeproof.corpus.composition.CaptureSession;
import ridgeproof.corpus.composition.CapturedPrint;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.finger.GroundTruth;
import ridgeproof.corpus.finger.MasterFinger;
import ridgeproof.corpus.finger.TrueMinutia;
import ridgeproof.corpus.finger.TrueRidgeMask;
import ridgeproof.corpus.impression.FingerBox;
import ridgeproof.corpus.scenario.BoxSet;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.spec.layout.FingerPosition;

/** Rolled cards without defects or mistakes, as a batch of the corpus has them. */
public final class CleanCards {

  private static final double PPI_OF_PERIOD = 500;

  private final SubjectPlan plan;
  private final PrimitiveIterator.OfInt subjects;

  CleanCards(long seed) {
    this.plan = new SubjectPlan(seed, 0, 0);
    this.subjects = subjects(plan).iterator();
  }

  /** The subjects of a batch who give a rolled card, without end. */
  public static IntStream subjects(SubjectPlan plan) {
    return IntStream.iterate(1, subject -> subject + 1)
        .filter(subject -> plan.scenario(subject).prints().set() == BoxSet.ROLLED_CARD);
  }

  /** The next so many cards of the batch, drawn on all cores; sets of flats are passed over. */
  List<ObservedCard> next(int cards) {
    int[] drawn = IntStream.range(0, cards).map(card -> subjects.nextInt()).toArray();
    return IntStream.of(drawn)
        .parallel()
        .mapToObj(plan::scenario)
        .map(CleanCards::observed)
        .toList();
  }

  private static ObservedCard observed(Scenario scenario) {
    Map<FingerPosition, MasterFinger> fingers = new EnumMap<>(FingerPosition.class);
    long person = scenario.subject().person() == 0 ? scenario.seed() : scenario.subject().person();
    for (FingerPosition digit : FingerPosition.values()) {
      fingers.put(digit, MasterFinger.grow(person, digit));
    }
    List<ObservedPrint.Comparand> prints = new ArrayList<>();
    for (CapturedPrint taken : new CaptureSession(scenario, new SubjectCache()).prints()) {
      Map<FingerPosition, ObservedPrint.Truth> truths = new EnumMap<>(FingerPosition.class);
      minutiae(taken)
          .forEach(
              (finger, count) ->
                  truths.put(
                      finger,
                      new ObservedPrint.Truth(
                          fingers.get(finger).pattern(),
                          fingers.get(finger).ridgePeriodPx()
                              * PixelDensity.MM_PER_INCH
                              / PPI_OF_PERIOD,
                          count)));
      prints.addAll(
          ObservedPrint.look(
              LabelledPrints.stored(taken, scenario.prints().bitsPerPixel()),
              taken.labelledPpi(),
              taken.box(),
              taken.isRolled() ? Impression.ROLLED : Impression.PLAIN,
              truths));
    }
    return ObservedCard.of(prints);
  }

  /** The minutiae and the area that the image truly shows, each given to the nearest finger. */
  private static Map<FingerPosition, MinutiaCount> minutiae(CapturedPrint taken) {
    GroundTruth truth = taken.impression().truth();
    List<FingerBox> boxes = taken.impression().boxes();
    int[] endings = new int[boxes.size()];
    int[] bifurcations = new int[boxes.size()];
    int[] cells = new int[boxes.size()];
    for (TrueMinutia minutia : truth.minutiae()) {
      int box = nearest(boxes, minutia.x(), minutia.y());
      endings[box] += minutia.kind() == TrueMinutia.Kind.ENDING ? 1 : 0;
      bifurcations[box] += minutia.kind() == TrueMinutia.Kind.ENDING ? 0 : 1;
    }
    GrayImage image = taken.impression().image();
    int cell = TrueRidgeMask.CELL_PX;
    for (int y = cell / 2; y < image.height(); y += cell) {
      for (int x = cell / 2; x < image.width(); x += cell) {
        if (truth.mask().contains(x, y)) {
          cells[nearest(boxes, x, y)]++;
        }
      }
    }
    double cellMm = cell * PixelDensity.MM_PER_INCH / taken.labelledPpi();
    Map<FingerPosition, MinutiaCount> counts = new EnumMap<>(FingerPosition.class);
    for (int i = 0; i < cells.length; i++) {
      counts.put(
          boxes.get(i).digit(),
          new MinutiaCount(endings[i], bifurcations[i], cells[i] * cellMm * cellMm));
    }
    return counts;
  }

  private static int nearest(List<FingerBox> boxes, double x, double y) {
    int nearest = 0;
    for (int i = 1; i < boxes.size(); i++) {
      nearest = distance(boxes.get(i), x, y) < distance(boxes.get(nearest), x, y) ? i : nearest;
    }
    return nearest;
  }

  /** Squared, in halves of the box from its middle: below 1 at its sides. */
  private static double distance(FingerBox box, double x, double y) {
    double across = (2 * x - box.left() - box.right()) / (box.right() - box.left() + 1.0);
    double along = (2 * y - box.top() - box.bottom()) / (box.bottom() - box.top() + 1.0);
    return across * across + along * along;
  }
}
