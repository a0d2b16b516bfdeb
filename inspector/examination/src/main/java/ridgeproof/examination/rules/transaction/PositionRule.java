package ridgeproof.examination.rules.transaction;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Observed;

/** A position is imaged once, and its impression type is one that the position can have. */
final class PositionRule implements Rule {

  private static final String LATENT = "latent";

  @Override
  public Set<String> ids() {
    return Set.of("RP-TXN-003", "RP-TXN-009");
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    Positions positions = new Positions(examinee.tables());
    Set<String> misfits = examinee.tables().impressionMisfits();
    Map<List<Object>, ExaminedImage> seen = new HashMap<>();
    for (ExaminedImage image : examinee.prints()) {
      OptionalInt position = image.position();
      String kind = positions.impressionKind(image.impression());
      if (position.isEmpty() || image.data().isEmpty()) {
        continue;
      }
      if (misfits.contains(positions.kind(position.getAsInt()) + " " + kind)) {
        log.add(
            "RP-TXN-009",
            image.location(),
            Observed.of("impression type " + image.impression().getAsInt() + ", " + kind),
            "a plain impression");
      }
      if (positions.kind(position.getAsInt()).matches("rolled|plain|slap")
          && !kind.equals(LATENT)) {
        reportSecond(image, kind, seen, log);
      }
    }
  }

  /** Retakes at another resolution or as another impression are other prints to a bureau. */
  private static void reportSecond(
      ExaminedImage image, String kind, Map<List<Object>, ExaminedImage> seen, FindingLog log) {
    int position = image.position().getAsInt();
    ExaminedImage first = seen.putIfAbsent(List.of(image.record().type(), position, kind), image);
    if (first != null) {
      log.add(
          "RP-TXN-003",
          image.location(),
          Observed.of("also in record " + first.record().ordinal()),
          "one image for position " + position);
    }
  }
}
