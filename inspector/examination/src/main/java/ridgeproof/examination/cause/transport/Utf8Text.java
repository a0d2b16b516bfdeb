package ridgeproof.examination.cause.transport;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.examination.cause.Consequences;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * The file was re-encoded as text: each byte from 0x80 on became two or three, or was replaced by
 * the mark for a character that cannot be read.
 */
final class Utf8Text {

  private static final String RULE = "RP-STR-031";
  private static final String REQUIRED = "every byte as the station wrote it";
  private static final char REPLACED = '\uFFFD';
  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  /** So many marks, in bytes that are UTF-8 throughout, are in no image. */
  private static final int CERTAIN_MARKS = 16;

  /** A mark has taken the place of one to three bytes. */
  private static final int MAX_BYTES = 3;

  private Utf8Text() {}

  static Optional<TransportDamage> of(Suspect suspect) {
    if (suspect.reading().isWhole()) {
      return Optional.empty();
    }
    Optional<CharBuffer> text = text(suspect.source());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    long marks = text.get().chars().filter(c -> c == REPLACED).count();
    return marks > 0 ? replaced(suspect, marks) : widened(suspect, text.get());
  }

  private static Optional<CharBuffer> text(ByteSource source) {
    int first = source.isEmpty() ? 0 : source.byteAt(0);
    try {
      if (source.startsWith(0, 0xFF, 0xFE) || source.startsWith(0, '1', 0, '.', 0)) {
        return Optional.of(decode(StandardCharsets.UTF_16LE, source));
      }
      if (source.startsWith(0, 0xFE, 0xFF) || source.startsWith(0, 0, '1', 0, '.')) {
        return Optional.of(decode(StandardCharsets.UTF_16BE, source));
      }
      boolean begins = first == '1' || source.startsWith(0, 0xEF, 0xBB, 0xBF, '1');
      return begins && Census.of(source).high() > 0
          ? Optional.of(decode(StandardCharsets.UTF_8, source))
          : Optional.empty();
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private static CharBuffer decode(Charset charset, ByteSource source)
      throws CharacterCodingException {
    return charset.newDecoder().decode(source.asBuffer());
  }

  private static Optional<TransportDamage> widened(Suspect suspect, CharBuffer text) {
    return bytes(text)
        .map(suspect::read)
        .filter(suspect::isMendedBy)
        .map(
            undone ->
                TransportDamage.undone(
                    RULE,
                    grown(suspect.source().length(), undone.transaction().source().length()),
                    REQUIRED,
                    undone,
                    true));
  }

  private static String grown(int now, int before) {
    return String.format(Locale.ROOT, "%,d bytes that were %,d", now, before);
  }

  /** The bytes that the characters were made of; empty where one cannot have been a byte. */
  private static Optional<ByteSource> bytes(CharBuffer text) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c <= 0xFF) {
        out.write(c);
      } else if (i > 0 || c != BYTE_ORDER_MARK) {
        ByteBuffer one = WINDOWS.encode(CharBuffer.wrap(new char[] {c}));
        byte value = one.get(0);
        if (one.limit() != 1 || value == '?') {
          return Optional.empty();
        }
        out.write(value);
      }
    }
    return Optional.of(ByteSource.of(out.toByteArray()));
  }

  private static Optional<TransportDamage> replaced(Suspect suspect, long marks) {
    String observed =
        String.format(Locale.ROOT, "EF BF BD, the mark for an unknown character, %,d times", marks);
    Reading shortened = suspect.read(shortened(suspect.source()));
    if (suspect.isMendedBy(shortened)) {
      return Optional.of(TransportDamage.undone(RULE, observed, REQUIRED, shortened, false));
    }
    Optional<TransportDamage> filled =
        Shortage.of(shortened.transaction(), Utf8Text::most)
            .filled()
            .map(suspect::read)
            .filter(suspect::isMendedBy)
            .map(undone -> TransportDamage.undone(RULE, observed, REQUIRED, undone, false));
    if (filled.isPresent() || marks < CERTAIN_MARKS) {
      return filled;
    }
    return Optional.of(
        TransportDamage.lasting(
            RULE,
            observed,
            REQUIRED,
            Consequences.where(
                finding -> Transport.missesRecords(finding) || Transport.looksAtPixels(finding))));
  }

  /** Each mark as one byte, which is what most of them were. */
  private static ByteSource shortened(ByteSource source) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(source.length());
    for (int i = 0; i < source.length(); i++) {
      if (source.startsWith(i, 0xEF, 0xBF, 0xBD)) {
        out.write('?');
        i += 2;
      } else {
        out.write(source.byteAt(i));
      }
    }
    return ByteSource.of(out.toByteArray());
  }

  private static long most(LogicalRecord record) {
    return (MAX_BYTES - 1) * Census.of(record).count('?');
  }
}
