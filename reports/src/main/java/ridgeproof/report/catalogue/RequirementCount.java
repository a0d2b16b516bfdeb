package ridgeproof.report.catalogue;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.requirement.Requirement;
import ridgeproof.spec.requirement.RequirementKind;
import ridgeproof.spec.requirement.Requirements;

/** How many single requirements the layouts state; only those count that a file can break alone. */
public final class RequirementCount {

  private final Map<RecordTypeRow, List<Requirement>> byType = new LinkedHashMap<>();

  public RequirementCount(SpecTables tables) {
    Requirements requirements = new Requirements(tables);
    for (RecordTypeRow type : tables.recordTypes()) {
      byType.put(type, requirements.of(type).stream().filter(Requirement::isObservable).toList());
    }
  }

  public int total() {
    return byType.values().stream().mapToInt(List::size).sum();
  }

  /** A line a record type, and one for all. */
  public String text() {
    StringBuilder out = new StringBuilder();
    byType.forEach(
        (type, requirements) ->
            out.append(
                String.format(
                    Locale.ROOT,
                    "Type-%-2d  %5d  %s%n",
                    type.type(),
                    requirements.size(),
                    type.name())));
    return out.append(String.format(Locale.ROOT, "in all   %5d  requirements%n", total()))
        .toString();
  }

  /** The record types with their requirements by kind. */
  Map<RecordTypeRow, Map<RequirementKind, Integer>> byKind() {
    Map<RecordTypeRow, Map<RequirementKind, Integer>> counts = new LinkedHashMap<>();
    byType.forEach(
        (type, requirements) -> {
          Map<RequirementKind, Integer> kinds = new EnumMap<>(RequirementKind.class);
          requirements.forEach(requirement -> kinds.merge(requirement.kind(), 1, Integer::sum));
          counts.put(type, kinds);
        });
    return counts;
  }
}
