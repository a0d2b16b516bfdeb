package ridgeproof.examination.rules.transaction;

import java.util.List;
import ridgeproof.examination.rules.Rule;

/** What the type of transaction needs and allows. */
public final class TransactionRules {

  private TransactionRules() {}

  /** The rules of this package, in the order in which they run. */
  public static List<Rule> all() {
    return List.of(
        new CodeCaseRule(),
        new PositionRule(),
        new DeclaredMissingRule(),
        new TransactionTypeRule(),
        new CompletenessRule(),
        new NeededImagesRule(),
        new RecordLimitsRule(),
        new MissingMarksRule(),
        new TransactionTimeRule());
  }
}
