package ridgeproof.spec.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Whether a field or an item must, may or must not be there: the {@code condition} column.
 *
 * @param clauses in order; the first that applies decides
 * @param written the cell
 */
public record Presence(List<Clause> clauses, String written) {

  // Nearly every row is one of these; they need no parsing at every start.
  private static final Presence MANDATORY = always(Demand.MANDATORY, "mandatory");
  private static final Presence OPTIONAL = always(Demand.OPTIONAL, "optional");

  private static Presence always(Demand demand, String written) {
    return new Presence(List.of(new Clause(demand, Optional.empty())), written);
  }

  /** What is asked. */
  public enum Demand {
    MANDATORY,
    OPTIONAL,
    DEPRECATED,
    FORBIDDEN
  }

  /**
   * One clause.
   *
   * @param condition empty when the clause always applies
   */
  public record Clause(Demand demand, Optional<Condition> condition) {}

  /** What is asked given these values. */
  public Demand demandFor(Function<Reference, List<String>> valuesOf) {
    for (Clause clause : clauses) {
      if (clause.condition().map(c -> c.holds(valuesOf)).orElse(true)) {
        return clause.demand();
      }
    }
    return Demand.OPTIONAL;
  }

  /**
   * Reads a {@code condition} cell.
   *
   * @throws IllegalArgumentException naming what cannot be read
   */
  public static Presence parse(String text) {
    if (text.equals(MANDATORY.written())) {
      return MANDATORY;
    }
    if (text.equals(OPTIONAL.written())) {
      return OPTIONAL;
    }
    List<Clause> clauses = new ArrayList<>();
    for (String part : text.split(";")) {
      if (!part.isBlank()) {
        clauses.add(parseClause(part.strip()));
      }
    }
    return new Presence(List.copyOf(clauses), text);
  }

  private static Clause parseClause(String text) {
    int end = text.indexOf(' ');
    Demand demand = demand(end < 0 ? text : text.substring(0, end));
    if (end < 0) {
      return new Clause(demand, Optional.empty());
    }
    String rest = text.substring(end + 1).strip();
    if (!rest.startsWith("if ")) {
      throw new IllegalArgumentException("expected \"if\" after " + demand);
    }
    return new Clause(demand, Optional.of(ConditionParser.parse(rest.substring(3))));
  }

  private static Demand demand(String word) {
    for (Demand demand : Demand.values()) {
      if (demand.name().equals(word.toUpperCase(Locale.ROOT))) {
        return demand;
      }
    }
    throw new IllegalArgumentException(
        "begins with \"" + word + "\", not mandatory, optional, deprecated, or forbidden");
  }
}
