package ridgeproof.spec.layout;

import java.util.List;
import java.util.function.Function;

/** An expression over the values of a transaction, as {@code FORMAT.md} describes it. */
public sealed interface Condition {

  /**
   * Whether the condition holds.
   *
   * @param valuesOf the non-empty values of a reference, none where it is absent
   */
  boolean holds(Function<Reference, List<String>> valuesOf);

  /** How a value is compared with a number. */
  enum Comparison {
    LESS,
    AT_MOST,
    MORE,
    AT_LEAST;

    boolean holds(double value, double number) {
      return switch (this) {
        case LESS -> value < number;
        case AT_MOST -> value <= number;
        case MORE -> value > number;
        case AT_LEAST -> value >= number;
      };
    }
  }

  record Present(Reference reference) implements Condition {
    @Override
    public boolean holds(Function<Reference, List<String>> valuesOf) {
      return !valuesOf.apply(reference).isEmpty();
    }
  }

  record Absent(Reference reference) implements Condition {
    @Override
    public boolean holds(Function<Reference, List<String>> valuesOf) {
      return valuesOf.apply(reference).isEmpty();
    }
  }

  /** Some value of the reference is one of these. */
  record In(Reference reference, ValueRule values) implements Condition {
    @Override
    public boolean holds(Function<Reference, List<String>> valuesOf) {
      return valuesOf.apply(reference).stream().anyMatch(values::matchesText);
    }
  }

  /** The reference has values and none of them is this one. */
  record Differs(Reference reference, ValueRule value) implements Condition {
    @Override
    public boolean holds(Function<Reference, List<String>> valuesOf) {
      List<String> values = valuesOf.apply(reference);
      return !values.isEmpty() && values.stream().noneMatch(value::matchesText);
    }
  }

  record Compares(Reference reference, Comparison comparison, double number) implements Condition {
    @Override
    public boolean holds(Function<Reference, List<String>> valuesOf) {
      return valuesOf.apply(reference).stream()
          .flatMapToDouble(value -> ValueRule.asNumber(value).stream())
          .anyMatch(value -> comparison.holds(value, number));
    }
  }

  record Not(Condition condition) implements Condition {
    @Override
    public boolean holds(Function<Reference, List<String>> valuesOf) {
      return !condition.holds(valuesOf);
    }
  }

  record And(Condition left, Condition right) implements Condition {
    @Override
    public boolean holds(Function<Reference, List<String>> valuesOf) {
      return left.holds(valuesOf) && right.holds(valuesOf);
    }
  }

  record Or(Condition left, Condition right) implements Condition {
    @Override
    public boolean holds(Function<Reference, List<String>> valuesOf) {
      return left.holds(valuesOf) || right.holds(valuesOf);
    }
  }
}
