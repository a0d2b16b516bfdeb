package ridgeproof.examination.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.spec.rule.RuleRow;

/** Every rule of the catalogue is shown by a file of which all findings are known. */
class RuleExamplesTest {

  private static final Path RESOURCES = Path.of("src/test/resources/ridgeproof/examination");
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
    assertEquals("  READY\n", lines(SampleCard.rolled().examine()));
    assertEquals("  READY\n", lines(SampleCard.rolledTagged().examine()));
  }

  /**
   * Each example has exactly the findings that are listed for it: rule, place, what was found and
   * what is required. Where a change is meant, {@code -Dridgeproof.examples=write} writes the lists
   * anew, to be read line by line before they are committed.
   */
  @TestFactory
  Stream<DynamicTest> eachExampleHasItsFindingsAndNoOthers() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (ExampleList list : LISTS) {
      if (System.getProperty("ridgeproof.examples", "").equals("write")) {
        write(list);
      }
      Map<String, String> listed = listed(list);
      assertEquals(listed.keySet(), list.offending().keySet(), list.name());
      list.offending()
          .forEach(
              (name, example) ->
                  tests.add(
                      DynamicTest.dynamicTest(
                          name, () -> hasItsFindings(name, example, listed.get(name)))));
    }
    return tests.stream();
  }

  private static void hasItsFindings(
      String name, Supplier<FindingsReport> example, String expected) {
    String found = lines(example.get());
    assertEquals(expected, found);
    assertTrue(found.contains(" " + ExampleList.rule(name) + " "), found);
  }

  @TestFactory
  Stream<DynamicTest> theOtherSideOfTheLineIsNotReported() {
    return LISTS.stream()
        .flatMap(list -> list.conforming().entrySet().stream())
        .map(
            example ->
                DynamicTest.dynamicTest(
                    example.getKey(),
                    () ->
                        assertFalse(
                            rules(example.getValue().get())
                                .contains(ExampleList.rule(example.getKey())))));
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
    List<String> lines = Files.readAllLines(RESOURCES.resolve("rules-without-example.csv"));
    return lines.subList(1, lines.size());
  }

  private static Path file(ExampleList list) {
    return RESOURCES.resolve("examples").resolve(list.name() + ".txt");
  }

  private static void write(ExampleList list) throws IOException {
    StringBuilder text = new StringBuilder();
    list.offending()
        .forEach((name, example) -> text.append(name).append('\n').append(lines(example.get())));
    Files.writeString(file(list), text);
  }

  /** The examples of the list with their lines, which are set in. */
  private static Map<String, String> listed(ExampleList list) throws IOException {
    Map<String, String> listed = new LinkedHashMap<>();
    String name = "";
    for (String line : Files.readAllLines(file(list))) {
      if (line.startsWith(" ")) {
        listed.merge(name, line + "\n", String::concat);
      } else {
        name = line;
      }
    }
    return listed;
  }

  /** The verdict, and a line for each finding, consequences of a cause too. */
  private static String lines(FindingsReport report) {
    String verdict = "  " + report.verdict() + "\n";
    return report.everyFinding().stream()
        .map(
            finding ->
                String.format(
                    Locale.ROOT,
                    "  %s %s %s: %s; %s%s%n",
                    finding.severity(),
                    finding.ruleId(),
                    place(finding.location()),
                    finding.observed().text(),
                    finding.required(),
                    finding.causedBy().map(cause -> " <- " + cause.ruleId()).orElse("")))
        .collect(Collectors.joining("", verdict, ""))
        .replace(System.lineSeparator(), "\n");
  }

  private static String place(Location place) {
    StringBuilder text = new StringBuilder("file");
    place.record().ifPresent(record -> text.append(" record ").append(record));
    place.field().ifPresent(field -> text.append(" field ").append(field));
    place.subfield().ifPresent(number -> text.append(" subfield ").append(number));
    place.item().ifPresent(number -> text.append(" item ").append(number));
    place.position().ifPresent(code -> text.append(" position ").append(code));
    place
        .bytes()
        .ifPresent(
            bytes -> text.append(" at ").append(bytes.offset()).append('+').append(bytes.length()));
    return text.toString();
  }

  private static Set<String> rules(FindingsReport report) {
    return report.everyFinding().stream().map(Finding::ruleId).collect(Collectors.toSet());
  }
}
