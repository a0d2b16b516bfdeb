package ridgeproof.examination;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ridgeproof.finding.Finding;
import ridgeproof.spec.Severity;

/**
 * Something to do next, and the findings that it answers.
 *
 * @param severity of the worst of them
 */
public record RecommendedAction(String remedy, Severity severity, List<Finding> findings) {

  /** One action for each remedy, the worst first, and among equals the one that answers most. */
  static List<RecommendedAction> of(List<Finding> findings) {
    Map<String, List<Finding>> byRemedy = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (!finding.severity().equals(Severity.NOTE)) {
        byRemedy.computeIfAbsent(finding.remedy(), key -> new ArrayList<>()).add(finding);
      }
    }
    List<RecommendedAction> actions = new ArrayList<>();
    byRemedy.forEach(
        (remedy, answered) ->
            actions.add(
                new RecommendedAction(
                    remedy,
                    answered.stream().map(Finding::severity).min(Severity::compareTo).orElseThrow(),
                    List.copyOf(answered))));
    actions.sort(
        (left, right) ->
            left.severity() != right.severity()
                ? left.severity().compareTo(right.severity())
                : Integer.compare(right.findings().size(), left.findings().size()));
    return List.copyOf(actions);
  }
}
