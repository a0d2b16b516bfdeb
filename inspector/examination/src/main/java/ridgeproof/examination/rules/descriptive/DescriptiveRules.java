package ridgeproof.examination.rules.descriptive;

import java.util.List;
import ridgeproof.examination.rules.Rule;

/** The Type-2 record. */
public final class DescriptiveRules {

  private DescriptiveRules() {}

  /** The rules of this package, in the order in which they run. */
  public static List<Rule> all() {
    return List.of(
        new RequiredDescriptiveFieldsRule(),
        new BirthplaceRule(),
        new DateOrderRule(),
        new AgeRule(),
        new NumberFormRule(),
        new PhysicalDescriptorsRule(),
        new MiscellaneousNumberRule(),
        new NameRule());
  }
}
