package ridgeproof.examination.rules.layout;

import java.util.List;
import ridgeproof.examination.rules.Rule;

/** Fields by their layouts, and the Type-1 record. */
public final class LayoutRules {

  private LayoutRules() {}

  /** The rules of this package, in the order in which they run. */
  public static List<Rule> all() {
    return List.of(
        new LayoutRule(),
        new ResolutionFieldsRule(),
        new IdcRule(),
        new HeaderResolutionRule(),
        new AgencyFieldsRule());
  }
}
