package ridgeproof.examination.rules.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class TransactionRulesTest {

  @Test
  void eachRuleOfTheCatalogueIsReportedByOneOfThese() {
    assertEquals(
        List.of(
            "RP-FLD-035",
            "RP-PTL-004",
            "RP-PTL-060",
            "RP-TXN-003",
            "RP-TXN-004",
            "RP-TXN-005",
            "RP-TXN-006",
            "RP-TXN-007",
            "RP-TXN-009",
            "RP-TXN-010",
            "RP-TXN-040",
            "RP-TXN-041",
            "RP-TXN-042",
            "RP-TXN-043",
            "RP-TXN-044",
            "RP-TXN-045",
            "RP-TXN-046",
            "RP-TXN-047",
            "RP-TXN-048",
            "RP-TXN-049",
            "RP-TXN-050",
            "RP-TXN-051",
            "RP-TXN-052",
            "RP-TXN-053",
            "RP-TXN-054",
            "RP-TXN-063"),
        TransactionRules.all().stream().flatMap(rule -> rule.ids().stream()).sorted().toList());
  }
}
