package ridgeproof.examination;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.finding.Finding;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.testing.ReferenceFiles;

/** One finding for what happened on the way, and none for what follows from it. */
class TransportCausesTest {

  private static final byte[] TAGGED = read(Path.of("../../docs/examples/clean-flats.an2"));
  private static final byte[] BINARY = SampleCard.rolled().bytes();
  private static final String MAIL = "From: station@example.org\r\nSubject: prints\r\n\r\n";

  private record Happened(String rule, UnaryOperator<byte[]> damage) {}

  /** What can happen to any transaction. */
  private static Map<String, Happened> happenings() {
    Map<String, Happened> all = new LinkedHashMap<>();
    all.put("LF became CR LF", new Happened("RP-STR-030", text(t -> t.replace("\n", "\r\n"))));
    all.put(
        "saved as UTF-8",
        new Happened("RP-STR-031", bytes -> new String(bytes, ISO_8859_1).getBytes(UTF_8)));
    all.put(
        "saved as UTF-8 with a mark on top",
        new Happened(
            "RP-STR-031", bytes -> ("\uFEFF" + new String(bytes, ISO_8859_1)).getBytes(UTF_8)));
    all.put(
        "read as UTF-8 and saved",
        new Happened("RP-STR-031", bytes -> new String(bytes, UTF_8).getBytes(UTF_8)));
    all.put(
        "saved as UTF-16",
        new Happened("RP-STR-031", bytes -> new String(bytes, ISO_8859_1).getBytes(UTF_16)));
    all.put("highest bits lost", new Happened("RP-STR-032", TransportCausesTest::sevenBit));
    all.put(
        "EBCDIC",
        new Happened(
            "RP-STR-033",
            bytes -> new String(bytes, ISO_8859_1).getBytes(Charset.forName("IBM037"))));
    all.put("Base64", new Happened("RP-STR-034", Base64.getMimeEncoder()::encode));
    all.put(
        "a message with it in Base64",
        new Happened("RP-STR-034", b -> join(MAIL, Base64.getMimeEncoder().encode(b))));
    all.put("quoted-printable", new Happened("RP-STR-035", TransportCausesTest::quoted));
    all.put("ZIP", new Happened("RP-STR-036", TransportCausesTest::zipped));
    all.put("gzip", new Happened("RP-STR-036", TransportCausesTest::gzipped));
    all.put("a PDF", new Happened("RP-STR-037", bytes -> "%PDF-1.7\n%".getBytes(UTF_8)));
    all.put("a picture", new Happened("RP-STR-037", b -> new byte[] {-1, -40, -1, -32, 0, 16}));
    all.put("a disk image", new Happened("RP-STR-037", TransportCausesTest::diskImage));
    all.put("a mail's header on top", new Happened("RP-STR-038", bytes -> join(MAIL, bytes)));
    all.put(
        "a byte-order mark",
        new Happened("RP-STR-038", bytes -> join("\u00EF\u00BB\u00BF", bytes)));
    all.put("cut in the middle", new Happened("RP-STR-039", b -> Arrays.copyOf(b, b.length / 2)));
    all.put("cut near the end", new Happened("RP-STR-039", b -> Arrays.copyOf(b, b.length - 40)));
    all.put("twice in a file", new Happened("RP-STR-040", b -> join(latin(b), b)));
    all.put("filled with zeros", new Happened("RP-STR-041", b -> Arrays.copyOf(b, b.length + 300)));
    all.put(
        "a line end behind",
        new Happened("RP-STR-041", b -> join(latin(b), "\r\n".getBytes(UTF_8))));
    all.put(
        "an old end-of-file character behind",
        new Happened("RP-STR-041", b -> join(latin(b), new byte[] {0x1A})));
    return all;
  }

  @TestFactory
  Stream<DynamicTest> eachHappeningIsTheOnlyFinding() {
    return Stream.of(Map.entry("tagged", TAGGED), Map.entry("binary", BINARY))
        .flatMap(
            file ->
                happenings().entrySet().stream()
                    .map(
                        happened ->
                            DynamicTest.dynamicTest(
                                file.getKey() + ": " + happened.getKey(),
                                () -> isOnly(happened.getValue(), file.getValue()))));
  }

  private static void isOnly(Happened happened, byte[] clean) {
    FindingsReport report = SampleCard.examine(happened.damage().apply(clean));
    assertEquals(List.of(happened.rule()), rules(report));
    Finding cause = report.findings().get(0);
    assertTrue(cause.explains().orElse(0) > 0, "explains nothing");
    assertFalse(report.verdict() == Verdict.READY);
    long consequences =
        report.everyFinding().stream().filter(f -> f.causedBy().isPresent()).count();
    assertEquals(cause.explains().orElse(0), consequences);
  }

  /** Where no image of this file has the bytes, translating them changes nothing. */
  @Test
  void lineEndsThatBecameOneAnotherAreSeenInDamagedImages() {
    UnaryOperator<byte[]> returns = text(t -> t.replace("\n", "\r"));
    UnaryOperator<byte[]> pairs = text(t -> t.replaceAll("\r\n|\r|\n", "\r\n"));
    UnaryOperator<byte[]> feeds = text(t -> t.replaceAll("\r\n|\r", "\n"));
    assertEquals(List.of("RP-STR-030"), rules(SampleCard.examine(returns.apply(TAGGED))));
    assertEquals(List.of("RP-STR-030"), rules(SampleCard.examine(feeds.apply(TAGGED))));
    assertEquals(List.of("RP-STR-030"), rules(SampleCard.examine(pairs.apply(TAGGED))));
  }

  @Test
  void lostCarriageReturnsAreSeenByWhatImagesLack() {
    byte[] slaps = ReferenceFiles.read("type-4-slaps.an2");
    List<String> found = rules(SampleCard.examine(text(t -> t.replace("\r\n", "\n")).apply(slaps)));
    assertTrue(found.contains("RP-STR-030"), found.toString());
    assertFalse(found.contains("RP-STR-004"), found.toString());
  }

  @Test
  void whatIsWrongBesideStaysAndIsSeenThroughTheDamage() {
    byte[] early = SampleCard.rolled().with(2, r -> r.with(22, "18990214")).bytes();
    List<String> sound = rules(SampleCard.examine(early));
    assertFalse(sound.isEmpty());
    for (String name : List.of("LF became CR LF", "saved as UTF-8", "a mail's header on top")) {
      List<String> found = rules(SampleCard.examine(happenings().get(name).damage().apply(early)));
      assertTrue(found.containsAll(sound), name + ": " + found);
    }
  }

  @Test
  void twoThingsThatHappenedAreBothNamed() {
    byte[] both = join(MAIL, text(t -> t.replace("\n", "\r\n")).apply(TAGGED));
    FindingsReport report = SampleCard.examine(both);
    assertEquals(List.of("RP-STR-030", "RP-STR-038"), rules(report));
    report.findings().forEach(finding -> assertTrue(finding.explains().orElse(0) > 0));
  }

  @TestFactory
  Stream<DynamicTest> aSingleFaultOfAStationIsNotBlamedOnTheWay() {
    Map<String, byte[]> faults = new LinkedHashMap<>();
    for (int by : new int[] {-700, -9, -1, 1, 2, 9, 700}) {
      faults.put("LEN of an image off by " + by, length(TAGGED, 3, by));
    }
    faults.put("LEN of all images off by 1", length(length(length(TAGGED, 3, 1), 4, 1), 5, 1));
    faults.put("a byte of an image lost", without(TAGGED, TAGGED.length - 5000));
    faults.put("an image's byte changed", changed(TAGGED, TAGGED.length - 5000));
    faults.put("a separator lost", without(TAGGED, latin(TAGGED).indexOf("\u001D1.002:")));
    return faults.entrySet().stream()
        .map(
            fault ->
                DynamicTest.dynamicTest(
                    fault.getKey(), () -> assertNoCause(SampleCard.examine(fault.getValue()))));
  }

  @Test
  void soundFilesThatHoldLineEndsAreNotAccused() {
    String lines = "FIRST LINE\r\nSECOND LINE";
    byte[] text = SampleCard.rolled().with(2, r -> r.with(37, lines)).bytes();
    assertTrue(latin(text).contains(lines));
    assertNoCause(SampleCard.examine(text));
    assertNoCause(SampleCard.examine(BINARY));
    assertNoCause(SampleCard.examine(TAGGED));
  }

  @TestFactory
  Stream<DynamicTest> noReferenceFileIsAccused() {
    return ReferenceFiles.all().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> assertNoCause(SampleCard.examine(read(file)))));
  }

  /** A length that is edited makes a damaged file look whole. */
  @Test
  void noRemedyAdvisesToEditALength() {
    for (RuleRow rule : SampleCard.TABLES.catalogue().rules()) {
      assertFalse(rule.remedy().matches(".*\\bLEN\\b.*"), rule.id());
      assertFalse(rule.remedy().contains("edited by hand"), rule.id());
    }
    byte[] unreadable = SampleCard.rolledTagged().bytes();
    for (byte[] file :
        List.of(
            length(TAGGED, 3, 7), text(t -> t.replace("14.001:", "14.001:A")).apply(unreadable))) {
      FindingsReport report = SampleCard.examine(file);
      assertFalse(report.findings().isEmpty());
      report
          .everyFinding()
          .forEach(f -> assertFalse(f.remedy().matches(".*(\\bLEN\\b|\\.001).*"), f.remedy()));
    }
  }

  private static void assertNoCause(FindingsReport report) {
    assertEquals(
        List.of(),
        report.findings().stream()
            .filter(finding -> finding.explains().isPresent())
            .map(Finding::ruleId)
            .filter(rule -> rule.startsWith("RP-STR"))
            .toList());
  }

  private static List<String> rules(FindingsReport report) {
    return report.findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .map(Finding::ruleId)
        .distinct()
        .sorted()
        .toList();
  }

  private static UnaryOperator<byte[]> text(UnaryOperator<String> change) {
    return bytes -> change.apply(latin(bytes)).getBytes(ISO_8859_1);
  }

  private static String latin(byte[] bytes) {
    return new String(bytes, ISO_8859_1);
  }

  private static byte[] join(String top, byte[] rest) {
    return (top + latin(rest)).getBytes(ISO_8859_1);
  }

  private static byte[] sevenBit(byte[] bytes) {
    byte[] stripped = bytes.clone();
    for (int i = 0; i < stripped.length; i++) {
      stripped[i] &= 0x7F;
    }
    return stripped;
  }

  private static byte[] quoted(byte[] bytes) {
    StringBuilder text = new StringBuilder();
    int column = 0;
    for (byte b : bytes) {
      int value = b & 0xFF;
      boolean plain = value > ' ' && value < 0x7F && value != '=';
      String sign = plain ? String.valueOf((char) value) : String.format("=%02X", value);
      if (column + sign.length() > 75) {
        text.append("=\r\n");
        column = 0;
      }
      text.append(sign);
      column += sign.length();
    }
    return text.toString().getBytes(ISO_8859_1);
  }

  private static byte[] zipped(byte[] bytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("specimen.an2"));
      zip.write(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static byte[] gzipped(byte[] bytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
      gzip.write(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static byte[] diskImage(byte[] bytes) {
    byte[] image = new byte[40_000];
    System.arraycopy("CD001".getBytes(UTF_8), 0, image, 0x8001, 5);
    return image;
  }

  /** The file with the stated length of one tagged record changed. */
  private static byte[] length(byte[] file, int ordinal, int by) {
    String text = latin(file);
    int at = -1;
    for (int i = 0; i < ordinal - 2; i++) {
      at = text.indexOf("14.001:", at + 1);
    }
    int from = at + "14.001:".length();
    int to = text.indexOf('\u001D', from);
    int stated = Integer.parseInt(text.substring(from, to));
    return (text.substring(0, from) + (stated + by) + text.substring(to)).getBytes(ISO_8859_1);
  }

  private static byte[] without(byte[] file, int at) {
    byte[] shorter = Arrays.copyOf(file, file.length - 1);
    System.arraycopy(file, at + 1, shorter, at, shorter.length - at);
    return shorter;
  }

  private static byte[] changed(byte[] file, int at) {
    byte[] other = file.clone();
    other[at] ^= 0x55;
    return other;
  }

  private static byte[] read(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
