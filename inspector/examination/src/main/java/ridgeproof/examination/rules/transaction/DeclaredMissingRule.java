package ridgeproof.examination.rules.transaction;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.MissingFingers;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;

/** A finger that is declared missing leaves no print. */
final class DeclaredMissingRule implements Rule {

  private static final String IMAGED = "RP-TXN-005";
  private static final String MISSING = "RP-TXN-006";
  private static final String IN_SLAP = "RP-TXN-054";

  @Override
  public Set<String> ids() {
    return Set.of(IMAGED, MISSING, IN_SLAP);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Positions positions = new Positions(examinee.tables());
    MissingFingers missing = new MissingFingers(examinee);
    double blankShare = examinee.tables().pixelLimits().limit("blank-share").share();
    Set<Integer> imaged = new TreeSet<>();
    for (int finger : missing.fingers()) {
      MissingFingers.Declaration declaration = missing.of(finger).orElseThrow();
      List<ExaminedImage> images =
          examinee.prints().stream()
              .filter(image -> showsOnly(image, finger, positions) && mayShow(image, blankShare))
              .toList();
      if (images.isEmpty()) {
        log.add(
            MISSING,
            declaration.location(),
            Observed.of("finger " + finger + ", " + declaration.reason()),
            "no image");
      } else {
        imaged.add(finger);
        log.add(
            IMAGED,
            declaration.location(),
            // Without a value of the field, which would be masked; the step names the finger.
            Observed.of("annotated as missing, but imaged"),
            "either the annotation or the image");
      }
    }
    // A finger that an image of its own shows is no news in the slap.
    examinee.images().stream()
        .filter(image -> shown(image, positions).noneMatch(imaged::contains))
        .forEach(image -> checkSlap(image, log));
  }

  private static Stream<Integer> shown(ExaminedImage image, Positions positions) {
    return image.positions().stream().flatMap(position -> positions.fingers(position).stream());
  }

  private static boolean showsOnly(ExaminedImage image, int finger, Positions positions) {
    OptionalInt position = image.position();
    return position.isPresent()
        && positions.fingers(position.getAsInt()).equals(List.of(finger))
        && !positions.isTrace(image.impression());
  }

  /** Stations send an empty image for a finger that is declared missing. */
  private static boolean mayShow(ExaminedImage image, double blankShare) {
    return image.data().isPresent()
        && image.pixels().map(pixels -> pixels.showsPrint(blankShare)).orElse(true);
  }

  private static void checkSlap(ExaminedImage image, FindingLog log) {
    if (image.ridges().isEmpty() || image.ridges().get().surplusPrints() == 0) {
      return;
    }
    int surplus = image.ridges().get().surplusPrints();
    int due = image.ridges().get().slap().map(slap -> slap.segments().size()).orElse(0);
    log.add(
        IN_SLAP,
        image.atData(),
        Observed.of(due + surplus == 1 ? "1 print" : (due + surplus) + " prints"),
        String.format(Locale.ROOT, "%d, one for each finger that is not annotated as missing", due),
        List.of(Measure.against("prints found", due + surplus, "prints", due)));
  }
}
