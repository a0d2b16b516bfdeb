package ridgeproof.report.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import ridgeproof.report.Reports;
import ridgeproof.spec.requirement.Requirement;
import ridgeproof.spec.requirement.Requirements;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;

class RuleExportTest {

  private static final RuleExport EXPORT = new RuleExport(Reports.TABLES);
  private static final List<RuleRow> RULES = List.copyOf(Reports.TABLES.catalogue().rules());

  @Test
  void jsonHoldsEveryRuleWithItsSource() throws IOException {
    JsonNode array = new ObjectMapper().readTree(EXPORT.json(RULES));
    assertEquals(RULES.size(), array.size());
    for (int i = 0; i < RULES.size(); i++) {
      assertEquals(RULES.get(i).id(), array.get(i).get("id").asText());
      assertEquals(RULES.get(i).remedy(), array.get(i).get("remedy").asText());
      assertEquals(
          RULES.get(i).source().document(), array.get(i).get("source").get("document").asText());
    }
  }

  @Test
  void aRuleIsAnObjectWithAllThatTheCatalogueSays() {
    RuleRow rule =
        new RuleRow(
            "RP-FLD-001",
            Severity.NOTE,
            "Title",
            "Why.",
            "Do it.",
            new Source("TRADE", "capture", Source.Knowledge.COMMON_PRACTICE));
    assertEquals(
        """
        [ {
          "id" : "RP-FLD-001",
          "area" : "FLD",
          "severity" : "NOTE",
          "title" : "Title",
          "explanation" : "Why.",
          "remedy" : "Do it.",
          "source" : {
            "document" : "TRADE",
            "title" : "What practitioners of ten-print capture agree on",
            "place" : "capture",
            "known" : "common practice"
          }
        } ]""",
        EXPORT.json(List.of(rule)));
    assertEquals(
        """
        id,severity,title,explanation,remedy,document,place,known
        RP-FLD-001,NOTE,Title,Why.,Do it.,TRADE,capture,common practice
        """,
        EXPORT.csv(List.of(rule)));
  }

  @Test
  void csvIsReadBackCellByCell() throws IOException {
    List<CSVRecord> lines = read(EXPORT.csv(RULES));
    assertEquals(RULES.size(), lines.size());
    for (int i = 0; i < RULES.size(); i++) {
      RuleRow rule = RULES.get(i);
      CSVRecord line = lines.get(i);
      assertEquals(rule.id(), line.get("id"));
      assertEquals(rule.title(), line.get("title"));
      assertEquals(rule.explanation(), line.get("explanation"));
      assertEquals(rule.remedy(), line.get("remedy"));
      assertEquals(rule.source().place(), line.get("place"));
    }
  }

  @Test
  void csvQuotesWhatHoldsACommaOrAQuote() throws IOException {
    RuleRow rule =
        new RuleRow(
            "RP-FLD-001",
            Severity.NOTE,
            "one, two",
            "said \"three\"",
            "four five, \"six\"",
            new Source("ITL2015", "", Source.Knowledge.PUBLISHED));
    CSVRecord line = read(EXPORT.csv(List.of(rule))).get(0);
    assertEquals("one, two", line.get("title"));
    assertEquals("said \"three\"", line.get("explanation"));
    assertEquals("four five, \"six\"", line.get("remedy"));
  }

  private static List<CSVRecord> read(String csv) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (var parser = format.parse(new StringReader(csv))) {
      return parser.getRecords();
    }
  }

  @Test
  void theCountIsThatOfTheRequirementsThatAFileCanBreak() {
    RequirementCount count = new RequirementCount(Reports.TABLES);
    long observable =
        new Requirements(Reports.TABLES).all().stream().filter(Requirement::isObservable).count();
    assertEquals(observable, count.total());
    assertTrue(count.text().endsWith("in all   %5d  requirements%n".formatted(count.total())));
    assertEquals(Reports.TABLES.recordTypes().size() + 1, count.text().lines().count());
  }
}
