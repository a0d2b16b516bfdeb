package ridgeproof.imagery.blank;

import java.nio.charset.StandardCharsets;
import java.util.function.BiPredicate;

/**
 * Comments of codestreams without what they say. The key-value lines of fingerprint software
 * (common practice) keep those that are harmless; all else keeps its length alone.
 */
final class CommentRedactor {

  private static final String FIRST_KEY = "NIST_COM ";
  private static final char MASK = 'x';

  private final BiPredicate<String, String> harmless;

  CommentRedactor(BiPredicate<String, String> harmless) {
    this.harmless = harmless;
  }

  /** As many bytes as the text has. */
  byte[] mask(String text) {
    StringBuilder masked = new StringBuilder(text.length());
    boolean keyed = text.startsWith(FIRST_KEY);
    int start = 0;
    while (start < text.length()) {
      int newline = text.indexOf('\n', start);
      int end = newline < 0 ? text.length() : newline;
      String line = text.substring(start, end);
      masked.append(keyed && isHarmless(line) ? line : String.valueOf(MASK).repeat(line.length()));
      if (newline >= 0) {
        masked.append(keyed ? '\n' : MASK);
      }
      start = end + 1;
    }
    return masked.toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  private boolean isHarmless(String line) {
    int blank = line.indexOf(' ');
    return blank > 0 && harmless.test(line.substring(0, blank), line.substring(blank + 1));
  }
}
