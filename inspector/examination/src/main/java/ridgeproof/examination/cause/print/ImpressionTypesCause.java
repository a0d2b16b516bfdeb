package ridgeproof.examination.cause.print;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.ridges.quality.FingerAnalysis;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.spec.layout.FingerPosition;

/**
 * Rolled prints that are coded as plain, or plain ones as rolled. No accepted set has a finger both
 * in a plain image of several fingers and, by itself, as a second plain print: the single print is
 * the roll. Where both can be measured, it is also wider.
 */
public final class ImpressionTypesCause implements CauseRule {

  private static final String ROLLS = "RP-TXN-081";
  private static final String PLAINS = "RP-TXN-082";
  private static final String MISFIT = "RP-TXN-009";
  private static final String ROLLED = "rolled";
  private static final String PLAIN = "plain";

  /** As wide as its plain print, a single print may be a second plain one; a roll is wider. */
  private static final double AS_WIDE = 1.1;

  @Override
  public Set<String> ids() {
    return Set.of(ROLLS, PLAINS);
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    rolls(examinee, causes);
    plains(examinee, found, causes);
  }

  private static void rolls(ExaminationInput examinee, CauseLog causes) {
    Positions positions = new Positions(examinee.tables());
    List<ExaminedImage> singles = new ArrayList<>();
    List<ExaminedImage> flats = new ArrayList<>();
    Set<Integer> fingers = new HashSet<>();
    for (ExaminedImage image : examinee.prints()) {
      if (image.position().isEmpty() || image.data().isEmpty()) {
        continue;
      }
      boolean plain = positions.impressionKind(image.impression()).equals(PLAIN);
      if (positions.kind(image.position().getAsInt()).equals(ROLLED)) {
        singles.add(image);
      } else if (plain) {
        flats.add(image);
        image.positions().forEach(position -> fingers.addAll(positions.fingers(position)));
      }
    }
    List<ExaminedImage> miscoded =
        singles.stream()
            .filter(image -> positions.impressionKind(image.impression()).equals(PLAIN))
            .filter(image -> fingers.contains(image.position().getAsInt()))
            .filter(image -> !isAsNarrow(image, flats))
            .toList();
    if (!miscoded.isEmpty()) {
      report(ROLLS, miscoded, singles.size(), ROLLED, PLAIN, examinee, causes);
    }
  }

  /** Whether the same finger was measured in both images and is no wider by itself. */
  private static boolean isAsNarrow(ExaminedImage single, List<ExaminedImage> flats) {
    return single.ridges().stream()
        .flatMap(facts -> facts.fingers().entrySet().stream())
        .anyMatch(
            print ->
                flats.stream()
                    .flatMap(flat -> seen(flat, print.getKey()).stream())
                    .flatMapToDouble(
                        flat -> QualityMetric.rollToPlain(print.getValue(), flat).stream())
                    .anyMatch(ratio -> ratio < AS_WIDE));
  }

  private static Optional<FingerAnalysis> seen(ExaminedImage image, FingerPosition finger) {
    return image.ridges().flatMap(facts -> Optional.ofNullable(facts.fingers().get(finger)));
  }

  /** Several plain images that are coded as rolled share the cause; one alone says so itself. */
  private static void plains(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    Positions positions = new Positions(examinee.tables());
    Set<Integer> misfits = new HashSet<>();
    found.stream()
        .filter(finding -> finding.ruleId().equals(MISFIT))
        .forEach(finding -> finding.location().record().ifPresent(misfits::add));
    List<ExaminedImage> miscoded =
        examinee.prints().stream()
            .filter(image -> misfits.contains(image.record().ordinal()))
            .filter(image -> positions.impressionKind(image.impression()).equals(ROLLED))
            .toList();
    long flats =
        examinee.prints().stream()
            .filter(image -> positions.kind(image.position().orElse(0)).matches("plain|slap"))
            .count();
    if (miscoded.size() > 1) {
      report(PLAINS, miscoded, (int) flats, PLAIN, ROLLED, examinee, causes);
    }
  }

  private static void report(
      String rule,
      List<ExaminedImage> images,
      int all,
      String kind,
      String coded,
      ExaminationInput examinee,
      CauseLog causes) {
    ExaminedImage first = images.get(0);
    boolean one = images.size() == 1;
    Set<Integer> records = ExaminedImage.ordinals(images);
    causes.add(
        rule,
        one ? first.layout().impression().map(first::at).orElse(first.location()) : Location.file(),
        Observed.of(
            one
                ? "impression type " + first.impression().orElseThrow() + " (" + coded + ")"
                : String.format(
                    Locale.ROOT,
                    "%d of %d %s prints coded as %s",
                    images.size(),
                    all,
                    kind,
                    coded)),
        "the impression type of a " + kind + " print",
        List.of(),
        Consequences.ofRules(MISFIT, "RP-RDG-002", "RP-RDG-003")
            .inRecords(records)
            .or(Consequences.ofRules("RP-TXN-010", "RP-TXN-042", "RP-TXN-046"))
            .or(Consequences.ofRules("RP-SEQ").atPositions(fingers(images, examinee))));
  }

  private static Set<Integer> fingers(List<ExaminedImage> images, ExaminationInput examinee) {
    Positions positions = new Positions(examinee.tables());
    Set<Integer> fingers = new HashSet<>();
    images.stream()
        .flatMap(image -> image.positions().stream())
        .forEach(position -> fingers.addAll(positions.fingers(position)));
    return fingers;
  }
}
