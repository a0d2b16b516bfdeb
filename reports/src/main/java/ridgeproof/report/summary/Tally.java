package ridgeproof.report.summary;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;

/** Counts of files by verdict, and by the rules that they met. */
final class Tally {

  /**
   * How many files met a rule.
   *
   * @param severity the worst that it was found with
   */
  record RuleCount(RuleRow rule, Severity severity, int files, int findings) {

    private static RuleCount first(Finding finding) {
      return new RuleCount(finding.rule(), finding.severity(), 0, 0);
    }

    private RuleCount and(Finding finding, boolean anotherFile) {
      return new RuleCount(
          rule,
          finding.severity().worseThan(severity) ? finding.severity() : severity,
          files + (anotherFile ? 1 : 0),
          findings + 1);
    }
  }

  private final Map<Verdict, Integer> verdicts = new EnumMap<>(Verdict.class);
  private final Map<String, RuleCount> rules = new HashMap<>();

  void add(FindingsReport report) {
    verdicts.merge(report.verdict(), 1, Integer::sum);
    Set<String> met = new HashSet<>();
    for (Finding finding : report.findings()) {
      boolean anotherFile = met.add(finding.ruleId());
      RuleCount before = rules.getOrDefault(finding.ruleId(), RuleCount.first(finding));
      rules.put(finding.ruleId(), before.and(finding, anotherFile));
    }
  }

  int files() {
    return verdicts.values().stream().mapToInt(Integer::intValue).sum();
  }

  int files(Verdict verdict) {
    return verdicts.getOrDefault(verdict, 0);
  }

  /** Every rule that was met but for mere facts: in most files first, then the worst first. */
  List<RuleCount> commonest() {
    return rules.values().stream()
        .filter(count -> count.severity().worseThan(Severity.NOTE))
        .sorted(
            Comparator.comparingInt((RuleCount count) -> -count.files())
                .thenComparing(RuleCount::severity)
                .thenComparing(count -> count.rule().id()))
        .toList();
  }
}
