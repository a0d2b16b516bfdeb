package ridgeproof.calibration.real;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ridgeproof.calibration.print.LabelledPrints;
import ridgeproof.calibration.statistics.CleanCards;
import ridgeproof.corpus.batch.SubjectPlan;
import ridgeproof.corpus.composition.CaptureSession;
import ridgeproof.corpus.composition.CapturedPrint;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.imagery.GrayImage;
import ridgeproof.ridges.matching.Minutiae;
import ridgeproof.ridges.quality.FingerMeasures;
import ridgeproof.spec.layout.FingerPosition;

/** The prints of drawn cards, a pool for each: of each finger the roll, then the plain print. */
public final class DrawnPools {

  private final SubjectPlan plan;

  public DrawnPools(long seed) {
    this.plan = new SubjectPlan(seed, 0, 0);
  }

  /** Of the first so many clean cards; a finger of which a print was not found is left out. */
  public List<PrintPool> of(int cards) {
    List<Integer> subjects = CleanCards.subjects(plan).limit(cards).boxed().toList();
    return subjects.parallelStream().map(subject -> pool(plan.scenario(subject))).toList();
  }

  private static PrintPool pool(Scenario scenario) {
    Map<FingerPosition, PrintPool.Print> rolls = new TreeMap<>();
    Map<FingerPosition, PrintPool.Print> plains = new TreeMap<>();
    for (CapturedPrint taken : new CaptureSession(scenario, new SubjectCache()).prints()) {
      GrayImage image = LabelledPrints.stored(taken, scenario.prints().bitsPerPixel());
      double ppi = taken.labelledPpi();
      LabelledPrints.seen(image, ppi, taken.box())
          .fingers()
          .forEach(
              (finger, analysis) ->
                  analysis
                      .measures()
                      .ifPresent(
                          found ->
                              (taken.isRolled() ? rolls : plains)
                                  .put(finger, print(finger, image, ppi, found))));
    }
    List<PrintPool.Print> prints = new ArrayList<>();
    rolls.forEach(
        (finger, roll) -> {
          if (plains.containsKey(finger)) {
            prints.add(roll);
            prints.add(plains.get(finger));
          }
        });
    return PrintPool.of(prints);
  }

  private static PrintPool.Print print(
      FingerPosition finger, GrayImage image, double ppi, FingerMeasures found) {
    return new PrintPool.Print(
        finger.code(),
        found.minutiae(),
        Optional.of(Minutiae.again(image, ppi, found.extent().box())));
  }
}
