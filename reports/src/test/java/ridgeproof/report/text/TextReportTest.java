package ridgeproof.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Measure;
import ridgeproof.report.FileFacts;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Reports;
import ridgeproof.report.data.MadeFindings;

/** Everything that the report for a terminal says, line by line. */
class TextReportTest {

  private static final String CAUTIONS =
      """

      This report neither identifies anyone nor certifies the file.
      The receiving bureau's specification and your agency's policy decide what is
      accepted.
      """;

  static String expected(String name) throws IOException {
    try (InputStream in = TextReportTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String text(FindingsReport report) {
    return TextReport.render(MadeFindings.FILE, report, RenderOptions.standard());
  }

  /** The lines from one that begins so to the next empty line. */
  private static String part(String text, String begin) {
    int start = text.startsWith(begin) ? 0 : text.indexOf("\n" + begin) + 1;
    assertTrue(start > 0 || text.startsWith(begin), text);
    return text.substring(start, text.indexOf("\n\n", start) + 1);
  }

  @Test
  void theReportSaysEachThingOnce() throws IOException {
    assertEquals(expected("whole.txt"), text(MadeFindings.all()));
  }

  @Test
  void withNothingToSayOfAFileTheReportListsItsRecords() {
    assertEquals(
        """
        READY  pilot card.an2

          Nothing was found that a bureau is known to reject.
          No findings.
          1,234,567 bytes, version stated 0, read as 0502, type of transaction FAUF, 5
          records, 0 images. Checked as: the standard only; no set of prints could be
          inferred.
          Dates checked as of 2026-03-02.
          SHA-256 cccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccc

        Record 1: Type-1  Transaction information
          bytes 0 to 171, 172 bytes; 11 fields

        Record 2: Type-2, IDC 00  User-defined descriptive text
          bytes 172 to 208, 37 bytes; 3 fields

        Record 3: Type-14, IDC 02  Fingerprint image
          bytes 209 to 1135, 927 bytes; 14 fields

        Record 4: Type-14, IDC 07  Fingerprint image
          bytes 1136 to 2062, 927 bytes; 14 fields

        Record 5: Type-14, IDC 13  Fingerprint image
          bytes 2063 to 2990, 928 bytes; 14 fields
        """
            + CAUTIONS,
        text(MadeFindings.with()));
  }

  @Test
  void ofAFileThatIsNoTransactionTheReportSaysNothingOfRecords() {
    FindingsReport report = Reports.examine(new byte[1], Depth.STRUCTURE);
    String text =
        TextReport.render(new FileFacts("x.an2", 1, "0"), report, RenderOptions.standard());
    assertEquals(
        """
          This file cannot be read as a transaction.
          Findings: 1 BLOCKING.
          1 byte.
          Dates checked as of 2026-03-02.
          SHA-256 0
        """,
        part(text, "  This file"));
    assertFalse(text.contains("Record"), text);
  }

  @Test
  void whyCompletenessWasNotCheckedByTypeIsSaid() {
    FindingsReport report =
        Reports.examine(
            PilotCard.ascii().header(4, "PILOT").inOrder(List.of(2)).bytes(), Depth.STRUCTURE);
    assertEquals(
        """
          1,234,567 bytes, version 0500, type of transaction PILOT, 3 records, 1 image.
          Checked as: the standard only; no set of prints could be inferred.
          Completeness was not checked: the type of transaction is not in any published
          list.
          Dates checked as of 2026-03-02.
          SHA-256 cccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccc
        """,
        part(text(report), "  1,234,567 bytes"));
  }

  /** A line of the width asked for; the words carry the meaning, color only helps to find them. */
  @Test
  void aTerminalMayBeWideAndInColor() {
    FindingsReport report = MadeFindings.with(MadeFindings.repeated(7));
    String text = TextReport.render(MadeFindings.FILE, report, new RenderOptions(true, true, 100));
    assertEquals(
        """
        \u001B[1mRecord 2: Type-2, IDC 00  User-defined descriptive text\u001B[0m
          bytes 172 to 208, 37 bytes; 3 fields
          \u001B[33mLIKELY\u001B[0m RP-FLD-005 Invalid character
              field 2.018, subfield 1, item 1, at byte 201
              places    7: record 2 subfield 1 item 1; record 2 subfield 1 item 2; record 2 subfield 1 item
                        3; record 2 subfield 1 item 4; record 2 subfield 1 item 5; and 2 more
              found     X1; X2; X3; and 4 more
              required  letters, "-"
              why       The bureau cannot use it: RP-FLD-005.
              source    EBTS NAM 2.018, published
        """,
        part(text, "\u001B[1mRecord 2"));
    assertTrue(text.startsWith("\u001B[1m\u001B[32mREADY\u001B[0m  pilot card.an2\n"), text);
    assertTrue(text.contains("\n\u001B[1mSources\u001B[0m\n"), text);
  }

  /** A card repeats the same finding up to fourteen times. */
  @Test
  void whyIsSaidOnceForEachExplanationOfARule() {
    Finding first = MadeFindings.hostile();
    String text = text(MadeFindings.with(first, first, explained(first, "Another reason.")));
    assertEquals(
        """
        Record 5: Type-14, IDC 13  Fingerprint image
          bytes 2063 to 2990, 928 bytes; 14 fields
          ADVICE RP-COD-001 Code is not listed
              right four fingers, field 14.004, at line 17, column 9, in
              itl:B/biom:C[2]/nc:D
              found     =1+1\\x1B[31m
              required  a listed code\\u202E
              why       The bureau cannot use it: RP-COD-001.
              source    OUTSIDE table 3, disputed
          ADVICE RP-COD-001 Code is not listed
              right four fingers, field 14.004, at line 17, column 9, in
              itl:B/biom:C[2]/nc:D
              found     =1+1\\x1B[31m
              required  a listed code\\u202E
          ADVICE RP-COD-001 Code is not listed
              right four fingers, field 14.004, at line 17, column 9, in
              itl:B/biom:C[2]/nc:D
              found     =1+1\\x1B[31m
              required  a listed code\\u202E
              measured  listed codes 12.34 %
              measured  similarity 3.125 (a match needs 36.55)
              why       Another reason.
              source    OUTSIDE table 3, disputed
        """,
        part(text, "Record 5"));
    assertEquals("Sources\n  OUTSIDE   OUTSIDE\n", part(text, "Sources"));
  }

  private static Finding explained(Finding finding, String explanation) {
    return new Finding(
        finding.rule(),
        finding.severity(),
        finding.location(),
        finding.observed(),
        finding.required(),
        explanation,
        finding.remedy(),
        finding.source(),
        List.of(
            Measure.against("listed codes", 0.1234, "share", 0.5),
            Measure.against("similarity", 3.125, "", 36.55)));
  }
}
