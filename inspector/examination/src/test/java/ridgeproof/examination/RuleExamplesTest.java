package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
import ridgeproof.spec.rule.RuleRow;

class RuleExamplesTest {

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

  private static void check(Map.Entry<String, Supplier<FindingsReport>> example) {
    // Some are only consequences of a cause, which is what the report then shows.
    List<String> found =
        example.getValue().get().everyFinding().stream().map(Finding::ruleId).distinct().toList();
    assertTrue(found.contains(example.getKey()), found.toString());
  }

  @Test
  void everyRowOfTheCatalogueHasAnExampleHereOrInATestOfItsOwn() throws IOException {
    String tests = sourcesOfTests();
    Set<String> without = new TreeSet<>();
    for (RuleRow rule : SampleCard.TABLES.catalogue().rules()) {
      if (!RuleExamples.offending().containsKey(rule.id()) && !tests.contains(rule.id())) {
        without.add(rule.id());
      }
    }
    assertEquals(Set.of(), without);
  }

  private static String sourcesOfTests() throws IOException {
    StringBuilder sources = new StringBuilder();
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      for (Path file : files.filter(path -> path.toString().endsWith("Test.java")).toList()) {
        sources.append(Files.readString(file));
      }
    }
    return sources.toString();
  }

  private static List<String> ids(FindingsReport report) {
    return report.findings().stream().map(Finding::ruleId).distinct().toList();
  }
}
