package ridgeproof.report;

import java.util.Locale;

/** What a document of limited length shows of a value of any length. */
final class Excerpt {

  private static final int MOST = 240;
  private static final int NAME_MOST = 48;

  private Excerpt() {}

  /** The beginning, and how much is left out. */
  static String of(String text) {
    if (text.length() <= MOST) {
      return text;
    }
    String begin = begin(text, MOST);
    return String.format(
        Locale.ROOT, "%s \u2026 and %,d more characters", begin, text.length() - begin.length());
  }

  /** The beginning, for where there is room for one line. */
  static String ofName(String name) {
    return name.length() <= NAME_MOST ? name : begin(name, NAME_MOST) + "\u2026";
  }

  private static String begin(String text, int most) {
    return text.substring(0, Character.isHighSurrogate(text.charAt(most - 1)) ? most - 1 : most);
  }
}
