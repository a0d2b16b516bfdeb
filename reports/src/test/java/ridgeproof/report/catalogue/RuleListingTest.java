package ridgeproof.report.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.report.Reports;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;

/** What {@code ridgeproof rules} lists. */
class RuleListingTest {

  private static final RuleListing LISTING = new RuleListing(Reports.TABLES);

  private static RuleRow rule(Severity severity, String place) {
    return new RuleRow(
        "RP-FLD-001",
        severity,
        "Required field is missing",
        "The bureau rejects a record without {name} ({field}).",
        "Enter {name} ({field}), and export the transaction again.",
        new Source("TRADE", place, Source.Knowledge.COMMON_PRACTICE));
  }

  @Test
  void rulesAreListedALineEach() {
    assertEquals(
        """
        RP-FLD-001  BLOCKING  Required field is missing
        RP-FLD-001  NOTE      Required field is missing
        2 rules. To explain one: ridgeproof rules ID
        """,
        LISTING.list(List.of(rule(Severity.BLOCKING, ""), rule(Severity.NOTE, ""))));
    assertEquals(
        """
        RP-FLD-001  ADVICE    Required field is missing
        1 rule. To explain one: ridgeproof rules ID
        """,
        LISTING.list(List.of(rule(Severity.ADVICE, ""))));
  }

  @Test
  void aRuleIsExplainedWithItsRemedyAndItsSource() {
    assertEquals(
        """
        RP-FLD-001  Required field is missing

          severity  LIKELY, commonly rejected, or the print may not match
          why       The bureau rejects a record without the field.
          remedy    Enter the field, and export the transaction again.
          source    What practitioners of ten-print capture agree on, capture (common
                    practice)
        """,
        LISTING.explain(rule(Severity.LIKELY, "capture")));
    assertEquals(
        "  source    What practitioners of ten-print capture agree on (common practice)",
        LISTING.explain(rule(Severity.LIKELY, "")).lines().skip(5).findFirst().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "BLOCKING, '  severity  BLOCKING, a bureau that follows the source rejects the file or'",
    "LIKELY, '  severity  LIKELY, commonly rejected, or the print may not match'",
    "ADVICE, '  severity  ADVICE, allowed, but worth checking'",
    "NOTE, '  severity  NOTE, for information'"
  })
  void eachSeveritySaysWhatItMeans(Severity severity, String line) {
    assertEquals(
        line, LISTING.explain(rule(severity, "")).lines().skip(2).findFirst().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "'{name} ({field}) is too long.', 'The field is too long.'",
    "'Enter it. {name} ({field}) comes first.', 'Enter it. The field comes first.'",
    "'Correct field {field}.', 'Correct the field.'",
    "'{field} of {record}', 'The field of the record'",
    "'Recapture {finger} ({found}); {required}', 'Recapture the finger; what is required'",
    "'Enter {name}.', 'Enter the value.'",
    "'thethe ', 'thethe '"
  })
  void placeholdersAreWords(String text, String spoken) {
    assertEquals(spoken, RuleListing.spoken(text));
  }
}
