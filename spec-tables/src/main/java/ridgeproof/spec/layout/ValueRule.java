package ridgeproof.spec.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/** What a value may be: the {@code values} column. */
public sealed interface ValueRule {

  /** What stands between alternatives. */
  String OR = " or ";

  /** Whether the value satisfies the rule. */
  boolean matches(String value, CodeLookup codes);

  /** The rule in a few words, for "required". */
  String inWords();

  /**
   * Whether a value that is refused is a code that is not listed, rather than one of a wrong form.
   */
  default boolean namesCodes() {
    return false;
  }

  /** As {@link #matches} where no code table is in play. */
  default boolean matchesText(String value) {
    return matches(value, (table, code) -> false);
  }

  /** Answers whether the version at hand knows a code. */
  @FunctionalInterface
  interface CodeLookup {
    boolean knows(String table, String code);
  }

  /** One literal; numbers compare as numbers, text without regard to case. */
  record Literal(String text) implements ValueRule {
    @Override
    public boolean matches(String value, CodeLookup codes) {
      if (text.equalsIgnoreCase(value)) {
        return true;
      }
      OptionalDouble left = asNumber(text);
      OptionalDouble right = asNumber(value);
      return left.isPresent() && right.isPresent() && left.getAsDouble() == right.getAsDouble();
    }

    @Override
    public boolean namesCodes() {
      return true;
    }

    @Override
    public String inWords() {
      return text;
    }
  }

  /** A number in a closed range. */
  record Range(double least, double most, String written) implements ValueRule {
    @Override
    public boolean matches(String value, CodeLookup codes) {
      return asNumber(value).stream().anyMatch(number -> number >= least && number <= most);
    }

    @Override
    public String inWords() {
      return written.replace("..*", " or more").replace("..", " to ");
    }
  }

  /** A code of a code table. */
  record InTable(String table) implements ValueRule {
    @Override
    public boolean matches(String value, CodeLookup codes) {
      return codes.knows(table, value);
    }

    @Override
    public boolean namesCodes() {
      return true;
    }

    @Override
    public String inWords() {
      return "a code of the table " + table;
    }
  }

  /** YYYYMMDD of the calendar. */
  record CalendarDate() implements ValueRule {
    @Override
    public boolean matches(String value, CodeLookup codes) {
      return Calendar.isDate(value);
    }

    @Override
    public String inWords() {
      return "a valid calendar date (YYYYMMDD)";
    }
  }

  /** YYYYMMDDHHMMSSZ. */
  record GreenwichTime() implements ValueRule {
    private static final Pattern CLOCK = Pattern.compile("([01]\\d|2[0-3])[0-5]\\d[0-5]\\dZ");

    @Override
    public boolean matches(String value, CodeLookup codes) {
      return value.length() == 15
          && Calendar.isDate(value.substring(0, 8))
          && CLOCK.matcher(value.substring(8)).matches();
    }

    @Override
    public String inWords() {
      return "a valid time in GMT (YYYYMMDDHHMMSSZ)";
    }
  }

  /**
   * A regular expression for the whole value.
   *
   * @param words the same for a person; the expression itself where the row has none
   */
  record Matching(Pattern pattern, String words) implements ValueRule {

    private static final String WORDS_FOLLOW = " -- ";

    /** Reads an expression, and the words behind it where there are any. */
    static Matching parse(String text) {
      int words = text.indexOf(WORDS_FOLLOW);
      String expression = words < 0 ? text : text.substring(0, words);
      try {
        return new Matching(
            Pattern.compile(expression),
            words < 0
                ? "the form " + expression
                : text.substring(words + WORDS_FOLLOW.length()).strip());
      } catch (PatternSyntaxException e) {
        throw new IllegalArgumentException("pattern: " + e.getDescription(), e);
      }
    }

    @Override
    public boolean matches(String value, CodeLookup codes) {
      return pattern.matcher(value).matches();
    }

    @Override
    public String inWords() {
      return words;
    }
  }

  /** Any of several. */
  record AnyOf(List<ValueRule> rules) implements ValueRule {
    private static final int MAX_NAMED = 12;

    @Override
    public boolean matches(String value, CodeLookup codes) {
      return rules.stream().anyMatch(rule -> rule.matches(value, codes));
    }

    /** A date stays a date where a code such as 00000000 may stand for it. */
    @Override
    public boolean namesCodes() {
      return rules.stream().anyMatch(ValueRule::namesCodes)
          && rules.stream().noneMatch(rule -> rule instanceof CalendarDate);
    }

    @Override
    public String inWords() {
      List<String> words = rules.stream().map(ValueRule::inWords).toList();
      int last = words.size() - 1;
      return words.size() > MAX_NAMED
          ? String.join(", ", words.subList(0, MAX_NAMED))
              + " and "
              + (words.size() - MAX_NAMED)
              + " more"
          : String.join(", ", words.subList(0, last))
              + (last > 1 ? ", or " : " or ")
              + words.get(last);
    }
  }

  /**
   * Reads a {@code values} cell.
   *
   * @throws IllegalArgumentException naming what cannot be read
   */
  static ValueRule parse(String text) {
    List<ValueRule> rules = new ArrayList<>();
    int start = 0;
    for (int or = nextOr(text, 0); or >= 0; or = nextOr(text, start)) {
      rules.addAll(parseAlternative(text.substring(start, or).strip()));
      start = or + OR.length();
    }
    rules.addAll(parseAlternative(text.substring(start).strip()));
    return rules.size() == 1 ? rules.get(0) : new AnyOf(List.copyOf(rules));
  }

  /** The next " or " that an alternative follows; the words of a pattern may have their own. */
  private static int nextOr(String text, int from) {
    int or = text.indexOf(OR, from);
    while (or >= 0 && !beginsAlternative(text.substring(or + OR.length()))) {
      or = text.indexOf(OR, or + OR.length());
    }
    return or;
  }

  private static boolean beginsAlternative(String text) {
    return text.startsWith("{")
        || text.startsWith("table ")
        || text.startsWith("pattern ")
        || text.startsWith("date")
        || text.startsWith("gmt")
        || !text.isEmpty() && (Character.isDigit(text.charAt(0)) || text.charAt(0) == '-');
  }

  private static List<ValueRule> parseAlternative(String part) {
    if (part.equals("date")) {
      return List.of(new CalendarDate());
    }
    if (part.equals("gmt")) {
      return List.of(new GreenwichTime());
    }
    if (part.startsWith("table ")) {
      return List.of(new InTable(part.substring("table ".length()).strip()));
    }
    if (part.startsWith("pattern ")) {
      return List.of(Matching.parse(part.substring("pattern ".length())));
    }
    if (part.startsWith("{") && part.endsWith("}")) {
      List<ValueRule> members = new ArrayList<>();
      for (String member : part.substring(1, part.length() - 1).split(",")) {
        members.add(literalOrRange(member.strip()));
      }
      return members;
    }
    if (part.contains("..")) {
      return List.of(literalOrRange(part));
    }
    throw new IllegalArgumentException("not a set, a range, a table, a pattern, date or gmt");
  }

  /** A member of a set: {@code 7}, {@code AB} or {@code 1..10}. */
  static ValueRule literalOrRange(String text) {
    int dots = text.indexOf("..");
    if (dots <= 0) {
      if (text.isEmpty()) {
        throw new IllegalArgumentException("an empty member");
      }
      return new Literal(text);
    }
    String most = text.substring(dots + 2);
    return new Range(
        Double.parseDouble(text.substring(0, dots)),
        most.equals("*") ? Double.POSITIVE_INFINITY : Double.parseDouble(most),
        text);
  }

  /** The value as a plain decimal number, if it is one. */
  static OptionalDouble asNumber(String text) {
    int digits = 0;
    int points = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        digits++;
      } else if (c == '.') {
        points++;
      } else if (i > 0 || (c != '-' && c != '+')) {
        return OptionalDouble.empty();
      }
    }
    return digits == 0 || points > 1
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(text));
  }
}
