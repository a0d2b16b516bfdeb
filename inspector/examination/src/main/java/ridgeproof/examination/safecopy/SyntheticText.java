package ridgeproof.examination.safecopy;

import java.util.Random;
import ridgeproof.spec.layout.CharacterType;

/** Text of the same length and the same classes of characters that says nothing. */
final class SyntheticText {

  /** A longer run of letters and digits may be a template in hexadecimal digits or Base64. */
  private static final int MAX_WORD = 32;

  private static final int[] OF_BYTES = {0x6C, 0xE9, 0x6C34, 0x20000};
  private static final String HEX = "0123456789ABCDEF";
  private static final String DIGITS = "0123456789";
  private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  private final boolean utf8;
  private final boolean mixed;
  private final boolean hexadecimal;

  /**
   * @param bytes how many the text takes in the file; more than it has characters in UTF-8 alone
   */
  SyntheticText(String text, int bytes, CharacterType characters) {
    this.utf8 = bytes != text.length();
    this.hexadecimal = characters == CharacterType.H;
    this.mixed =
        characters == CharacterType.B64
            || text.length() > MAX_WORD
                && text.indexOf(' ') < 0
                && text.chars().anyMatch(Character::isDigit)
                && text.chars().anyMatch(Character::isLetter);
  }

  String like(String text, Random random) {
    StringBuilder made = new StringBuilder(text.length());
    text.codePoints().forEach(c -> made.appendCodePoint(like(c, random)));
    return made.toString();
  }

  /** The same without chance, for a text so long that chance always meets a known word. */
  String filler(String text) {
    StringBuilder made = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c ->
                made.appendCodePoint(
                    isLetter(c) ? (c < 'a' ? 'X' : 'x') : isDigit(c) ? '0' : like(c, null)));
    return made.toString();
  }

  /** Of the characters of the text itself, for a form that few others have. */
  String ofItsOwn(String text, Random random) {
    String digits = text.replaceAll("[^0-9]", "");
    String letters = text.replaceAll("[^A-Za-z]", "");
    StringBuilder made = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              String members = isDigit(c) ? digits : letters;
              made.appendCodePoint(
                  isDigit(c) || isLetter(c)
                      ? members.charAt(random.nextInt(members.length()))
                      : like(c, random));
            });
    return made.toString();
  }

  private int like(int c, Random random) {
    if (isLetter(c) || isDigit(c)) {
      return of(c, random);
    }
    if (c < 0x80) {
      return c;
    }
    if (!utf8) {
      return OF_BYTES[1];
    }
    return OF_BYTES[c < 0x800 ? 1 : c < 0x10000 ? 2 : 3];
  }

  private int of(int c, Random random) {
    String members = hexadecimal ? HEX : mixed ? LETTERS + DIGITS : isDigit(c) ? DIGITS : LETTERS;
    char made = members.charAt(random.nextInt(members.length()));
    return c >= 'a' ? Character.toLowerCase(made) : made;
  }

  private static boolean isLetter(int c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }

  private static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }
}
