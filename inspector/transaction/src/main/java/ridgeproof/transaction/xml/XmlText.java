package ridgeproof.transaction.xml;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import ridgeproof.transaction.record.ByteSource;

/** The text of an element from its bytes, which the parser has found well-formed. */
final class XmlText {

  private static final Pattern LINE_END = Pattern.compile("[ \t\r]*\n\\s*");
  private static final Pattern REFERENCE_TO_BLANK =
      Pattern.compile("&#(?:0*(?:9|10|13)|x0*[9aAdD]);");
  private static final String SECTION = "<![CDATA[";
  private static final Map<String, String> ENTITIES =
      Map.of("lt", "<", "gt", ">", "amp", "&", "quot", "\"", "apos", "'");

  private final Charset charset;

  XmlText(Charset charset) {
    this.charset = charset;
  }

  /** The text; blanks that hold a line end do not count around it, and are one blank within it. */
  String of(ByteSource raw) {
    byte[] bytes = raw.toArray();
    if (isPlain(bytes)) {
      return trimmed(decoded(bytes));
    }
    String each = new String(bytes, StandardCharsets.ISO_8859_1);
    String text = resolved(each);
    // A line end that is written as a reference is meant.
    return REFERENCE_TO_BLANK.matcher(each).find() ? text : trimmed(text);
  }

  /** Whether every byte belongs to a character of the set. */
  OptionalInt firstOdd(ByteSource raw) {
    byte[] bytes = raw.toArray();
    if (charset.equals(StandardCharsets.UTF_8)) {
      ByteBuffer in = ByteBuffer.wrap(bytes);
      java.nio.CharBuffer out = java.nio.CharBuffer.allocate(bytes.length);
      boolean odd = charset.newDecoder().decode(in, out, true).isError();
      return odd ? OptionalInt.of(in.position()) : OptionalInt.empty();
    }
    return OptionalInt.empty();
  }

  private String decoded(byte[] bytes) {
    try {
      return charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
  }

  private static boolean isPlain(byte[] bytes) {
    for (byte b : bytes) {
      if (b == '&' || b == '<' || b == '\r') {
        return false;
      }
    }
    return true;
  }

  /**
   * Without comments and instructions, with references and sections resolved.
   *
   * @param raw each byte as one character
   */
  private String resolved(String raw) {
    StringBuilder text = new StringBuilder(raw.length());
    int i = 0;
    while (i < raw.length()) {
      int end;
      if (raw.startsWith(SECTION, i)) {
        end = endOf(raw, "]]>", i);
        int from = i + SECTION.length();
        text.append(literal(raw.substring(from, Math.max(from, end - 3))));
      } else if (raw.charAt(i) == '<') {
        end = endOf(raw, raw.startsWith("<!--", i) ? "-->" : "?>", i);
      } else if (raw.charAt(i) == '&') {
        end = endOf(raw, ";", i);
        text.append(reference(raw.substring(i + 1, Math.max(i + 1, end - 1))));
      } else {
        end = i + 1;
        while (end < raw.length() && raw.charAt(end) != '<' && raw.charAt(end) != '&') {
          end++;
        }
        text.append(literal(raw.substring(i, end)));
      }
      i = end;
    }
    return text.toString();
  }

  /** Characters that stand for themselves; a parser makes any line end a line feed. */
  private String literal(String raw) {
    String lines = raw.replace("\r\n", "\n").replace('\r', '\n');
    return decoded(lines.getBytes(StandardCharsets.ISO_8859_1));
  }

  private static int endOf(String text, String mark, int from) {
    int at = text.indexOf(mark, from);
    return at < 0 ? text.length() : at + mark.length();
  }

  private static String reference(String name) {
    try {
      int number =
          name.startsWith("#x")
              ? Integer.parseInt(name.substring(2), 16)
              : name.startsWith("#") ? Integer.parseInt(name.substring(1)) : -1;
      return number >= 0
          ? Character.toString(number)
          : ENTITIES.getOrDefault(name, "&" + name + ";");
    } catch (IllegalArgumentException e) {
      return "&" + name + ";";
    }
  }

  private static String trimmed(String text) {
    int start = 0;
    while (start < text.length() && isBlank(text.charAt(start))) {
      start++;
    }
    int end = text.length();
    while (end > start && isBlank(text.charAt(end - 1))) {
      end--;
    }
    boolean before = text.substring(0, start).indexOf('\n') >= 0;
    boolean after = text.substring(end).indexOf('\n') >= 0;
    String inner = text.substring(before || start == end ? start : 0, after ? end : text.length());
    return inner.indexOf('\n') < 0 ? inner : LINE_END.matcher(inner).replaceAll(" ");
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
  }
}
