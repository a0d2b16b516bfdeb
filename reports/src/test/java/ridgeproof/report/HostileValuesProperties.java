package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ridgeproof.report.data.SarifReport;
import ridgeproof.transaction.record.CharacterEncoding;

/** Whatever stands in a field, it does nothing in any form of the report. */
@Tag("slow")
@net.jqwik.api.Tag("slow") // of the properties; the other of the tests
class HostileValuesProperties {

  private static final List<String> ATTACKS =
      List.of(
          "<img src=x onerror=alert(7)>",
          "</style><script>alert(7)</script>",
          "\"><svg onload=alert(7)>",
          "' autofocus onfocus='alert(7)",
          "javascript:alert(7)",
          "<!--",
          "]]>",
          "&lt;b&gt;&#x3c;",
          "${7*7} #{7*7} {{7*7}} @{7}",
          "=HYPERLINK(\"http://tide.invalid\")",
          "+7",
          "-7",
          "@SUM(A1)",
          "a,b\"c\"\r\nd",
          "`` ` code ``` [x](http://tide.invalid) **b** | # h",
          "@pilot #7 www.tide.invalid",
          "\u001b[31mred\u001b]0;title\u0007",
          "\u0000\u0008\u007f\u0085\u009b",
          "\u202egnp.exe\u2066\u200f\u200b\ufeff",
          "\u00c3\u0028 \u00ff\u00fe",
          "\ud83d\udea2\ue000\ufffe",
          "x".repeat(5000),
          "%s%n%d \\ \\u0041 $1",
          "\n\r\t");

  /** What our own templates write, and nothing else. */
  private static final Pattern TAG =
      Pattern.compile(
          "<(?:!DOCTYPE html|/?(?:html|head|meta|title|style|body|a|header|main|section|footer|nav"
              + "|article|figure|figcaption|h[123]|p|span|b|strong|small|br|div|dl|dt|dd|ol|ul|li"
              + "|table|caption|thead|tbody|tr|th|td|input|label|svg|desc|defs|pattern|path|rect|g"
              + "|text|circle|image|details|summary|i|fieldset|legend|select|option)(?: (?:charset|http-equiv|content|name|lang|class|id|href"
              + "|aria-[a-z]+|role|scope|type|for|value|viewBox|width|height|x|y|rx|cx|cy|r|d|fill"
              + "|transform|patternUnits|patternTransform|preserveAspectRatio)=\"[^\"<>]*\")*(?: open| checked| selected)? ?/?)>");

  private static final Pattern LINK = Pattern.compile("href=\"([^\"]*)\"");
  private static final Pattern THUMBNAIL =
      Pattern.compile(" href=\"data:image/png;base64,[A-Za-z0-9+/]+=*\"");
  private static final Pattern STYLE = Pattern.compile("(?s)<style>.*?</style>");

  record Hostile(CharacterEncoding encoding, List<String> values) {}

  @Provide
  Arbitrary<Hostile> hostile() {
    Arbitrary<String> noise = Arbitraries.strings().all().ofMaxLength(30);
    Arbitrary<String> value =
        Combinators.combine(Arbitraries.of(ATTACKS), noise)
            .flatAs((attack, other) -> Arbitraries.of(attack, attack + other, other + attack));
    return Combinators.combine(
            Arbitraries.of(CharacterEncoding.class), value.list().ofMinSize(4).ofMaxSize(12))
        .as(Hostile::new);
  }

  @Property(tries = 40)
  void everyFormIsInert(@ForAll("hostile") Hostile hostile) throws IOException {
    byte[] bytes = card(hostile).bytes();
    String name = hostile.values().get(0).replace("\u0000", "");
    Renderings renderings = Renderings.of(name, bytes);
    for (boolean personal : new boolean[] {false, true}) {
      check(renderings.with(new RenderOptions(personal, false, 80)));
    }
  }

  @Test
  void everyAttackAloneInEveryFieldIsInert() throws IOException {
    for (String attack : ATTACKS) {
      for (CharacterEncoding encoding : CharacterEncoding.values()) {
        byte[] bytes = card(new Hostile(encoding, List.of(attack))).bytes();
        check(Renderings.of(attack, bytes).with(new RenderOptions(true, false, 80)));
      }
    }
  }

  /** Fewer tries than for the other forms: each PDF is laid out on paper. */
  @Property(tries = 5)
  void aPdfIsInert(@ForAll("hostile") Hostile hostile) {
    checkPdf(hostile);
  }

  @Test
  void allAttacksTogetherMakeAnInertPdf() {
    for (CharacterEncoding encoding : List.of(CharacterEncoding.ASCII, CharacterEncoding.UTF_8)) {
      checkPdf(new Hostile(encoding, ATTACKS));
    }
  }

  private static void checkPdf(Hostile hostile) {
    String name = hostile.values().get(0).replace("\u0000", "");
    byte[] pdf =
        Renderings.of(name, card(hostile).bytes()).pdf(new RenderOptions(true, false, 80, true));
    assertEquals("", active(PdfText.of(pdf)).replace("\r", ""));
    assertEquals(Set.of(), PdfText.acting(pdf));
    assertTrue(PdfText.unbroken(pdf).contains("Record3:Type-14"), "a value has cut the document");
    assertTrue(
        PdfText.of(pdf).contains(ReportPhrases.CAUTIONS.get(0)), "a value has cut the document");
  }

  /** Values in turn in every field of the header, the particulars and the prints. */
  private static PilotCard card(Hostile hostile) {
    PilotCard card = new PilotCard(hostile.encoding());
    if (hostile.encoding() != CharacterEncoding.ASCII) {
      card.header(15, hostile.encoding().code() + "\u001fset\u001f");
    }
    int n = 0;
    for (int field = 4; field <= 18; field++) {
      if (field != 15) {
        card.header(field, hostile.values().get(n++ % hostile.values().size()));
      }
    }
    for (int field = 3; field <= 98; field++) {
      card.particular(field, hostile.values().get(n++ % hostile.values().size()));
    }
    card.particular(
        67, hostile.values().get(0) + "\u001f" + hostile.values().get(hostile.values().size() - 1));
    card.particular(2102, hostile.values().get(0));
    card.particular(84, "3\u001f" + hostile.values().get(0));
    for (int field : new int[] {3, 4, 5, 8, 9, 10, 11, 12, 14, 15, 20, 22, 30, 200}) {
      card.print(field, hostile.values().get(n++ % hostile.values().size()));
    }
    return card.inOrder(List.of(1, 2, 13)).brightened(1);
  }

  private static void check(Map<String, String> forms) throws IOException {
    for (String form :
        List.of(
            "text",
            "ticket",
            "ticket markdown",
            "compare",
            "layout",
            "csv",
            "html",
            "summary",
            "compare html",
            "compare html with images",
            "ticket html")) {
      assertEquals("", active(forms.get(form)), form);
    }
    for (String form : List.of("json", "sarif", "compare json")) {
      assertTrue(forms.get(form).chars().allMatch(c -> c == '\n' || c >= ' ' && c <= 0x7F), form);
      JsonNode parsed = Reports.parse(forms.get(form));
      assertTrue(parsed.isObject(), form);
    }
    checkPage(forms.get("html"));
    checkPage(forms.get("ticket html"));
    checkPage(forms.get("summary"));
    checkPage(forms.get("compare html"));
    checkPage(THUMBNAIL.matcher(forms.get("compare html with images")).replaceAll(""));
    assertEquals(Set.of(), Reports.objectionsToComparison(forms.get("compare json")));
    checkSheet(forms.get("csv"));
    checkMarkdown(forms.get("ticket markdown"));
  }

  /** Characters that a terminal or a reader could obey. */
  private static String active(String text) {
    return text.replaceAll("[^\\p{Cc}\\p{Cf}\\p{Co}\\p{Cn}\\p{Cs}\\u2028\\u2029]|\n", "");
  }

  private static void checkPage(String page) {
    String text = STYLE.matcher(page).replaceFirst("");
    String rest = TAG.matcher(text).replaceAll("");
    assertEquals(-1, rest.indexOf('<'), () -> rest.substring(Math.max(0, rest.indexOf('<') - 80)));
    LINK.matcher(text)
        .results()
        .map(link -> link.group(1))
        .forEach(link -> assertTrue(link.startsWith("#") || link.equals("page.html"), link));
    assertTrue(page.contains("default-src &#39;none&#39;"), page.substring(0, 400));
  }

  private static void checkSheet(String sheet) throws IOException {
    try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(sheet))) {
      for (CSVRecord row : parser) {
        assertEquals(21, row.size(), row.toString());
        row.forEach(cell -> assertFalse(cell.matches("[=+@-].*"), cell));
      }
    }
  }

  /** Outside code spans only escaped punctuation and our own list and heading marks are left. */
  private static void checkMarkdown(String markdown) {
    for (String line : markdown.split("\n")) {
      String own = line.replaceFirst("^(#{1,3} |- )", "");
      String rest = withoutCode(own).replaceAll("\\\\[\\\\`*_{}\\[\\]<>#|~&@:!$^=]", "");
      assertTrue(rest.replace(":", "").matches("[^\\\\`*_{}\\[\\]<>#|~&@!$^=]*"), line);
      assertTrue(!rest.contains("://") && !rest.contains("alert("), line);
    }
  }

  /** The line without its code spans, as CommonMark 0.31 section 6.1 finds them. */
  private static String withoutCode(String line) {
    StringBuilder rest = new StringBuilder();
    int at = 0;
    while (at < line.length()) {
      if (line.charAt(at) == '\\' && at + 1 < line.length()) {
        rest.append(line, at, at + 2);
        at += 2;
      } else if (line.charAt(at) == '`') {
        int run = run(line, at);
        int close = at + run;
        while (close < line.length() && (line.charAt(close) != '`' || run(line, close) != run)) {
          close += line.charAt(close) == '`' ? run(line, close) : 1;
        }
        assertTrue(close < line.length(), "a code span is left open: " + line);
        at = close + run;
      } else {
        rest.append(line.charAt(at++));
      }
    }
    return rest.toString();
  }

  private static int run(String line, int start) {
    int end = start;
    while (end < line.length() && line.charAt(end) == '`') {
      end++;
    }
    return end - start;
  }

  @Test
  void theNameOfAFileBecomesAHarmlessReference() {
    assertEquals("a%20b%2F%2E%2E%3Fc.an2".replace("%2E", "."), SarifReport.uri("a b/..?c.an2"));
    assertEquals(
        "%E2%80%AE",
        SarifReport.uri(
            new String("\u202e".getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8)));
  }
}
