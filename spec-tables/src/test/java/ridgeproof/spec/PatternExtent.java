package ridgeproof.spec;

import java.util.Set;
import java.util.TreeSet;

/**
 * How short and how long the words of a regular expression are, and of which characters, for what
 * the tables use of them: literals, classes, {@code .}, {@code \d} and other escapes, groups,
 * alternatives and quantifiers.
 *
 * @param longest {@link #ENDLESS} where nothing bounds it
 * @param characters but for those that {@code .} stands for
 */
public record PatternExtent(int shortest, int longest, Set<Integer> characters) {

  public static final int ENDLESS = 1_000_000;

  private static final PatternExtent EMPTY = new PatternExtent(0, 0, Set.of());

  public static PatternExtent of(String pattern) {
    Reader reader = new Reader(pattern);
    PatternExtent extent = reader.alternatives();
    if (reader.next < pattern.length()) {
      throw new IllegalArgumentException("pattern beyond this reader: " + pattern);
    }
    return extent;
  }

  private PatternExtent then(PatternExtent other) {
    return new PatternExtent(
        shortest + other.shortest,
        Math.min(ENDLESS, longest + other.longest),
        union(characters, other.characters));
  }

  private PatternExtent or(PatternExtent other) {
    return new PatternExtent(
        Math.min(shortest, other.shortest),
        Math.max(longest, other.longest),
        union(characters, other.characters));
  }

  private PatternExtent times(int least, int most) {
    long longestNow = Math.min(ENDLESS, (long) longest * most);
    return new PatternExtent(shortest * least, (int) longestNow, characters);
  }

  private static Set<Integer> union(Set<Integer> one, Set<Integer> other) {
    Set<Integer> both = new TreeSet<>(one);
    both.addAll(other);
    return both;
  }

  /** Goes through an expression once. */
  private static final class Reader {

    private final String pattern;
    private int next;

    Reader(String pattern) {
      this.pattern = pattern;
    }

    private boolean at(char c) {
      return next < pattern.length() && pattern.charAt(next) == c;
    }

    PatternExtent alternatives() {
      PatternExtent extent = sequence();
      while (at('|')) {
        next++;
        extent = extent.or(sequence());
      }
      return extent;
    }

    private PatternExtent sequence() {
      PatternExtent extent = EMPTY;
      while (next < pattern.length() && !at('|') && !at(')')) {
        extent = extent.then(quantified(atom()));
      }
      return extent;
    }

    private PatternExtent atom() {
      char c = pattern.charAt(next++);
      return switch (c) {
        case '(' -> group();
        case '[' -> one(characterClass());
        case '.' -> new PatternExtent(1, 1, Set.of());
        case '\\' -> one(escaped());
        default -> one(Set.of((int) c));
      };
    }

    private static PatternExtent one(Set<Integer> characters) {
      return new PatternExtent(1, 1, characters);
    }

    private PatternExtent group() {
      boolean looksAhead = pattern.startsWith("?!", next) || pattern.startsWith("?=", next);
      next += looksAhead || pattern.startsWith("?:", next) ? 2 : 0;
      PatternExtent inner = alternatives();
      next++;
      return looksAhead ? EMPTY : inner;
    }

    private Set<Integer> escaped() {
      char c = pattern.charAt(next++);
      return c == 'd' ? range('0', '9') : Set.of((int) c);
    }

    private Set<Integer> characterClass() {
      Set<Integer> members = new TreeSet<>();
      if (at('^')) {
        next = pattern.indexOf(']', next) + 1;
        return members;
      }
      while (!at(']')) {
        char first = pattern.charAt(next++);
        if (first == '\\') {
          members.addAll(escaped());
        } else if (at('-') && pattern.charAt(next + 1) != ']') {
          members.addAll(range(first, pattern.charAt(next + 1)));
          next += 2;
        } else {
          members.add((int) first);
        }
      }
      next++;
      return members;
    }

    private static Set<Integer> range(char from, char to) {
      Set<Integer> members = new TreeSet<>();
      for (int c = from; c <= to; c++) {
        members.add(c);
      }
      return members;
    }

    private PatternExtent quantified(PatternExtent atom) {
      if (at('*') || at('+') || at('?')) {
        char c = pattern.charAt(next++);
        return atom.times(c == '+' ? 1 : 0, c == '?' ? 1 : ENDLESS);
      }
      if (!at('{')) {
        return atom;
      }
      int end = pattern.indexOf('}', next);
      String[] bounds = pattern.substring(next + 1, end).split(",", -1);
      next = end + 1;
      int least = Integer.parseInt(bounds[0]);
      String most = bounds[bounds.length - 1];
      return atom.times(least, most.isEmpty() ? ENDLESS : Integer.parseInt(most));
    }
  }
}
