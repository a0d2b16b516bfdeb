package ridgeproof.examination.cause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.finding.CausedBy;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.Severity;

/**
 * Findings after their causes were established.
 *
 * @param shown the causes, each with the number of findings that it explains, and what no cause
 *     explains
 * @param every every single finding, in the order in which they came, the causes first;
 *     consequences name their cause
 */
public record Attribution(List<Finding> shown, List<Finding> every) {

  public Attribution {
    shown = List.copyOf(shown);
    every = List.copyOf(every);
  }

  /**
   * A finding goes to the first cause that explains it. So does a later cause, with all that it
   * explains. A cause is as severe as the worst of what it explains, so that no silence betters a
   * verdict.
   */
  public static Attribution of(List<Finding> findings, List<Cause> causes) {
    int[] roots = roots(causes);
    int[] explained = new int[causes.size()];
    List<Finding> shown = new ArrayList<>();
    List<Finding> consequences = new ArrayList<>();
    Severity[] worst = new Severity[causes.size()];
    Arrays.setAll(worst, i -> causes.get(i).finding().severity());
    for (int i = 0; i < causes.size(); i++) {
      if (roots[i] != i) {
        explained[roots[i]]++;
        worst[roots[i]] = worse(worst[roots[i]], causes.get(i).finding());
      }
    }
    for (Finding finding : withoutCauses(findings, causes)) {
      Optional<Integer> cause = first(causes, finding, causes.size());
      if (cause.isPresent()) {
        int root = roots[cause.get()];
        explained[root]++;
        worst[root] = worse(worst[root], finding);
        consequences.add(finding.causedBy(reference(causes.get(root))));
      } else {
        shown.add(finding);
        consequences.add(finding);
      }
    }
    List<Finding> every = new ArrayList<>();
    for (int i = 0; i < causes.size(); i++) {
      Finding finding = causes.get(i).finding();
      if (roots[i] == i) {
        Finding cause = finding.withSeverity(worst[i]).explaining(explained[i]);
        shown.add(cause);
        every.add(cause);
      } else {
        every.add(finding.causedBy(reference(causes.get(roots[i]))));
      }
    }
    every.addAll(consequences);
    return new Attribution(shown, every);
  }

  private static Severity worse(Severity severity, Finding finding) {
    return finding.severity().worseThan(severity) ? finding.severity() : severity;
  }

  /** A finding that is a cause itself is reported as such. */
  private static List<Finding> withoutCauses(List<Finding> findings, List<Cause> causes) {
    Set<Finding> reported = Collections.newSetFromMap(new IdentityHashMap<>());
    causes.forEach(cause -> reported.add(cause.finding()));
    return findings.stream().filter(finding -> !reported.contains(finding)).toList();
  }

  /** The cause behind each cause: itself, or an earlier one that explains it. */
  private static int[] roots(List<Cause> causes) {
    int[] roots = new int[causes.size()];
    Arrays.setAll(
        roots,
        i -> first(causes, causes.get(i).finding(), i).map(earlier -> roots[earlier]).orElse(i));
    return roots;
  }

  private static Optional<Integer> first(List<Cause> causes, Finding finding, int before) {
    for (int i = 0; i < before; i++) {
      if (causes.get(i).consequences().include(finding)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private static CausedBy reference(Cause cause) {
    return new CausedBy(cause.finding().ruleId(), cause.finding().location());
  }
}
