package ridgeproof.examination;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ridgeproof.spec.layout.Condition;
import ridgeproof.spec.layout.Presence.Clause;
import ridgeproof.spec.layout.Reference;
import ridgeproof.spec.layout.ValueRule;

/** The values that decide the conditions of some clauses, by what the conditions look at. */
final class ConditionValues {

  private final Map<Reference, Set<String>> values = new LinkedHashMap<>();

  private ConditionValues() {}

  /** The references of the clauses, each with the values that they are compared with. */
  static Map<Reference, Set<String>> of(List<Clause> clauses) {
    ConditionValues found = new ConditionValues();
    clauses.forEach(clause -> clause.condition().ifPresent(found::collect));
    found.values.keySet().removeIf(reference -> reference instanceof Reference.OfVersion);
    return found.values;
  }

  private void collect(Condition condition) {
    if (condition instanceof Condition.And and) {
      collect(and.left());
      collect(and.right());
    } else if (condition instanceof Condition.Or or) {
      collect(or.left());
      collect(or.right());
    } else if (condition instanceof Condition.Not not) {
      collect(not.condition());
    } else if (condition instanceof Condition.Present present) {
      add(present.reference(), List.of());
    } else if (condition instanceof Condition.Absent absent) {
      add(absent.reference(), List.of());
    } else if (condition instanceof Condition.In in) {
      add(in.reference(), literals(in.values()));
    } else if (condition instanceof Condition.Differs differs) {
      add(differs.reference(), literals(differs.value()));
    } else if (condition instanceof Condition.Compares compares) {
      double number = compares.number();
      add(
          compares.reference(),
          List.of(
              ConformingValues.plain(number),
              ConformingValues.plain(number + 1),
              ConformingValues.plain(number - 1)));
    }
  }

  private void add(Reference reference, List<String> texts) {
    values.computeIfAbsent(reference, key -> new LinkedHashSet<>()).addAll(texts);
  }

  private static List<String> literals(ValueRule rule) {
    if (rule instanceof ValueRule.AnyOf any) {
      return any.rules().stream().flatMap(inner -> literals(inner).stream()).toList();
    }
    return rule instanceof ValueRule.Range range
        ? List.of(ConformingValues.plain(range.least()))
        : List.of(((ValueRule.Literal) rule).text());
  }
}
