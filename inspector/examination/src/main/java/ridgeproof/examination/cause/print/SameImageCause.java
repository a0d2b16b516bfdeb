package ridgeproof.examination.cause.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.Positions;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Observed;

/** No two captures come out as the same bytes: one image stands for two prints. */
public final class SameImageCause implements CauseRule {

  /** What a blank image takes at most in any of the formats; a print takes more. */
  private static final int MORE_THAN_BLANK = 4096;

  private static final String SAME = "RP-TXN-080";
  private static final Set<String> OF_ONE_LEVEL = Set.of("RP-IMG-033", "RP-IMG-034");

  @Override
  public Set<String> ids() {
    return Set.of(SAME);
  }

  @Override
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    Map<Integer, List<ExaminedImage>> byLength = new HashMap<>();
    for (ExaminedImage image : examinee.prints()) {
      if (isComparable(image, found)) {
        List<ExaminedImage> others =
            byLength.computeIfAbsent(image.data().get().length(), length -> new ArrayList<>());
        others.stream()
            .filter(other -> !other.position().equals(image.position()))
            .filter(other -> other.data().get().hasSameBytes(image.data().get()))
            .findFirst()
            .ifPresent(other -> report(other, image, examinee, causes));
        others.add(image);
      }
    }
  }

  /** A blank image tells of itself; a print without a position may be there on purpose. */
  private static boolean isComparable(ExaminedImage image, List<Finding> found) {
    return image.position().orElse(0) > 0
        && image.data().filter(bytes -> bytes.length() > MORE_THAN_BLANK).isPresent()
        && found.stream()
            .noneMatch(
                finding ->
                    OF_ONE_LEVEL.contains(finding.ruleId())
                        && finding.location().record().equals(image.location().record()));
  }

  private static void report(
      ExaminedImage first, ExaminedImage second, ExaminationInput examinee, CauseLog causes) {
    causes.add(
        SAME,
        second.atData(),
        Observed.of("the image of the " + name(first, examinee) + ", byte for byte"),
        "a separate capture",
        List.of(),
        Consequences.ofRules("RP-SEQ").atPositions(fingers(first, second, examinee)));
  }

  private static Set<Integer> fingers(
      ExaminedImage one, ExaminedImage other, ExaminationInput examinee) {
    Positions positions = new Positions(examinee.tables());
    Set<Integer> fingers = new HashSet<>();
    for (ExaminedImage image : List.of(one, other)) {
      fingers.add(image.position().getAsInt());
      fingers.addAll(positions.fingers(image.position().getAsInt()));
    }
    return fingers;
  }

  private static String name(ExaminedImage image, ExaminationInput examinee) {
    return examinee.tables().positionName(image.position().getAsInt());
  }
}
