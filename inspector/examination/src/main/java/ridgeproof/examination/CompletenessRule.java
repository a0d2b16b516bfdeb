package ridgeproof.examination;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.SubmissionProfile.NeededPrint;

/** The prints that the submission needs are there, or declared missing. */
final class CompletenessRule implements Rule {

  private static final String TENPRINT_TRANSACTION = "tenprint";

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-004", "RP-TXN-005", "RP-TXN-006", "RP-TXN-007", "RP-TXN-010");
  }

  @Override
  public void check(Examinee examinee, FindingLog log) {
    Positions positions = new Positions(examinee.tables());
    MissingFingers missing = new MissingFingers(examinee);
    Set<Integer> imaged = imaged(examinee);
    reportDeclared(missing, examinee, positions, log);
    if (examinee.profile().isPresent()) {
      reportAbsent(examinee.profile().get(), imaged, missing, positions, log);
    } else {
      reportUnexpected(examinee, log);
    }
  }

  private static Set<Integer> imaged(Examinee examinee) {
    Set<Integer> imaged = new TreeSet<>();
    for (ExaminedImage image : examinee.prints()) {
      if (image.data().isPresent()) {
        imaged.addAll(image.positions());
      }
    }
    return imaged;
  }

  private static void reportDeclared(
      MissingFingers missing, Examinee examinee, Positions positions, FindingLog log) {
    for (int finger : missing.fingers()) {
      MissingFingers.Declaration declaration = missing.of(finger).orElseThrow();
      List<ExaminedImage> images =
          examinee.prints().stream()
              .filter(image -> image.data().isPresent() && showsOnly(image, finger, positions))
              .toList();
      if (images.isEmpty()) {
        log.add(
            "RP-TXN-006",
            declaration.location(),
            Observed.of("finger " + finger + ", " + declaration.reason()),
            "no image");
      } else {
        log.add(
            "RP-TXN-005",
            declaration.location(),
            Observed.of(
                String.format(
                    Locale.ROOT,
                    "finger %d declared %s, imaged in record %d",
                    finger,
                    declaration.reason(),
                    images.get(0).record().ordinal())),
            "either the annotation or the image");
      }
    }
  }

  private static boolean showsOnly(ExaminedImage image, int finger, Positions positions) {
    OptionalInt position = image.position();
    return position.isPresent() && positions.fingers(position.getAsInt()).equals(List.of(finger));
  }

  private static void reportAbsent(
      SubmissionProfile profile,
      Set<Integer> imaged,
      MissingFingers missing,
      Positions positions,
      FindingLog log) {
    for (NeededPrint print : profile.prints()) {
      boolean there =
          imaged.contains(print.position())
              || !print.or().isEmpty() && imaged.containsAll(print.or());
      boolean excused =
          !positions.fingers(print.position()).isEmpty()
              && missing.fingers().containsAll(positions.fingers(print.position()));
      if (!there && !excused) {
        log.add(
            "RP-TXN-004",
            Location.file().withPosition(OptionalInt.of(print.position())),
            Observed.of("no image of position " + print.position()),
            "an image, or an annotation of why there is none (" + profile.title() + ")");
      }
    }
  }

  private static void reportUnexpected(Examinee examinee, FindingLog log) {
    if (examinee.images().isEmpty()) {
      log.add("RP-TXN-007", Location.file(), Observed.of("no image record"), "images");
      return;
    }
    examinee
        .transaction()
        .typeOfTransaction()
        .flatMap(code -> examinee.tables().codes("transaction-types").find(code))
        .filter(code -> code.property("prints").equals(TENPRINT_TRANSACTION))
        .ifPresent(
            code ->
                log.add(
                    "RP-TXN-010",
                    Location.file(),
                    Observed.of(
                        code.code() + " with " + examinee.prints().size() + " print images"),
                    "a set of tenprints"));
  }
}
