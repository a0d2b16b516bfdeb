package ridgeproof.report.words;

import java.util.Locale;

/** A number and its noun, which agree: 1 file, 2 files. */
public final class Counted {

  private Counted() {}

  /** The number with thousands separated, and the noun with an s unless the number is one. */
  public static String of(long number, String noun) {
    return of(number, noun, noun + "s");
  }

  /** The same with a noun that has a plural of its own: 1 entry, 2 entries. */
  public static String of(long number, String one, String several) {
    // The same text as of no language, for which the JDK would first load what it knows of them.
    return String.format(Locale.US, "%,d %s", number, number == 1 ? one : several);
  }
}
