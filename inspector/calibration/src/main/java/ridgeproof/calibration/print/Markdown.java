package ridgeproof.calibration.print;

import java.util.Collections;
import java.util.Locale;

/** Lines of a document, the same on every machine. */
public final class Markdown {

  private final StringBuilder text = new StringBuilder();

  public Markdown line(String format, Object... arguments) {
    text.append(arguments.length == 0 ? format : format(format, arguments)).append('\n');
    return this;
  }

  /** A heading with the empty lines around it. */
  public Markdown heading(String words) {
    return line("").line("## " + words).line("");
  }

  /** The head of a table: its first column holds words, the others numbers. */
  public Markdown head(String... names) {
    row((Object[]) names);
    return line("|---|" + String.join("", Collections.nCopies(names.length - 1, "---:|")));
  }

  public Markdown row(Object... cells) {
    text.append('|');
    for (Object cell : cells) {
      text.append(' ').append(cell).append(" |");
    }
    text.append('\n');
    return this;
  }

  public static String format(String format, Object... arguments) {
    return String.format(Locale.ROOT, format, arguments);
  }

  /** So many of so many, in percent with its sign; nothing of none. */
  public static String share(long count, long of) {
    return of == 0 ? "" : format("%.1f %%", 100.0 * count / of);
  }

  /** The name of a constant as words. */
  public static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
