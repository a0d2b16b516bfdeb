package ridgeproof.examination;

/**
 * A word that a regular expression matches, for what the tables use of them: literals, {@code \d},
 * {@code .}, classes, groups, alternatives and the quantifiers {@code * ? {n} {n,m}}. Takes the
 * first alternative, the fewest repetitions, and as many for {@code *} as it is told.
 */
final class PatternWord {

  private final String pattern;
  private final int starTimes;
  private int next;

  private PatternWord(String pattern, int starTimes) {
    this.pattern = pattern;
    this.starTimes = starTimes;
  }

  static String of(String pattern, int starTimes) {
    PatternWord word = new PatternWord(pattern, starTimes);
    String text = word.alternatives();
    if (word.next < pattern.length()) {
      throw new IllegalArgumentException("pattern beyond this generator: " + pattern);
    }
    return text;
  }

  private String alternatives() {
    String first = sequence();
    while (next < pattern.length() && pattern.charAt(next) == '|') {
      next++;
      sequence();
    }
    return first;
  }

  private String sequence() {
    StringBuilder out = new StringBuilder();
    while (next < pattern.length() && "|)".indexOf(pattern.charAt(next)) < 0) {
      String atom = atom();
      out.append(atom.repeat(times()));
    }
    return out.toString();
  }

  private String atom() {
    char c = pattern.charAt(next++);
    return switch (c) {
      case '(' -> {
        String inner = alternatives();
        next++;
        yield inner;
      }
      case '[' -> {
        char first = pattern.charAt(next);
        next = pattern.indexOf(']', next) + 1;
        yield String.valueOf(first);
      }
      case '\\' -> pattern.charAt(next++) == 'd' ? "1" : pattern.substring(next - 1, next);
      case '.' -> "1";
      default -> String.valueOf(c);
    };
  }

  private int times() {
    if (next == pattern.length()) {
      return 1;
    }
    char c = pattern.charAt(next);
    if (c == '*' || c == '?') {
      next++;
      return c == '*' ? starTimes : 0;
    }
    if (c != '{') {
      return 1;
    }
    int end = pattern.indexOf('}', next);
    String least = pattern.substring(next + 1, end).split(",")[0];
    next = end + 1;
    return Integer.parseInt(least);
  }
}
