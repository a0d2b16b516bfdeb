package ridgeproof.spec.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ridgeproof.spec.layout.Condition.Comparison;

/** Reads the expressions of {@code FORMAT.md} by recursive descent. */
final class ConditionParser {

  private static final Pattern TOKEN =
      Pattern.compile("\\s*(\\(|\\)|\\{|}|,|<=|>=|!=|=|<|>|[A-Za-z0-9_.+/*-]+)");

  private final List<String> tokens;
  private int next;

  private ConditionParser(List<String> tokens) {
    this.tokens = tokens;
  }

  /**
   * @throws IllegalArgumentException naming the place that cannot be read
   */
  static Condition parse(String text) {
    List<String> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(text);
    int end = 0;
    while (matcher.find() && matcher.start() == end) {
      tokens.add(matcher.group(1));
      end = matcher.end();
    }
    if (!text.substring(end).isBlank()) {
      throw new IllegalArgumentException("cannot read \"" + text.substring(end) + "\"");
    }
    ConditionParser parser = new ConditionParser(tokens);
    Condition condition = parser.or();
    if (parser.next < tokens.size()) {
      throw new IllegalArgumentException("unexpected \"" + tokens.get(parser.next) + "\"");
    }
    return condition;
  }

  private Condition or() {
    Condition left = and();
    while (accept("or")) {
      left = new Condition.Or(left, and());
    }
    return left;
  }

  private Condition and() {
    Condition left = factor();
    while (accept("and")) {
      left = new Condition.And(left, factor());
    }
    return left;
  }

  private Condition factor() {
    if (accept("not")) {
      return new Condition.Not(factor());
    }
    if (accept("(")) {
      Condition inner = or();
      expect(")");
      return inner;
    }
    return comparison();
  }

  private Condition comparison() {
    Reference reference = reference();
    String operator = take();
    return switch (operator) {
      case "present" -> new Condition.Present(reference);
      case "absent" -> new Condition.Absent(reference);
      case "in" -> new Condition.In(reference, set());
      case "=" -> new Condition.In(reference, ValueRule.literalOrRange(take()));
      case "!=" -> new Condition.Differs(reference, ValueRule.literalOrRange(take()));
      case "<" -> new Condition.Compares(reference, Comparison.LESS, number());
      case "<=" -> new Condition.Compares(reference, Comparison.AT_MOST, number());
      case ">" -> new Condition.Compares(reference, Comparison.MORE, number());
      case ">=" -> new Condition.Compares(reference, Comparison.AT_LEAST, number());
      default -> throw new IllegalArgumentException("\"" + operator + "\" is no comparison");
    };
  }

  private Reference reference() {
    String token = take();
    if (token.equals("version")) {
      return new Reference.OfVersion();
    }
    if (token.equals("item")) {
      return new Reference.OfSameSubfield(Integer.parseInt(take()));
    }
    int slash = token.indexOf('/');
    return slash < 0
        ? new Reference.OfField(FieldNumber.parse(token))
        : new Reference.OfItem(
            FieldNumber.parse(token.substring(0, slash)),
            Integer.parseInt(token.substring(slash + 1)));
  }

  private ValueRule set() {
    expect("{");
    List<ValueRule> members = new ArrayList<>();
    do {
      members.add(ValueRule.literalOrRange(take()));
    } while (accept(","));
    expect("}");
    return new ValueRule.AnyOf(List.copyOf(members));
  }

  private double number() {
    return Double.parseDouble(take());
  }

  private boolean accept(String token) {
    if (next < tokens.size() && tokens.get(next).equals(token)) {
      next++;
      return true;
    }
    return false;
  }

  private void expect(String token) {
    if (!accept(token)) {
      throw new IllegalArgumentException("expected \"" + token + "\"");
    }
  }

  private String take() {
    if (next == tokens.size()) {
      throw new IllegalArgumentException("ends too early");
    }
    return tokens.get(next++);
  }
}
