package ridgeproof.examination.rules.transaction;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.submission.AppliedProfile;
import ridgeproof.examination.submission.TransactionKind;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.layout.Code;
import ridgeproof.spec.submission.TransactionNeed;
import ridgeproof.spec.table.Source;

/** A type of transaction that is about an image holds one; whether that is known is said. */
final class NeededImagesRule implements Rule {

  private static final String NO_IMAGE = "RP-TXN-007";
  private static final String NEEDED = "RP-TXN-044";
  private static final String UNSETTLED = "RP-TXN-045";
  private static final String NO_LATENT = "RP-TXN-046";
  private static final String NO_PRINTS_HERE = "RP-TXN-047";
  private static final String NOT_CHECKED = "RP-TXN-051";

  /** Record types that hold an image of a latent print, whatever impression they state. */
  private static final Set<Integer> LATENT_RECORDS = Set.of(7, 13);

  @Override
  public Set<String> ids() {
    return Set.of(NO_IMAGE, NEEDED, UNSETTLED, NO_LATENT, NO_PRINTS_HERE, NOT_CHECKED);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    if (AppliedProfile.namesPrints(examinee.options())) {
      return;
    }
    TransactionKind kind = new TransactionKind(examinee.transaction(), examinee.tables());
    Optional<TransactionNeed> need = kind.need();
    if (need.isEmpty()) {
      reportUnknown(examinee, kind, log);
      return;
    }
    switch (need.get().kind()) {
      case PRINT -> reportNone(examinee.prints(), "at least one print", need.get(), log);
      case IMAGE -> reportNone(examinee.images(), "at least one image", need.get(), log);
      case LATENT -> checkLatent(examinee, need.get(), log);
      case NOTHING -> reportPrints(examinee, kind.listed().orElseThrow(), log);
      case TEN_FINGERS, RECORDS -> {}
    }
  }

  private static void reportUnknown(
      ExaminationInput examinee, TransactionKind kind, FindingLog log) {
    if (kind.listed().isEmpty() && examinee.images().isEmpty()) {
      log.add(NO_IMAGE, Location.file(), Observed.of("no image record"), "images");
    }
    if (kind.listed().isPresent() && examinee.profile().isEmpty()) {
      log.add(
          NOT_CHECKED,
          Location.file(),
          Observed.of(kind.whyUnknown().orElseThrow()),
          "a list of what this type of transaction needs");
    }
  }

  private static void reportNone(
      List<ExaminedImage> images, String required, TransactionNeed need, FindingLog log) {
    if (images.isEmpty()) {
      log.add(
          need.source().known() == Source.Knowledge.PUBLISHED ? NEEDED : UNSETTLED,
          Location.file(),
          Observed.of("none"),
          required,
          Optional.of(need.source()),
          List.of());
    }
  }

  private static void checkLatent(ExaminationInput examinee, TransactionNeed need, FindingLog log) {
    Positions positions = new Positions(examinee.tables());
    List<ExaminedImage> shown =
        examinee.images().stream()
            .filter(image -> image.layout().frictionRidge() || isLatentRecord(image))
            .toList();
    reportNone(shown, "at least one latent print", need, log);
    boolean latent =
        shown.stream()
            .anyMatch(image -> isLatentRecord(image) || positions.isTrace(image.impression()));
    if (!shown.isEmpty() && !latent) {
      log.add(
          NO_LATENT,
          Location.file(),
          Observed.of(
              shown.size() == 1
                  ? "1 print, not latent"
                  : String.format(Locale.ROOT, "%d prints, none latent", shown.size())),
          "at least one latent print",
          Optional.of(need.source()),
          List.of());
    }
  }

  private static boolean isLatentRecord(ExaminedImage image) {
    return LATENT_RECORDS.contains(image.record().type());
  }

  private static void reportPrints(ExaminationInput examinee, Code type, FindingLog log) {
    if (type.property("prints").equals("none") && !examinee.prints().isEmpty()) {
      log.add(
          NO_PRINTS_HERE,
          Location.file(),
          Observed.of(
              String.format(
                  Locale.ROOT,
                  examinee.prints().size() == 1
                      ? "%s with 1 print image"
                      : "%s with %d print images",
                  type.code(),
                  examinee.prints().size())),
          "no prints");
    }
  }
}
