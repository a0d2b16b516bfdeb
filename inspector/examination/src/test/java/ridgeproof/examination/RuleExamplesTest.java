package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.finding.Finding;
import ridgeproof.spec.RuleRow;

class RuleExamplesTest {

  /** Rules that report more than one thing of the same departure, and why. */
  private static final Map<String, Set<String>> COMPANIONS =
      Map.ofEntries(
          // What is damaged so that a record or field is lost also lacks what the record or field
          // would have said.
          Map.entry("RP-STR-005", Set.of("RP-FLD-005")),
          Map.entry("RP-STR-009", Set.of("RP-STR-004")),
          Map.entry("RP-STR-023", Set.of("RP-COD-001")));

  @Test
  void theConformingCardsHaveNoFinding() {
    assertEquals(List.of(), ids(SampleCard.rolled().examine()));
    assertEquals(List.of(), ids(SampleCard.rolledTagged().examine()));
  }

  @TestFactory
  Stream<DynamicTest> eachRuleFindsWhatItIsFor() {
    return RuleExamples.offending().entrySet().stream()
        .map(example -> DynamicTest.dynamicTest(example.getKey(), () -> check(example)));
  }

  private static void check(Map.Entry<String, Supplier<byte[]>> example) {
    List<String> found = ids(SampleCard.examine(example.getValue().get()));
    assertTrue(found.contains(example.getKey()), found.toString());
  }

  @Test
  void everyRowOfTheCatalogueHasAnExample() {
    Set<String> without = new TreeSet<>();
    for (RuleRow rule : SampleCard.TABLES.catalogue().rules()) {
      if (!RuleExamples.offending().containsKey(rule.id())) {
        without.add(rule.id());
      }
    }
    assertEquals(Set.of(), without);
  }

  private static List<String> ids(FindingsReport report) {
    return report.findings().stream().map(Finding::ruleId).distinct().toList();
  }
}
