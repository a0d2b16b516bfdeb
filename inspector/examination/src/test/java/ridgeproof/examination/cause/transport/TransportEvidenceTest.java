package ridgeproof.examination.cause.transport;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.transaction.record.ByteSource;

/** What is found of what happened to a file on its way, and from where on it is found. */
class TransportEvidenceTest {

  private static final String CARD = new String(SampleCard.rolled().bytes(), ISO_8859_1);
  private static final int LENGTH = 11422;
  private static final String BEHIND = " of spaces, line ends, or end-of-file characters";

  /** The causes, each with its bytes and what was found. */
  private static List<String> causes(byte[] file) {
    return SampleCard.examine(file).findings().stream()
        .filter(finding -> finding.explains().isPresent())
        .map(
            finding ->
                finding.ruleId()
                    + finding
                        .location()
                        .bytes()
                        .map(b -> " " + b.offset() + "+" + b.length())
                        .orElse("")
                    + ": "
                    + finding.observed().text())
        .toList();
  }

  private static List<String> causes(String file) {
    return causes(file.getBytes(ISO_8859_1));
  }

  @ParameterizedTest
  @CsvSource({
    "'\r\n\r\n', 4 bytes: blank lines",
    "'\n', 1 byte: blank lines",
    "'Hello station\r\n', 15 bytes: lines of text",
    "'\tTabbed\n', 8 bytes: lines of text",
    "'~ !\n', 4 bytes: lines of text",
    "'From me on Monday\n', 18 bytes: a mail or transfer header",
    "'HTTP/1.1 200 OK\r\n\r\n', 19 bytes: a mail or transfer header",
    "'\nX-Station: 1\n', 14 bytes: a mail or transfer header",
    "'\u00EF\u00BB\u00BF', 3 bytes: a byte-order mark"
  })
  void linesOnTopAreTold(String top, String expected) {
    assertEquals(List.of("RP-STR-038 0+" + top.length() + ": " + expected), causes(top + CARD));
  }

  @Test
  void whatIsNoTextOnTopIsNotToldAsLines() {
    for (String top : List.of("\u0007\n", "\u007F\n", "\u00EF\u00BB\u00BFx\n")) {
      assertEquals(List.of(), causes(top + CARD));
    }
  }

  @Test
  void whatFillsTheFileBehindTheTransactionIsTold() {
    assertEquals(LENGTH, CARD.length());
    assertEquals(List.of("RP-STR-041 11422+1: 1 byte" + BEHIND), causes(CARD + " "));
    assertEquals(List.of("RP-STR-041 11422+5: 5 bytes" + BEHIND), causes(CARD + " \t\r\n\u001A"));
    assertEquals(List.of("RP-STR-041 11422+1: 1 byte of zeros"), causes(CARD + "\0"));
    assertEquals(List.of(), causes(CARD + "x"));
    assertEquals(List.of(), causes(CARD + "\0x"));
  }

  @Test
  void ofSeveralTransactionsTheSecondIsWhereTheyPart() {
    assertEquals(
        List.of(
            "RP-STR-040 11422+22844: "
                + "3 Type-1 records; the second transaction begins at byte 11422"),
        causes(CARD + CARD + CARD));
  }

  @Test
  void aCutFileSaysHowManyRecordsAreWhole() {
    assertEquals(
        List.of("RP-STR-039 241+59: 300 bytes; 1 record is complete of 16 listed"),
        causes(CARD.substring(0, 300)));
    assertEquals(
        List.of("RP-STR-039 10636+18: 11,421 bytes; 15 records are complete of 16 listed"),
        causes(CARD.substring(0, LENGTH - 1)));
  }

  @ParameterizedTest
  @CsvSource({
    "MS4wMDE6, a transaction of 6 bytes in Base64",
    "MS4wMDE6A, a transaction of 6 bytes in Base64",
    "MS4wMDE6AA, a transaction of 7 bytes in Base64",
    "MS4wMDE6AAA=, a transaction of 8 bytes in Base64",
    "'MS4w\r\nMDE6', ''",
    "'MS4wMDE6\r\nAAAA', a transaction of 9 bytes in Base64",
    "PD94bWwg, a transaction of 6 bytes in Base64",
    "'text\nMS4wMDE6', a message that contains a transaction of 6 bytes in Base64",
    "textMS4wMDE6, ''"
  })
  void aTransactionInBase64IsToldWithItsLength(String file, String expected) {
    assertEquals(expected.isEmpty() ? List.of() : List.of("RP-STR-034: " + expected), causes(file));
  }

  @Test
  void quotedPrintableIsUndoneWhateverItsLineEndsAndDigits() {
    List<String> quoted = List.of("RP-STR-035: separators written as =1D, =1C");
    assertEquals(quoted, causes(quoted("=\r\n", "=%02X")));
    assertEquals(quoted, causes(quoted("=\n", "=%02X")));
    assertEquals(
        List.of("RP-STR-035"),
        SampleCard.examine(quoted("=\n", "=%02X").getBytes(ISO_8859_1)).findings().stream()
            .map(finding -> finding.ruleId())
            .toList());
  }

  /** Only what was undone rightly shows what else is wrong. */
  @Test
  void whatIsWrongBesideIsSeenThroughQuotedPrintable() {
    byte[] early = SampleCard.rolled().with(2, draft -> draft.with(22, "18990214")).bytes();
    List<String> sound = rules(early);
    assertFalse(sound.isEmpty());
    for (String softBreak : List.of("=\r\n", "=\n")) {
      String quoted = quoted(new String(early, ISO_8859_1), softBreak, "=%02X");
      List<String> found = rules(quoted.getBytes(ISO_8859_1));
      assertEquals("RP-STR-035", found.get(0));
      assertEquals(sound, found.subList(1, found.size()));
    }
  }

  private static List<String> rules(byte[] file) {
    return SampleCard.examine(file).findings().stream()
        .map(finding -> finding.ruleId())
        .distinct()
        .toList();
  }

  private static String quoted(String softBreak, String code) {
    return quoted(CARD, softBreak, code);
  }

  private static String quoted(String file, String softBreak, String code) {
    StringBuilder text = new StringBuilder();
    int column = 0;
    for (char c : file.toCharArray()) {
      boolean plain = c > ' ' && c < 0x7F && c != '=';
      text.append(plain ? String.valueOf(c) : String.format(code, (int) c));
      column += plain ? 1 : 3;
      if (column > 70) {
        text.append(softBreak);
        column = 0;
      }
    }
    return text.toString();
  }

  @Test
  void xmlInEbcdicIsTold() {
    assertEquals(
        List.of("RP-STR-033: <?xml in EBCDIC (4C 6F A7 94 93)"),
        causes(new byte[] {0x4C, 0x6F, (byte) 0xA7, (byte) 0x94, (byte) 0x93, 0x40}));
  }

  @Test
  void anArchiveSaysWhetherATransactionIsInIt() throws IOException {
    byte[] other = "no transaction".getBytes(ISO_8859_1);
    byte[] card = CARD.getBytes(ISO_8859_1);
    assertEquals(
        List.of("RP-STR-036: a gzip archive with a transaction in it"), causes(gzipped(card)));
    assertEquals(List.of("RP-STR-036: a gzip archive"), causes(gzipped(other)));
    assertEquals(
        List.of("RP-STR-036: a ZIP archive with a transaction in it"), causes(zipped(card)));
    assertEquals(
        List.of("RP-STR-036: a ZIP archive (perhaps an office document)"), causes(zipped(other)));
    assertEquals(
        List.of("RP-STR-036: a ZIP archive (perhaps an office document)"),
        causes(Arrays.copyOf(zipped(card), 20)));
  }

  private static byte[] gzipped(byte[] bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OutputStream gzip = new GZIPOutputStream(out)) {
      gzip.write(bytes);
    }
    return out.toByteArray();
  }

  private static byte[] zipped(byte[] bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("specimen.an2"));
      zip.write(bytes);
    }
    return out.toByteArray();
  }

  @Test
  void lineEndsAreCounted() {
    Census census = Census.of(bytes('\r', '\n', '\n', '\r', 0x7F, 0x80, 0xFF, 0xFF));
    assertEquals(1, census.pairs());
    assertEquals(2, census.lineFeeds());
    assertEquals(2, census.returns());
    assertEquals(1, census.loneLineFeeds());
    assertEquals(1, census.loneReturns());
    assertEquals(3, census.high());
    assertEquals(2, census.count(0xFF));
    assertEquals(0.5, census.pairsByChance());
    assertEquals(0, Census.of(bytes()).pairsByChance());
    assertEquals(0, Census.of(bytes('\n', '\r')).pairs());
  }

  @Test
  void sevenBitsEndAtTheLastCharacterOfAscii() {
    assertTrue(EighthBit.isSevenBit(bytes(0, 0x7F)));
    assertFalse(EighthBit.isSevenBit(bytes(0, 0x80)));
  }

  @Test
  void compressedImagesLackLineEndsWhereTheirNeighborsAreFrequent() {
    assertTrue(LineEnds.lacksLineEnds(List.of(image(0xA0, 40, 40))));
    assertTrue(LineEnds.lacksLineEnds(List.of(image(0xD8, 20, 20), image(0xA0, 20, 20))));
    assertFalse(LineEnds.lacksLineEnds(List.of(image(0xA0, 39, 40))));
    assertFalse(LineEnds.lacksLineEnds(List.of(image(0xA0, 40, 39))));
    assertFalse(LineEnds.lacksLineEnds(List.of(image(0x00, 40, 40))), "no compressed image");
    assertTrue(LineEnds.lacksLineEnds(List.of(image(0xA0, 40, 40, '\n'))));
    assertTrue(LineEnds.lacksLineEnds(List.of(image(0xA0, 40, 40, '\r'))));
    assertFalse(LineEnds.lacksLineEnds(List.of(image(0xA0, 40, 40, '\r', '\n'))));
  }

  /** An image that begins with FF and a byte, and holds so many of 0B and of 0E. */
  private static ByteSource image(int second, int before, int behind, int... more) {
    int[] values = new int[2 + more.length + before + behind];
    values[0] = 0xFF;
    values[1] = second;
    System.arraycopy(more, 0, values, 2, more.length);
    Arrays.fill(values, 2 + more.length, 2 + more.length + before, 0x0B);
    Arrays.fill(values, 2 + more.length + before, values.length, 0x0E);
    return bytes(values);
  }

  private static ByteSource bytes(int... values) {
    byte[] bytes = new byte[values.length];
    for (int i = 0; i < values.length; i++) {
      bytes[i] = (byte) values[i];
    }
    return ByteSource.of(bytes);
  }
}
