package ridgeproof.spec.xml;

import java.util.OptionalInt;

/**
 * One element of a path, {@code itl:FingerprintImage}.
 *
 * @param nth only the element of this number among those of its name, counted from 1
 */
public record XmlStep(String prefix, String name, Repeats repeats, OptionalInt nth) {

  /** What one more element of the name is. */
  public enum Repeats {
    /** More than the schema allows. */
    NOTHING,
    /** Allowed, and nothing that the path counts. */
    FREELY,
    /** A subfield of its own. */
    SUBFIELDS,
    /** More items of the same subfield. */
    ITEMS
  }

  /**
   * Reads a step: the name with its prefix, then {@code *}, {@code +}, {@code ~} or {@code [n]}.
   *
   * @throws IllegalArgumentException if the prefix is missing
   */
  static XmlStep parse(String text) {
    int colon = text.indexOf(':');
    if (colon < 1) {
      throw new IllegalArgumentException("no prefix in " + text);
    }
    int end = text.length();
    Repeats repeats = Repeats.NOTHING;
    OptionalInt nth = OptionalInt.empty();
    if (text.endsWith("*") || text.endsWith("+") || text.endsWith("~")) {
      end--;
      repeats =
          switch (text.charAt(end)) {
            case '*' -> Repeats.SUBFIELDS;
            case '+' -> Repeats.ITEMS;
            default -> Repeats.FREELY;
          };
    } else if (text.endsWith("]")) {
      end = text.indexOf('[');
      nth = OptionalInt.of(Integer.parseInt(text.substring(end + 1, text.length() - 1)));
    }
    return new XmlStep(text.substring(0, colon), text.substring(colon + 1, end), repeats, nth);
  }

  /** The name as documents write it by custom. */
  public String qualified() {
    return prefix + ":" + name;
  }
}
