package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.spec.rule.RuleRow;

class RuleExamplesTest {

  private static final Path LIST =
      Path.of("src/test/resources/ridgeproof/examination/rule-examples.txt");

  @Test
  void theConformingCardsHaveNoFinding() {
    assertEquals(List.of(), ids(SampleCard.rolled().examine()));
    assertEquals(List.of(), ids(SampleCard.rolledTagged().examine()));
  }

  /**
   * Each example has exactly the findings that are listed for it: rule, place, what was found and
   * what is required. Where a change is meant, {@code -Dridgeproof.examples=write} writes the list
   * anew, to be read line by line before it is committed.
   */
  @TestFactory
  Stream<DynamicTest> eachExampleHasItsFindingsAndNoOthers() throws IOException {
    if (System.getProperty("ridgeproof.examples", "").equals("write")) {
      writeList();
    }
    Map<String, String> listed = listed();
    assertEquals(listed.keySet(), RuleExamples.offending().keySet());
    return RuleExamples.offending().entrySet().stream()
        .map(
            example ->
                DynamicTest.dynamicTest(
                    example.getKey(),
                    () -> {
                      String found = lines(example.getValue().get());
                      assertEquals(listed.get(example.getKey()), found);
                      assertTrue(found.contains(" " + example.getKey() + " "), found);
                    }));
  }

  private static void writeList() throws IOException {
    StringBuilder list = new StringBuilder();
    RuleExamples.offending()
        .forEach((id, example) -> list.append(id).append('\n').append(lines(example.get())));
    Files.writeString(LIST, list);
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

  /** The examples of the list with their lines, which are set in. */
  private static Map<String, String> listed() throws IOException {
    Map<String, String> listed = new LinkedHashMap<>();
    String id = "";
    for (String line : Files.readAllLines(LIST)) {
      if (line.startsWith(" ")) {
        listed.merge(id, line + "\n", String::concat);
      } else {
        id = line;
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

  private static List<String> ids(FindingsReport report) {
    return report.findings().stream().map(Finding::ruleId).distinct().toList();
  }
}
