package ridgeproof.report.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.lang.ref.WeakReference;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.FileAccount;
import ridgeproof.report.FileFacts;
import ridgeproof.report.NotExamined;
import ridgeproof.report.PilotCard;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.Reports;
import ridgeproof.spec.layout.FieldNumber;

class FolderSummaryTest {

  private static final FieldNumber OPERATOR = new FieldNumber(2, 2102);

  private static FolderSummary summary(boolean showPersonal, FieldNumber... operatorFields) {
    return new FolderSummary(
        Reports.TABLES, new RenderOptions(showPersonal, false, 80), List.of(operatorFields));
  }

  private static PilotCard incomplete() {
    return PilotCard.ascii().without(4);
  }

  private static FindingsReport add(FolderSummary summary, int number, byte[] bytes) {
    FindingsReport report = Reports.examine(bytes, Depth.STRUCTURE);
    summary.add(
        new FileFacts("card-" + number + ".an2", bytes.length, "0".repeat(64)),
        report,
        "card-" + number + ".html");
    return report;
  }

  private static List<String> all(String pattern, String text) {
    return Pattern.compile(pattern).matcher(text).results().map(found -> found.group(1)).toList();
  }

  /** The cells of a row as words, by the heading of the row. */
  private static String row(String page, String heading) {
    String start = ">" + heading + "</th>";
    int at = page.indexOf(start);
    assertTrue(at >= 0, heading);
    return page.substring(at + start.length(), page.indexOf("</tr>", at))
        .replaceAll("<[^>]*>", " ")
        .replaceAll("\\s+", " ")
        .strip();
  }

  @Test
  void filesAreCountedByVerdictAndByRule() {
    FolderSummary summary = summary(false);
    List<FindingsReport> reports =
        List.of(
            add(summary, 1, PilotCard.ascii().bytes()),
            add(summary, 2, incomplete().bytes()),
            add(summary, 3, incomplete().without(7).bytes()),
            add(summary, 4, new byte[] {1, 2, 3}));
    String page = summary.page();
    for (Verdict verdict : Verdict.values()) {
      long expected = reports.stream().filter(report -> report.verdict() == verdict).count();
      assertEquals(expected, summary.files(verdict), verdict.name());
      assertEquals(expected * 25 + " % " + expected + " of 4", counted(page, verdict.name()));
    }
    assertEquals(1, summary.files(Verdict.UNREADABLE));
    assertTrue(
        Pattern.compile("2 of 4</span>.{0,300}RP-TXN-004", Pattern.DOTALL).matcher(page).find(),
        "two files miss a print, however many each misses");
  }

  private static String counted(String page, String verdict) {
    return row(page, "<span class=\"state\">" + verdict + "</span>")
        .replaceFirst("( of \\d+) .*", "$1");
  }

  @Test
  void theRuleThatMostFilesMetComesFirst() {
    FolderSummary summary = summary(false);
    for (int i = 0; i < 3; i++) {
      add(summary, i, new byte[] {1, 2, 3});
    }
    add(summary, 3, incomplete().bytes());
    String only = Reports.examine(new byte[] {1, 2, 3}, Depth.STRUCTURE).findings().get(0).ruleId();
    assertEquals(only, all("(RP-[A-Z]{3}-\\d{3})", summary.page()).get(0));
  }

  @Test
  void fingersAreCountedByTheFilesThatMissThem() {
    FolderSummary summary = summary(false);
    add(summary, 1, incomplete().bytes());
    add(summary, 2, incomplete().bytes());
    add(summary, 3, PilotCard.ascii().bytes());
    assertEquals(
        "right ring finger", Reports.TABLES.codes("finger-positions").find("4").get().name());
    assertTrue(row(summary.page(), "right ring finger").endsWith("67 % 2 of 3"), summary.page());
  }

  @Test
  void agenciesStationsAndOperatorsAreMaskedInOrderOfAppearance() {
    FolderSummary masked = summary(false, OPERATOR);
    FolderSummary shown = summary(true, OPERATOR);
    for (FolderSummary summary : List.of(masked, shown)) {
      add(summary, 1, capture("THP000009", "TIDE\u001fROLL\u001f77", "SPECIMEN,BEA").bytes());
      add(summary, 2, capture("THP000001", "TIDE\u001fROLL\u001f78", "SPECIMEN,ADA").bytes());
      add(summary, 3, capture("THP000009", "TIDE\u001fROLL\u001f77", "SPECIMEN,ADA").bytes());
      add(summary, 4, PilotCard.ascii().header(8, "THP000009").bytes());
    }
    String page = masked.page();
    assertEquals(List.of("agency A", "agency B"), all("\"w\">(agency [A-Z])<", page));
    assertEquals(List.of("station A", "station B"), all("\"w\">(station [A-Z])<", page));
    assertEquals(List.of("operator 1", "operator 2"), all("\"w\">(operator \\d+)<", page));
    assertTrue(row(page, "agency A").contains(" of 3"), row(page, "agency A"));
    assertTrue(row(page, "station A").contains(" of 2"), row(page, "station A"));
    assertTrue(row(page, "operator 2").contains(" of 2"), row(page, "operator 2"));
    assertTrue(row(page, "not stated in the file").contains(" of 1"), page);
    for (String value : List.of("THP0000", "TIDE ROLL", "SPECIMEN")) {
      assertFalse(page.contains(value), value);
      assertTrue(shown.page().contains(value), value);
    }
  }

  private static PilotCard capture(String agency, String equipment, String operator) {
    return PilotCard.ascii().header(8, agency).particular(67, equipment).particular(2102, operator);
  }

  @Test
  void theEquipmentOfThePrintsTellsTheStationWhereTheParticularsDoNot() {
    FolderSummary summary = summary(true);
    add(summary, 1, PilotCard.ascii().print(904, "TIDE\u001fROLL\u001f79").bytes());
    assertTrue(summary.page().contains("TIDE ROLL 79"));
  }

  @Test
  void withoutAFieldOfTheOperatorThereIsNoTableOfOperators() {
    FolderSummary summary = summary(false);
    add(summary, 1, capture("THP000009", "TIDE\u001fROLL\u001f77", "SPECIMEN,BEA").bytes());
    assertFalse(summary.page().contains("By operator"));
  }

  @Test
  void moreOriginsThanAPageTakesAreCountedTogether() {
    FolderSummary summary = summary(false);
    byte[] bytes = PilotCard.ascii().inOrder(List.of()).bytes();
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    for (int i = 0; i < OriginCounts.MOST + 7; i++) {
      String other = text.replace("THP000001", "THP1%05d".formatted(i));
      add(summary, i, other.getBytes(StandardCharsets.ISO_8859_1));
    }
    String page = summary.page();
    assertEquals(OriginCounts.MOST, all("(>agency [A-Z]+<)", page).stream().distinct().count());
    assertTrue(row(page, "others").contains(" of 7"), row(page, "others"));
  }

  @Test
  void everyLinkLeadsToAPageOrAnAnchorAndThePolicyAdmitsTheStyle() throws Exception {
    FolderSummary summary = summary(false, OPERATOR);
    add(summary, 1, capture("THP000009", "TIDE\u001fROLL\u001f77", "SPECIMEN,BEA").bytes());
    add(summary, 2, incomplete().bytes());
    String page = summary.page();
    List<String> anchors = all(" id=\"([^\"]*)\"", page);
    assertEquals(anchors.stream().distinct().toList(), anchors);
    List<String> links = all(" href=\"([^\"]*)\"", page);
    assertTrue(links.containsAll(List.of("card-1.html", "card-2.html")), links.toString());
    for (String link : links) {
      assertTrue(link.startsWith("card-") || anchors.contains(link.substring(1)), link);
    }
    String style = all("(?s)<style>(.*?)</style>", page).get(0);
    String hash =
        Base64.getEncoder()
            .encodeToString(
                MessageDigest.getInstance("SHA-256")
                    .digest(style.getBytes(StandardCharsets.UTF_8)));
    assertTrue(page.contains("style-src &#39;sha256-" + hash + "&#39;"), "another style");
    assertFalse(page.contains("<script") || page.contains(" style=\""), "active parts");
  }

  @Test
  void aFileThatCouldNotBeOpenedIsNamedAndNotCounted() {
    FolderSummary summary = summary(false);
    add(summary, 1, incomplete().bytes());
    summary.add(new NotExamined("<b>locked.an2", "permission denied"));
    String page = summary.page();
    assertTrue(page.contains("&lt;b&gt;locked.an2"), page);
    assertTrue(page.contains("of 1 file "), page);
  }

  @Test
  void nothingButASafeNameIsTakenForAPage() {
    FolderSummary summary = summary(false);
    FindingsReport report = Reports.examine(new byte[] {1}, Depth.STRUCTURE);
    for (String name :
        List.of("javascript:alert(7)", "../x.html", "//x", "a b", "", ".html", "-x", "a/b")) {
      assertThrows(
          IllegalArgumentException.class,
          () -> summary.add(Reports.facts(new byte[] {1}), report, name),
          name);
    }
  }

  @Test
  void noReportIsKept() {
    FolderSummary summary = summary(true, OPERATOR);
    List<WeakReference<FindingsReport>> reports = new ArrayList<>();
    byte[] bytes = capture("THP000009", "TIDE\u001fROLL\u001f77", "SPECIMEN,BEA").bytes();
    for (int i = 0; i < 40; i++) {
      reports.add(new WeakReference<>(add(summary, i, bytes)));
    }
    System.gc();
    assertEquals(0, reports.stream().filter(report -> report.get() != null).count());
    assertTrue(summary.page().contains("card-39.html"));
  }

  @Test
  void sharesAreNeverRoundedToAllOrToNone() {
    FolderSummary summary = summary(false);
    byte[] bytes = PilotCard.ascii().inOrder(List.of()).bytes();
    FindingsReport report = Reports.examine(bytes, Depth.STRUCTURE);
    for (int i = 0; i < 300; i++) {
      summary.add(Reports.facts(bytes), report, "card-" + i + ".html");
    }
    add(summary, 300, new byte[] {1, 2, 3});
    assertTrue(counted(summary.page(), "UNREADABLE").startsWith("&lt; 1 %"), summary.page());
  }

  private static PilotCard captured(String day, String equipment) {
    return PilotCard.ascii().print(5, day).particular(67, equipment);
  }

  @Test
  void filesAreListedWorstFirstAndInOtherOrders() {
    FolderSummary summary = summary(false);
    add(summary, 1, captured("20260105", "TIDE\u001fROLL\u001f77").bytes());
    add(summary, 2, captured("20260302", "TIDE\u001fROLL\u001f78").without(4).bytes());
    add(summary, 3, new byte[] {1, 2, 3});
    String page = summary.page();
    assertEquals(List.of("3", "2", "1"), order(page, "worst"));
    assertEquals(List.of("1", "2", "3"), order(page, "name"));
    assertEquals("2", order(page, "day").get(0));
    assertEquals("1", order(page, "station").get(0));
  }

  private static List<String> order(String page, String key) {
    int start = page.indexOf("<table class=\"files order-" + key + "\"");
    assertTrue(start > 0, key);
    return all("href=\"card-(\\d).html\"", page.substring(start, page.indexOf("</table>", start)));
  }

  @Test
  void aRuleLeadsToItsFilesAndTheListIsPickedByIt() {
    FolderSummary summary = summary(false);
    add(summary, 1, PilotCard.ascii().bytes());
    add(summary, 2, incomplete().bytes());
    String page = summary.page();
    String rule = page.substring(page.indexOf("RP-TXN-004 "));
    String files = rule.substring(0, rule.indexOf("</details>"));
    assertEquals(List.of("card-2.html"), all("href=\"([^\"]*)\"", files));
    assertTrue(page.contains("<option value=\"RP-TXN-004\">"), page);
    assertTrue(
        page.contains(
            "option[value=\"RP-TXN-004\"]:checked) tbody tr:not(.RP-TXN-004) { display: none; }"));
    assertTrue(
        Pattern.compile(
                "<tr class=\"[^\"]*RP-TXN-004[^\"]*\"><th scope=\"row\"><a class=\"v\" href=\"card-2")
            .matcher(page)
            .find());
  }

  @Test
  void theTrendCountsFilesByTheirDayOfCapture() {
    FolderSummary summary = summary(false);
    for (int i = 0; i < 3; i++) {
      add(summary, i, captured("20260302", "TIDE\u001fROLL\u001f77").bytes());
    }
    add(summary, 3, captured("20260228", "TIDE\u001fROLL\u001f77").bytes());
    String page = summary.page();
    assertTrue(row(page, "2026-03-02").startsWith("3 "), row(page, "2026-03-02"));
    assertTrue(row(page, "2026-02-28").startsWith("1 "), row(page, "2026-02-28"));
    assertFalse(page.contains("First-time acceptance"));
  }

  @Test
  void theTextEndsWithTheWorstFilesAndTheCommonestRules() {
    FolderDigest digest = new FolderDigest();
    for (byte[] bytes : List.of(PilotCard.ascii().bytes(), incomplete().bytes(), new byte[] {7})) {
      digest.add(Reports.facts(bytes), Reports.examine(bytes, Depth.STRUCTURE));
    }
    String text = digest.text(new FileAccount(3, List.of(new NotExamined("notes.txt", "text"))));
    assertTrue(text.contains("4 files: 3 examined, 1 not examined."), text);
    assertTrue(text.contains("RP-TXN-004"), text);
    assertTrue(text.indexOf("  UNREADABLE") < text.indexOf("  HOLD"), text);
  }

  @Test
  void aSheetOfFilesHasARowForEach() throws Exception {
    StringWriter out = new StringWriter();
    FilesCsv csv = new FilesCsv(out);
    for (byte[] bytes : List.of(PilotCard.ascii().bytes(), incomplete().bytes())) {
      csv.add(Reports.facts(bytes), Reports.examine(bytes, Depth.STRUCTURE));
    }
    csv.add(List.of(new NotExamined("notes.txt", "not a transaction")));
    List<String> lines = out.toString().lines().toList();
    assertEquals(4, lines.size());
    assertTrue(lines.get(0).startsWith("file,sha256,bytes,verdict,blocking"), lines.get(0));
    assertTrue(lines.get(2).contains("RP-TXN-004"), lines.get(2));
    assertTrue(lines.get(3).contains("NOT EXAMINED"), lines.get(3));
    String unquoted = lines.get(3).replaceAll("\"[^\"]*\"", "");
    assertEquals(
        lines.get(0).chars().filter(c -> c == ',').count(),
        unquoted.chars().filter(c -> c == ',').count());
  }
}
