package ridgeproof.imagery.wsq.codestream;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import ridgeproof.finding.Quantity;

/**
 * The content of COM.
 *
 * @param offset of the marker in the file
 * @param text one character per byte
 * @param keyValues key and value of each line, in the order of the file, when the comment begins
 *     with {@code NIST_COM}; otherwise empty. That first line is the pair {@code NIST_COM} and the
 *     number of pairs. The first of several equal keys counts.
 */
public record WsqComment(int offset, String text, Map<String, String> keyValues) {

  private static final String FIRST_KEY = "NIST_COM ";

  public WsqComment {
    keyValues = Collections.unmodifiableMap(new LinkedHashMap<>(keyValues));
  }

  static WsqComment of(int offset, String text) {
    return new WsqComment(offset, text, keyValuesOf(text));
  }

  /** Whether the comment is a list of keys and values. */
  public boolean isKeyValues() {
    return !keyValues.isEmpty();
  }

  /** Place and size only, since the text may hold personal data. */
  @Override
  public String toString() {
    return "comment of " + Quantity.of(text.length(), "character") + " at byte " + offset;
  }

  private static Map<String, String> keyValuesOf(String text) {
    Map<String, String> pairs = new LinkedHashMap<>();
    int start = text.startsWith(FIRST_KEY) ? 0 : text.length();
    while (start < text.length()) {
      int newline = text.indexOf('\n', start);
      int end = newline < 0 ? text.length() : newline;
      String pair = text.substring(start, end).replace("\0", "").strip();
      int space = pair.indexOf(' ');
      String key = space < 0 ? pair : pair.substring(0, space);
      if (!key.isEmpty()) {
        pairs.putIfAbsent(key, space < 0 ? "" : pair.substring(space + 1).strip());
      }
      start = end + 1;
    }
    return pairs;
  }
}
