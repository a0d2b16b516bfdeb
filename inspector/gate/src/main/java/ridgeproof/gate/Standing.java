package ridgeproof.gate;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.gate.Step.Decided;
import ridgeproof.gate.Step.Releasing;
import ridgeproof.gate.Step.Taking;

/** What a record says of all files, taken together. */
final class Standing {

  static final String READY = "ready";
  static final String HOLD = "hold";

  private final Map<String, String> names = new HashMap<>();
  private final Map<String, Decided> decisions = new HashMap<>();
  private final Map<String, Decided> entries = new HashMap<>();
  private final Set<String> releases = new HashSet<>();

  static Standing of(List<Step> steps) {
    Standing standing = new Standing();
    steps.forEach(standing::add);
    return standing;
  }

  private void add(Step step) {
    if (step instanceof Taking taking) {
      names.put(taking.id(), taking.name());
    } else if (step instanceof Decided decided) {
      decisions.put(decided.id(), decided);
      if (decided.to().equals(HOLD)) {
        entries.put(decided.as(), decided);
      }
    } else if (step instanceof Releasing releasing) {
      releases.add(releasing.id());
    }
  }

  /** What the station called a file. */
  Optional<String> name(String id) {
    return Optional.ofNullable(names.get(id));
  }

  /** The decision that made an entry of {@code hold}, the latest of that name. */
  Optional<Decided> entry(String as) {
    return Optional.ofNullable(entries.get(as));
  }

  boolean isReleased(String id) {
    return releases.contains(id);
  }

  /** Whether another file with these bytes was let through, by the examination or by a person. */
  boolean wasSent(String sha256, String exceptId) {
    return decisions.values().stream()
        .filter(decided -> decided.sha256().equals(sha256) && !decided.id().equals(exceptId))
        .anyMatch(decided -> decided.to().equals(READY) || releases.contains(decided.id()));
  }
}
