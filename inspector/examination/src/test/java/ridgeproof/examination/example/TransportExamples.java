package ridgeproof.examination.example;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.Base64;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;
import ridgeproof.examination.ControlNumbers;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;

/** What happened to a whole file on its way, and files among others. */
final class TransportExamples {

  private static final byte[] CARD = SampleCard.rolled().bytes();
  private static final byte[] TAGGED = SampleCard.rolledTagged().bytes();
  private static final String TEXT = new String(CARD, ISO_8859_1);
  private static final String MAIL = "From: station@example.org\r\nSubject: prints\r\n\r\n";

  private TransportExamples() {}

  static ExampleList list() {
    return new ExampleList("transport")
        .latin1("RP-STR-030", () -> TEXT.replace("\n", "\r\n"))
        .bytes("RP-STR-031 saved as UTF-8", () -> TEXT.getBytes(UTF_8))
        .bytes("RP-STR-031 with a mark", () -> ("\uFEFF" + TEXT).getBytes(UTF_8))
        .bytes("RP-STR-031 read as UTF-8", () -> new String(CARD, UTF_8).getBytes(UTF_8))
        .bytes("RP-STR-032", TransportExamples::sevenBit)
        .bytes("RP-STR-033", () -> TEXT.getBytes(Charset.forName("IBM037")))
        .bytes("RP-STR-034", () -> Base64.getMimeEncoder().encode(CARD))
        .latin1("RP-STR-034 mail", () -> MAIL + Base64.getMimeEncoder().encodeToString(CARD))
        .latin1("RP-STR-035", TransportExamples::quoted)
        .bytes("RP-STR-036", TransportExamples::gzipped)
        .latin1("RP-STR-037 document", () -> "%PDF-1.7\n%")
        .bytes("RP-STR-037 picture", () -> new byte[] {-1, -40, -1, -32, 0, 16})
        .latin1("RP-STR-038", () -> MAIL + TEXT)
        .latin1("RP-STR-038 mark", () -> "\u00EF\u00BB\u00BF" + TEXT)
        .bytes("RP-STR-039 half", () -> Arrays.copyOf(CARD, CARD.length / 2))
        .bytes("RP-STR-039 tagged", () -> Arrays.copyOf(TAGGED, TAGGED.length - 40))
        .latin1("RP-STR-040", () -> TEXT + TEXT)
        .bytes("RP-STR-041 zeros", () -> Arrays.copyOf(CARD, CARD.length + 300))
        .latin1("RP-STR-041 end of file", () -> TEXT + "\u001A")
        .examined("RP-TXN-060", TransportExamples::usedAgain);
  }

  private static byte[] sevenBit() {
    byte[] stripped = CARD.clone();
    for (int i = 0; i < stripped.length; i++) {
      stripped[i] &= 0x7F;
    }
    return stripped;
  }

  private static String quoted() {
    StringBuilder text = new StringBuilder();
    int column = 0;
    for (byte b : CARD) {
      int value = b & 0xFF;
      boolean plain = value > ' ' && value < 0x7F && value != '=';
      String sign =
          plain ? String.valueOf((char) value) : String.format(Locale.ROOT, "=%02X", value);
      if (column + sign.length() > 75) {
        text.append("=\r\n");
        column = 0;
      }
      text.append(sign);
      column += sign.length();
    }
    return text.toString();
  }

  private static byte[] gzipped() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(CARD);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static FindingsReport usedAgain() {
    ControlNumbers numbers = new ControlNumbers();
    FindingsReport report = SampleCard.rolled().examine();
    numbers.check("a.an2", report);
    return numbers.check("b.an2", report);
  }
}
