package ridgeproof.examination.cause.transport;

import java.io.ByteArrayOutputStream;
import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ridgeproof.spec.layout.CharacterType;
import ridgeproof.transaction.record.ByteSource;

/** The transaction is there, but written in a code for text: Base64, quoted-printable, EBCDIC. */
final class Wrapping {

  static final String REQUIRED = "a file that begins with 1.001: or with its XML";

  /** {@code 1.001:} and the declaration of XML. */
  private static final Pattern BASE64_BEGINNING =
      Pattern.compile("(?<![^\\r\\n])(MS4wMDE6|PD94bWwg)");

  private static final int SEARCHED = 64 * 1024;
  private static final String QUOTED = "RP-STR-035";
  private static final int SOFT_BREAK = '=';

  private Wrapping() {}

  static Optional<TransportDamage> base64(Suspect suspect) {
    ByteSource source = suspect.source();
    if (suspect.reading().hasRecords()) {
      return Optional.empty();
    }
    String head = source.latin1(0, Math.min(source.length(), SEARCHED));
    Matcher beginning = BASE64_BEGINNING.matcher(head);
    if (!beginning.find()) {
      return Optional.empty();
    }
    int start = beginning.start();
    int end = start;
    while (source.has(end, 1) && CharacterType.B64.allows(source.byteAt(end))) {
      end++;
    }
    byte[] decoded = Base64.getMimeDecoder().decode(padded(source.latin1(start, end - start)));
    return Optional.of(
        TransportDamage.instead(
            "RP-STR-034",
            String.format(
                Locale.ROOT,
                "%sa transaction of %,d bytes in Base64",
                start > 0 ? "a message that contains " : "",
                decoded.length),
            REQUIRED));
  }

  /** Without the rest of a group that was cut, which the decoder would refuse. */
  private static String padded(String text) {
    StringBuilder code = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '=') {
        break;
      }
      if (c != '\r' && c != '\n') {
        code.append(c);
      }
    }
    code.setLength(code.length() - (code.length() % 4 == 1 ? 1 : 0));
    return code.toString();
  }

  /** Separators are written as =1D and the like. */
  static Optional<TransportDamage> quotedPrintable(Suspect suspect) {
    ByteSource source = suspect.source();
    int start = quotedStart(source);
    if (start < 0) {
      return Optional.empty();
    }
    Reading undone = suspect.read(unquoted(source, start));
    String observed = "separators written as =1D, =1C";
    String required = "GS (0x1D), FS (0x1C)";
    return Optional.of(
        undone.isWhole()
            ? TransportDamage.undone(QUOTED, observed, required, undone, true)
            : TransportDamage.instead(QUOTED, observed, required));
  }

  private static int quotedStart(ByteSource source) {
    String head = source.latin1(0, Math.min(source.length(), SEARCHED));
    int start = head.indexOf("1.001:");
    if (start < 0) {
      return -1;
    }
    int end = start + "1.001:".length();
    while (end < head.length() && Character.isDigit(head.charAt(end))) {
      end++;
    }
    return head.startsWith("=1D", end) ? start : -1;
  }

  private static ByteSource unquoted(ByteSource source, int start) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(source.length() - start);
    int i = start;
    while (i < source.length()) {
      int value = source.byteAt(i);
      if (value != SOFT_BREAK) {
        out.write(value);
        i++;
      } else if (source.startsWith(i + 1, '\r', '\n')) {
        i += 3;
      } else if (source.startsWith(i + 1, '\n')) {
        i += 2;
      } else {
        int code = source.has(i + 1, 2) ? hex(source.latin1(i + 1, 2)) : -1;
        out.write(code < 0 ? value : code);
        i += code < 0 ? 1 : 3;
      }
    }
    return ByteSource.of(out.toByteArray());
  }

  private static int hex(String digits) {
    int high = Character.digit(digits.charAt(0), 16);
    int low = Character.digit(digits.charAt(1), 16);
    return high < 0 || low < 0 ? -1 : high * 16 + low;
  }

  static Optional<TransportDamage> ebcdic(Suspect suspect) {
    // 1.001: and the declaration of XML as a mainframe writes them.
    if (suspect.source().startsWith(0, 0xF1, 0x4B, 0xF0, 0xF0, 0xF1, 0x7A)) {
      return ebcdic("1.001: in EBCDIC (F1 4B F0 F0 F1 7A)");
    }
    return suspect.source().startsWith(0, 0x4C, 0x6F, 0xA7, 0x94, 0x93)
        ? ebcdic("<?xml in EBCDIC (4C 6F A7 94 93)")
        : Optional.empty();
  }

  private static Optional<TransportDamage> ebcdic(String observed) {
    return Optional.of(TransportDamage.instead("RP-STR-033", observed, REQUIRED));
  }
}
