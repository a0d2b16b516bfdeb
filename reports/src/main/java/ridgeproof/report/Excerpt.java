package ridgeproof.report;

import java.util.Locale;

/** The beginning of a value that is too long to be read on a page. */
final class Excerpt {

  private static final int MOST_CHARACTERS = 600;

  private Excerpt() {}

  /** The text, or its beginning and how many characters follow. */
  static String of(String text) {
    int length = text.codePointCount(0, text.length());
    if (length <= MOST_CHARACTERS) {
      return text;
    }
    return String.format(
        Locale.ROOT,
        "%s ... and %,d more characters",
        text.substring(0, text.offsetByCodePoints(0, MOST_CHARACTERS)),
        length - MOST_CHARACTERS);
  }
}
