package ridgeproof.gate;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import ridgeproof.gate.GateFiles.Facts;

/** Tells which files have stopped growing: those that have not changed for a while. */
final class Settling {

  private record Seen(Facts facts, long sinceNanos) {}

  private final Duration time;
  private final Map<String, Seen> seen = new HashMap<>();

  /**
   * @param time for which a file must stay as it is
   */
  Settling(Duration time) {
    this.time = time;
  }

  /**
   * Whether a file has been the same for that long, by the looks that were taken at it.
   *
   * @param nanos now, by a clock that nobody sets
   */
  boolean hasSettled(String name, Facts facts, long nanos) {
    Seen before = seen.get(name);
    if (before == null || !before.facts().equals(facts)) {
      seen.put(name, new Seen(facts, nanos));
      return time.isZero();
    }
    return nanos - before.sinceNanos() >= time.toNanos();
  }

  /** A file bears another name from now on. */
  void rename(String name, String other) {
    Seen before = seen.remove(name);
    if (before != null) {
      seen.put(other, before);
    }
  }

  void forget(String name) {
    seen.remove(name);
  }

  /** Forgets the files that are gone. */
  void keep(Set<String> names) {
    seen.keySet().retainAll(names);
  }
}
