package ridgeproof.examination.cause.print;

import java.util.List;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;

/**
 * Where a retake was kept beside the first image and one of them is good, nothing has to be
 * captured again: the poor one has to go. The finding of the position is a cause itself.
 */
public final class KeptRetakeCause implements CauseRule {

  private static final String TWICE = "RP-TXN-003";
  private static final String RIDGES = "RP-RDG";

  @Override
  public Set<String> ids() {
    return Set.of();
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    for (Finding finding : found) {
      if (finding.ruleId().equals(TWICE)) {
        Set<Integer> poor =
            ExaminedImage.ordinals(
                examinee.prints().stream()
                    .filter(image -> image.position().equals(finding.location().position()))
                    .filter(image -> isPoor(image, found))
                    .toList());
        long all =
            examinee.prints().stream()
                .filter(image -> image.position().equals(finding.location().position()))
                .count();
        if (!poor.isEmpty() && poor.size() < all) {
          causes.add(finding, Consequences.ofRules(RIDGES).inRecords(poor));
        }
      }
    }
  }

  private static boolean isPoor(ExaminedImage image, List<Finding> found) {
    return found.stream()
        .filter(finding -> finding.ruleId().startsWith(RIDGES))
        .filter(finding -> finding.severity().worseThan(Severity.ADVICE))
        .anyMatch(finding -> finding.location().record().equals(image.location().record()));
  }
}
