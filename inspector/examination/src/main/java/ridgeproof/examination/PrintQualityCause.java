package ridgeproof.examination;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.finding.Finding;

/**
 * What went wrong in the capture of a print explains what is not seen in it: a smeared print shows
 * few minutiae, and no core. One print, one thing to do better.
 */
final class PrintQualityCause implements CauseRule {

  private static final String NOT_WIDE = "RP-RDG-003";
  private static final String NO_CORE = "RP-RDG-008";
  private static final String FEW_MINUTIAE = "RP-RDG-014";
  private static final String POOR = "RP-RDG-017";
  private static final String BLURRED = "RP-RDG-011";
  private static final String NO_CONTRAST = "RP-RDG-012";

  /** What cannot be seen of a print whose ridges are spoilt. */
  private static final Set<String> UNSEEN =
      Set.of("RP-RDG-002", NOT_WIDE, NO_CORE, "RP-RDG-013", FEW_MINUTIAE, POOR);

  /** Each rule and those that it explains, what the hand did before what the image shows. */
  private static final Map<String, Set<String>> EXPLAINED = explained();

  private static Map<String, Set<String>> explained() {
    Map<String, Set<String>> explained = new LinkedHashMap<>();
    explained.put("RP-RDG-006", with(BLURRED, NO_CONTRAST));
    explained.put("RP-RDG-007", UNSEEN);
    explained.put("RP-RDG-005", with(BLURRED, NO_CONTRAST));
    explained.put("RP-RDG-004", with(BLURRED, NO_CONTRAST));
    explained.put("RP-RDG-015", Set.of(NO_CORE, FEW_MINUTIAE, POOR));
    explained.put(BLURRED, with(NO_CONTRAST));
    explained.put(NO_CONTRAST, UNSEEN);
    explained.put("RP-RDG-002", Set.of(NOT_WIDE, NO_CORE, FEW_MINUTIAE, POOR));
    explained.put(NOT_WIDE, Set.of(NO_CORE, FEW_MINUTIAE, POOR));
    explained.put(NO_CORE, Set.of("RP-RDG-010", FEW_MINUTIAE, POOR));
    explained.put(FEW_MINUTIAE, Set.of(POOR));
    return explained;
  }

  private static Set<String> with(String... more) {
    Set<String> rules = new HashSet<>(UNSEEN);
    rules.addAll(List.of(more));
    return rules;
  }

  @Override
  public Set<String> ids() {
    return Set.of();
  }

  @Override
  public void establish(Examinee examinee, List<Finding> found, CauseLog causes) {
    EXPLAINED.forEach(
        (rule, others) ->
            found.stream()
                .filter(finding -> finding.ruleId().equals(rule))
                .forEach(
                    finding ->
                        causes.add(
                            finding,
                            Consequences.ofRules(others.toArray(String[]::new))
                                .onlyWhere(other -> isOfSamePrint(other, finding)))));
  }

  /** A consequence that weighs more than its cause is no mere consequence. */
  private static boolean isOfSamePrint(Finding other, Finding cause) {
    return other.location().record().equals(cause.location().record())
        && other.location().position().equals(cause.location().position())
        && other.severity().compareTo(cause.severity()) >= 0;
  }
}
