package ridgeproof.examination;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.rules.consistency.ConsistencyRules;
import ridgeproof.examination.rules.descriptive.DescriptiveRules;
import ridgeproof.examination.rules.image.ImageRules;
import ridgeproof.examination.rules.layout.LayoutRules;
import ridgeproof.examination.rules.ridges.RidgeRules;
import ridgeproof.examination.rules.transaction.TransactionRules;
import ridgeproof.spec.rule.RuleRow;

/** The rules of an examination, in the order in which they run. */
final class RuleSet {

  private static final List<Rule> RULES =
      Stream.of(
              LayoutRules.all(),
              TransactionRules.all(),
              ImageRules.all(),
              RidgeRules.all(),
              ConsistencyRules.all(),
              DescriptiveRules.all())
          .flatMap(List::stream)
          .toList();

  private RuleSet() {}

  static List<Rule> standard() {
    return RULES;
  }

  /** The rows that come with rules. */
  static List<RuleRow> rows() {
    List<RuleRow> rows = new ArrayList<>();
    RULES.forEach(rule -> rows.addAll(rule.rows()));
    return rows;
  }

  /** Every row of the catalogue that some rule can report. */
  static Set<String> ids() {
    Set<String> ids = new TreeSet<>();
    RULES.forEach(rule -> ids.addAll(rule.ids()));
    return ids;
  }
}
