package ridgeproof.examination.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

/** What happened to a file in XML on its way is named, and what follows from it is not listed. */
class XmlTransportTest {

  private static final byte[] CARD = card();

  private static byte[] card() {
    ByteSource traditional = ByteSource.of(SampleCard.rolledTagged().bytes());
    return new XmlTransactionWriter(SampleCard.TABLES)
        .write(new TransactionReader(SampleCard.TABLES, ParseLimits.standard()).read(traditional));
  }

  private static FindingsReport examine(byte[] file) {
    ExaminationOptions options =
        ExaminationOptions.standard()
            .withDepth(Depth.STRUCTURE)
            .withToday(LocalDate.of(2026, 6, 1));
    return new Examiner(SampleCard.TABLES, ParseLimits.standard())
        .examine(ByteSource.of(file), options);
  }

  private static List<String> ids(byte[] file) {
    return examine(file).findings().stream().map(Finding::ruleId).distinct().toList();
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    return out.toByteArray();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  @Test
  void aFileThatIsCutAnywhereBehindItsFirstTagIsNamedSo() {
    int first = new String(CARD, StandardCharsets.UTF_8).indexOf("<itl:PackageInformation");
    // 2 bytes from the end: without the line end the file is whole.
    for (int length = first; length < CARD.length - 1; length += 61) {
      FindingsReport report = examine(Arrays.copyOf(CARD, length));
      Finding cause =
          report.findings().stream()
              .filter(finding -> finding.ruleId().equals("RP-STR-039"))
              .findFirst()
              .orElseThrow(() -> new AssertionError(report.findings().toString()));
      assertEquals(report.findings().get(0), cause, "cut at " + length);
    }
    assertEquals(List.of("RP-STR-039"), ids(Arrays.copyOf(CARD, CARD.length - 2)));
    assertEquals(List.of(), ids(Arrays.copyOf(CARD, CARD.length - 1)));
  }

  @Test
  void whatStandsBeforeAndBehindIsNamedAndTheRestIsRead() {
    assertEquals(List.of("RP-STR-038"), ids(joined(ascii("\r\n"), CARD)));
    assertEquals(List.of("RP-STR-038"), ids(joined(ascii("Subject: card\r\n\r\n"), CARD)));
    assertEquals(List.of("RP-STR-003"), ids(joined(new byte[128], CARD)));
    assertEquals(List.of("RP-STR-041"), ids(joined(CARD, new byte[20])));
    assertEquals(List.of("RP-STR-041"), ids(joined(CARD, new byte[] {0x1A})));
    assertEquals(List.of("RP-STR-013"), ids(joined(CARD, ascii("--\r\nSent from the harbour"))));
    assertEquals(List.of(), ids(joined(CARD, ascii("\r\n\r\n"))));
    assertEquals(List.of(), ids(joined(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}, CARD)));
  }

  @Test
  void twoTransactionsInOneFileAreOneFault() {
    assertEquals(List.of("RP-STR-040"), ids(joined(CARD, CARD)));
    String text = new String(CARD, StandardCharsets.UTF_8);
    assertEquals(
        List.of("RP-STR-040"), ids(joined(CARD, ascii(text.substring(text.indexOf("<itl:"))))));
    String one = text.substring(text.indexOf("<itl:"));
    FindingsReport report = examine(ascii("<envelope>" + one + one + "</envelope>"));
    assertEquals(List.of("RP-STR-040"), report.findings().stream().map(Finding::ruleId).toList());
    assertTrue(report.everyFinding().stream().anyMatch(f -> f.ruleId().equals("RP-XML-015")));
  }

  @Test
  void anotherCodeOfTheWholeIsNamed() {
    String text = new String(CARD, StandardCharsets.UTF_8);
    assertEquals(List.of("RP-STR-033"), ids(text.getBytes(Charset.forName("IBM037"))));
    assertEquals(List.of("RP-STR-034"), ids(Base64.getMimeEncoder().encode(CARD)));
    assertEquals(List.of("RP-XML-018"), ids(text.getBytes(StandardCharsets.UTF_16)));
    assertEquals(List.of(), ids(text.replace("UTF-8", "UTF-16").getBytes(StandardCharsets.UTF_16)));
  }

  @Test
  void aCommentThatIsNotClosedIsNoFileThatIsCutOff() {
    String text = new String(CARD, StandardCharsets.UTF_8);
    String changed = text.replaceFirst("<ansi-nist:Transaction>", "<!-- <ansi-nist:Transaction>");
    List<String> found = ids(ascii(changed));
    assertTrue(found.contains("RP-XML-001"), found.toString());
    assertTrue(!found.contains("RP-STR-039"), found.toString());
  }
}
