package ridgeproof.examination.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.rule.RuleRow;

/** Every rule of the catalogue is shown by a file of which all findings are known. */
class RuleExamplesTest {

  private static final List<ExampleList> LISTS =
      List.of(
          RuleExamples.list(),
          DescriptiveExamples.list(),
          ConsistencyExamples.list(),
          DateExamples.list(),
          TransportExamples.list(),
          XmlExamples.list(),
          PixelExamples.list());

  @Test
  void theConformingCardsHaveNoFinding() {
    assertEquals("  READY\n", ExamplesTest.lines(SampleCard.rolled().examine()));
    assertEquals("  READY\n", ExamplesTest.lines(SampleCard.rolledTagged().examine()));
  }

  @Test
  void everyRuleOfTheCatalogueHasAnExampleOrAReasonToHaveNone() throws IOException {
    Set<String> catalogue = new TreeSet<>();
    SampleCard.TABLES.catalogue().rules().stream().map(RuleRow::id).forEach(catalogue::add);
    Set<String> shown = new TreeSet<>();
    LISTS.forEach(
        list -> list.offending().keySet().forEach(name -> shown.add(ExampleList.rule(name))));
    Set<String> excused = new TreeSet<>();
    for (String line : excuses()) {
      String[] cells = line.split(",", 3);
      assertEquals(3, cells.length, line);
      assertFalse(cells[2].isBlank(), "a reason: " + line);
      assertFalse(shown.contains(cells[0]), "has an example too: " + line);
      assertTrue(excused.add(cells[0]), "twice: " + line);
      Path test = Path.of("src/test/java/ridgeproof/examination", cells[1] + ".java");
      assertTrue(Files.readString(test).contains('"' + cells[0] + '"'), line);
    }
    shown.addAll(excused);
    assertEquals(catalogue, shown);
  }

  /** Rules without an example: the rule, the test that has to name it, and why. */
  private static List<String> excuses() throws IOException {
    List<String> lines =
        Files.readAllLines(ExamplesTest.RESOURCES.resolve("rules-without-example.csv"));
    return lines.subList(1, lines.size());
  }
}
