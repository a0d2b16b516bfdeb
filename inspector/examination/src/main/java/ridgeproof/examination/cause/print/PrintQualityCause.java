package ridgeproof.examination.cause.print;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Measure;
import ridgeproof.ridges.quality.QualityMetric;

/**
 * What went wrong in the capture of a print explains what is not seen in it: a smeared print shows
 * few minutiae, and no core. One print, one thing to do better.
 */
public final class PrintQualityCause implements CauseRule {

  private static final String AREA = "RP-RDG-";
  private static final String AREA_LIMIT = "RP-RDG-002";
  private static final String DARK = "RP-RDG-005";
  private static final String SMEARED = "RP-RDG-006";
  private static final String SECOND_PRINT = "RP-RDG-015";
  private static final String CUT_OFF = "RP-RDG-010";
  private static final String NOT_WIDE = "RP-RDG-003";
  private static final String NO_CORE = "RP-RDG-008";
  private static final String FEW_MINUTIAE = "RP-RDG-014";
  private static final String POOR = "RP-RDG-017";
  private static final String BLURRED = "RP-RDG-011";
  private static final String NO_CONTRAST = "RP-RDG-012";

  /** What cannot be seen of a print whose ridges are spoilt. */
  private static final Set<String> UNSEEN =
      Set.of(AREA_LIMIT, NOT_WIDE, NO_CORE, "RP-RDG-013", FEW_MINUTIAE, POOR);

  /**
   * What a hand did to a whole capture: dry, dark, smeared, out of focus, pale, or only a touch.
   */
  private static final List<String> HANDLING =
      List.of(SMEARED, DARK, "RP-RDG-004", BLURRED, NO_CONTRAST, "RP-RDG-002");

  /** Each rule and those that it explains, what the hand did before what the image shows. */
  private static final Map<String, Set<String>> EXPLAINED = explained();

  private static Map<String, Set<String>> explained() {
    Map<String, Set<String>> explained = new LinkedHashMap<>();
    // Ridges that merge in the dark are faint too, and look like a second print between them.
    explained.put(DARK, with(SMEARED, SECOND_PRINT, BLURRED, NO_CONTRAST));
    explained.put(SMEARED, with(BLURRED, NO_CONTRAST));
    explained.put("RP-RDG-007", UNSEEN);
    explained.put("RP-RDG-004", with(BLURRED, NO_CONTRAST));
    explained.put(SECOND_PRINT, Set.of(NO_CORE, FEW_MINUTIAE, POOR));
    explained.put(BLURRED, with(NO_CONTRAST));
    explained.put(NO_CONTRAST, UNSEEN);
    explained.put(NOT_WIDE, Set.of(AREA_LIMIT, NO_CORE, FEW_MINUTIAE, POOR));
    explained.put(AREA_LIMIT, Set.of(NOT_WIDE, NO_CORE, FEW_MINUTIAE, POOR));
    explained.put(CUT_OFF, Set.of(NOT_WIDE, NO_CORE, FEW_MINUTIAE, POOR));
    explained.put(NO_CORE, Set.of(FEW_MINUTIAE, POOR));
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
  public void establish(ExaminationInput examinee, List<Finding> found, CauseLog causes) {
    Map<OptionalInt, List<Finding>> byImage =
        found.stream()
            .filter(finding -> finding.ruleId().startsWith(AREA))
            .collect(
                Collectors.groupingBy(
                    finding -> finding.location().record(),
                    LinkedHashMap::new,
                    Collectors.toList()));
    byImage.values().forEach(findings -> ofOneImage(findings, causes));
  }

  private static void ofOneImage(List<Finding> findings, CauseLog causes) {
    Optional<String> shared = sharedByMost(findings);
    shared.ifPresent(
        rule ->
            of(rule, findings)
                .forEach(finding -> causes.add(finding, ofShared(finding, findings, rule))));
    of(CUT_OFF, findings).stream()
        .filter(PrintQualityCause::isAtASide)
        .forEach(finding -> causes.add(finding, ofWidth(finding)));
    EXPLAINED.forEach(
        (rule, others) -> {
          if (shared.filter(rule::equals).isEmpty()) {
            of(rule, findings).stream()
                .filter(finding -> fallsShortest(finding, findings))
                .forEach(finding -> causes.add(finding, ofPrint(others, finding)));
          }
        });
  }

  /** What lies beside the image makes a print narrow, however far it was rolled. */
  private static Consequences ofWidth(Finding cause) {
    return Consequences.ofRules(NOT_WIDE)
        .inRecordOf(cause)
        .onlyWhere(other -> other.location().position().equals(cause.location().position()));
  }

  private static boolean isAtASide(Finding cutOff) {
    return cutOff.evidence().stream().map(Measure::name).anyMatch(PrintQualityCause::isAtASide);
  }

  /** What befell several fingers of one capture befell the capture. */
  private static Optional<String> sharedByMost(List<Finding> findings) {
    return HANDLING.stream()
        .filter(rule -> of(rule, findings).size() > 1)
        .max(Comparator.comparingInt(rule -> of(rule, findings).size()));
  }

  /** It explains the rest of its fingers, and fingers that were not found or lie elsewhere. */
  private static Consequences ofShared(Finding cause, List<Finding> findings, String rule) {
    Set<String> others = with(HANDLING.toArray(String[]::new));
    others.remove(rule);
    Consequences ofPrint = ofPrint(others, cause);
    return of(rule, findings).get(0) == cause
        ? ofPrint.or(
            Consequences.ofRules("RP-RDG-020", "RP-RDG-021").inRecordOf(cause).noWorseThan(cause))
        : ofPrint;
  }

  /** Of little area and little width the one explains the other that falls shorter of its limit. */
  private static boolean fallsShortest(Finding finding, List<Finding> findings) {
    if (!Set.of(AREA_LIMIT, NOT_WIDE).contains(finding.ruleId())) {
      return true;
    }
    String other = finding.ruleId().equals(AREA_LIMIT) ? NOT_WIDE : AREA_LIMIT;
    return of(other, findings).stream()
        .filter(one -> one.location().position().equals(finding.location().position()))
        .allMatch(one -> share(finding) <= share(one));
  }

  /** The first measure as a share of its limit. */
  private static double share(Finding finding) {
    return finding.evidence().stream()
        .filter(measure -> measure.limit().isPresent() && measure.limit().getAsDouble() > 0)
        .mapToDouble(measure -> measure.value() / measure.limit().getAsDouble())
        .findFirst()
        .orElse(1);
  }

  private static List<Finding> of(String rule, List<Finding> findings) {
    return findings.stream().filter(finding -> finding.ruleId().equals(rule)).toList();
  }

  private static Consequences ofPrint(Set<String> others, Finding cause) {
    return Consequences.ofRules(others.toArray(String[]::new))
        .inRecordOf(cause)
        .onlyWhere(other -> other.location().position().equals(cause.location().position()))
        .noWorseThan(cause);
  }

  private static boolean isAtASide(String measure) {
    return measure.equals(QualityMetric.CUT_LEFT.title())
        || measure.equals(QualityMetric.CUT_RIGHT.title());
  }
}
