package ridgeproof.spec.layout;

import java.util.function.IntPredicate;

/** The character types of the standard's field tables. */
public enum CharacterType {
  A("letters", c -> isLetter(c)),
  N("digits", c -> isDigit(c)),
  AN("letters and digits", c -> isLetter(c) || isDigit(c)),
  NS(
      "digits, sign, and decimal point",
      c -> isDigit(c) || c == '+' || c == '-' || c == '.' || c == ','),
  AS("printable characters without digits", c -> isPrintableAscii(c) && !isDigit(c)),
  ANS("printable ASCII characters", CharacterType::isPrintableAscii),
  U(
      "characters of the declared character set",
      c -> c >= 0x20 && c != 0x7F || c == '\t' || c == '\n' || c == '\r'),
  H("hexadecimal digits", c -> isDigit(c) || c >= 'A' && c <= 'F' || c >= 'a' && c <= 'f'),
  B64(
      "Base64 characters",
      c -> isLetter(c) || isDigit(c) || c == '+' || c == '/' || c == '=' || c == '\r' || c == '\n'),
  /** Binary data; every byte is allowed. */
  B("binary data", c -> true),
  /** Nothing is said. */
  ANY("any characters", c -> true);

  private final String words;
  private final IntPredicate allowed;

  CharacterType(String words, IntPredicate allowed) {
    this.words = words;
    this.allowed = allowed;
  }

  static CharacterType parse(String cell) {
    return cell.isEmpty() ? ANY : valueOf(cell);
  }

  public String inWords() {
    return words;
  }

  /** Whether one character is allowed, by its code point. */
  public boolean allows(int character) {
    return allowed.test(character);
  }

  public boolean allows(String value) {
    return value.codePoints().allMatch(allowed);
  }

  private static boolean isLetter(int c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }

  private static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isPrintableAscii(int c) {
    return c >= 0x20 && c <= 0x7E;
  }
}
