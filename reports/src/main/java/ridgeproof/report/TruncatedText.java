package ridgeproof.report;

import java.util.Locale;
import ridgeproof.report.words.Counted;

/** The beginning of a value that is too long to be shown whole. */
public final class TruncatedText {

  private static final int ON_SCREEN = 600;
  private static final int ON_PAPER = 240;
  private static final int NAME_ON_PAPER = 48;

  private TruncatedText() {}

  /** The text, or its beginning and how many characters follow. */
  public static String of(String text) {
    return of(text, ON_SCREEN);
  }

  /** The text from a character on, counted from 0, or the beginning of that. */
  public static String from(String text, int first) {
    return first == 0
        ? of(text)
        : String.format(
            Locale.ROOT,
            "from character %,d on: %s",
            first + 1,
            of(text.substring(text.offsetByCodePoints(0, first))));
  }

  /** Whether a text is too long to be shown whole. */
  public static boolean cuts(String text) {
    return length(text) > ON_SCREEN;
  }

  /** The same for paper, which has less room. */
  public static String onPaper(String text) {
    return of(text, ON_PAPER);
  }

  /** The beginning, for where there is room for one line. */
  public static String ofName(String name) {
    return length(name) <= NAME_ON_PAPER ? name : begin(name, NAME_ON_PAPER) + "\u2026";
  }

  private static String of(String text, int most) {
    return length(text) <= most
        ? text
        : begin(text, most) + " ... and " + Counted.of(length(text) - most, "more character");
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  private static String begin(String text, int characters) {
    return text.substring(0, text.offsetByCodePoints(0, characters));
  }
}
