package ridgeproof.examination.rules.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ConsistencyRulesTest {

  @Test
  void eachRuleOfTheCatalogueIsReportedByOneOfThese() {
    assertEquals(
        List.of(
            "RP-IMG-019",
            "RP-IMG-020",
            "RP-IMG-021",
            "RP-IMG-022",
            "RP-TXN-011",
            "RP-TXN-012",
            "RP-TXN-013",
            "RP-TXN-014",
            "RP-TXN-015",
            "RP-TXN-019",
            "RP-TXN-020",
            "RP-TXN-021",
            "RP-TXN-022",
            "RP-TXN-023",
            "RP-TXN-024",
            "RP-TXN-025",
            "RP-TXN-026",
            "RP-TXN-027",
            "RP-TXN-028",
            "RP-TXN-029",
            "RP-TXN-030",
            "RP-TXN-031",
            "RP-TXN-032",
            "RP-TXN-033",
            "RP-TXN-034",
            "RP-TXN-035"),
        ConsistencyRules.all().stream().flatMap(rule -> rule.ids().stream()).sorted().toList());
  }
}
