package ridgeproof.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.FileFacts;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Reports;

/** The listing of a file, line by line. */
class LayoutListingTest {

  private static final byte[] CARD = card().bytes();

  private static PilotCard card() {
    return PilotCard.ascii().inOrder(List.of(13));
  }

  private static RenderOptions showing(int width) {
    return new RenderOptions(true, false, width);
  }

  private static String listing(byte[] bytes, RenderOptions options) {
    return LayoutListing.render(
        new FileFacts("pilot\u0007.an2", bytes.length, "0"),
        Reports.examine(bytes, Depth.STRUCTURE).transaction(),
        Reports.TABLES,
        options);
  }

  /** The lines of the record that its first line begins so, up to the next empty line. */
  private static String record(byte[] bytes, int width, String begin) {
    String listing = listing(bytes, showing(width));
    int start = listing.indexOf(begin);
    int end = listing.indexOf("\n\n", start);
    return listing.substring(start, end < 0 ? listing.length() : end + 1);
  }

  private static byte[] replaced(String old, String other) {
    return new String(CARD, StandardCharsets.ISO_8859_1)
        .replace(old, other)
        .getBytes(StandardCharsets.ISO_8859_1);
  }

  @Test
  void everyByteIsInARecordAndAFieldWithItsOffset() {
    assertEquals(
        """
        pilot\\x07.an2  1,128 bytes
          offset   length  what

               0      163  Record 1: Type-1, Transaction information, tagged
               0       10  1.001   LEN  163
              10       11  1.002   VER  0500
              21       21  1.003   CNT  3 subfields
              27        3  1 | 2
              31        4  2 | 00
              36        5  14 | 13
              42       11  1.004   TOT  FAUF
              53       15  1.005   DAT  20260302
              68       16  1.007   DAI  THP000000
              84       16  1.008   ORI  THP000001
             100       17  1.009   TCN  PILOT-0001
             117       12  1.011   NSR  00.00
             129       12  1.012   NTR  00.00
             141       22  1.014   GMT  20260302101500Z

             163       37  Record 2: Type-2 IDC 00, User-defined descriptive text,
                           tagged
             163        9  2.001   LEN  37
             172        9  2.002   IDC  00
             181       19  2.018   NAM  [masked]

             200      928  Record 3: Type-14 IDC 13, Fingerprint image, tagged
             200       11  14.001  LEN  928
             211       10  14.002  IDC  13
             221        9  14.003  IMP  0
             230       24  14.004  SRC  TIDEWATER PILOTS
             254       16  14.005  FCD  20260302
             270       10  14.006  HLL  32
             280       10  14.007  VLL  24
             290        9  14.008  SLC  1
             299       11  14.009  THPS 500
             310       11  14.010  TVPS 500
             321       12  14.011  CGA  NONE
             333        9  14.012  BPX  8
             342       10  14.013  FGP  13
             352      776  14.999  DATA 768 bytes of data
        """,
        listing(CARD, RenderOptions.standard()));
  }

  @Test
  void ofAFileThatIsNoTransactionItIsSaidThatNothingCouldBeRead() {
    assertEquals(
        "pilot\\x07.an2  1 byte\n  offset   length  what\nno record could be read\n",
        listing(new byte[1], RenderOptions.standard()));
  }

  /** Values are shown where asked for, and lines are never shorter than 40 columns. */
  @Test
  void aNarrowTerminalBreaksLinesAtFortyColumns() {
    String narrow =
        """
             163       37  Record 2: Type-2 IDC
                           00, User-defined
                           descriptive text,
                           tagged
             163        9  2.001   LEN  37
             172        9  2.002   IDC  00
             181       19  2.018   NAM
                           SPECIMEN,ADA
        """;
    assertEquals(narrow, record(CARD, 10, "     163       37").replaceAll(" +\n", "\n"));
    assertEquals(narrow, record(CARD, 40, "     163       37").replaceAll(" +\n", "\n"));
    assertEquals(
        "     181       19  2.018   NAM  SPECIMEN,ADA\n", record(CARD, 46, "     181       19"));
  }

  private static byte[] repeated(int count) {
    String names =
        IntStream.rangeClosed(1, count)
            .mapToObj(number -> "S" + number)
            .collect(Collectors.joining("\u001E"));
    return card().particular(18, names).bytes();
  }

  private static List<String> subfields(int shown) {
    List<String> lines = new ArrayList<>();
    int offset = 188;
    for (int number = 1; number <= shown; number++) {
      int length = number < 10 ? 2 : 3;
      lines.add("     " + offset + "        " + length + "  S" + number);
      offset += length + 1;
    }
    return lines;
  }

  private static List<String> lines(byte[] bytes, String begin) {
    return List.of(record(bytes, 60, begin).split("\n"));
  }

  @Test
  void ofARepeatedFieldTheFirstTwentySubfieldsAreListed() {
    List<String> twentyTwo = new ArrayList<>();
    twentyTwo.add("     182       85  2.018   NAM  22 subfields");
    twentyTwo.addAll(subfields(20));
    twentyTwo.add("                                   and 2 more");
    assertEquals(twentyTwo, lines(repeated(22), "     182       85"));
  }

  @Test
  void allOfTwentySubfieldsAreListed() {
    List<String> lines = lines(repeated(20), "     181       77");
    assertEquals("     181       77  2.018   NAM  20 subfields", lines.get(0));
    assertEquals(21, lines.size());
    assertEquals("     254        3  S20", lines.get(20));
  }

  @Test
  void bytesThatBelongToNothingAreListed() {
    assertEquals(
        """
             181       19  these bytes belong to no field or record
        """,
        record(replaced("2.018:", "2;018:"), 60, "     181"));
    assertEquals(
        """
            1128        5  these bytes belong to no field or record
        """,
        record(Arrays.copyOf(CARD, CARD.length + 5), 60, "    1128"));
  }

  @Test
  void aRecordWithoutAnIdcHasNone() {
    assertEquals(
        """
             163       37  Record 2: Type-2, User-defined
                           descriptive text, tagged
             163        9  2.001   LEN  37
             181       19  2.018   NAM  SPECIMEN,ADA
             172        9  these bytes belong to no field or record
        """,
        record(replaced("2.002:", "x.002:"), 60, "     163       37"));
  }
}
