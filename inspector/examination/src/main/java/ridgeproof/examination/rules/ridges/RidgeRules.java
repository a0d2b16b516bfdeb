package ridgeproof.examination.rules.ridges;

import java.util.List;
import ridgeproof.examination.rules.Rule;

/** Ridges, slaps and the sequence of fingers. */
public final class RidgeRules {

  private RidgeRules() {}

  /** The rules of this package, in the order in which they run. */
  public static List<Rule> all() {
    return List.of(new RidgeLimitsRule(), new SlapRule(), new SequenceRule());
  }
}
