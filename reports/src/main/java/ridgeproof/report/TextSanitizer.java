package ridgeproof.report;

import java.util.Locale;

/** Makes text from a file harmless on a terminal and in a report. */
public final class TextSanitizer {

  public static final String MASKED = "[masked]";

  private TextSanitizer() {}

  /** Control and direction characters become visible escapes, so that a value cannot act. */
  public static String of(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              if (isHarmless(c)) {
                safe.appendCodePoint(c);
              } else {
                safe.append(escape(c));
              }
            });
    return safe.toString();
  }

  public static String escape(int c) {
    return c <= 0xFF
        ? String.format(Locale.ROOT, "\\x%02X", c)
        : String.format(Locale.ROOT, "\\u%04X", c);
  }

  private static boolean isHarmless(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
