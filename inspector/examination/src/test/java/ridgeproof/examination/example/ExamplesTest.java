package ridgeproof.examination.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;

/** Each example of a list has exactly the findings that are listed for it. */
abstract class ExamplesTest {

  static final Path RESOURCES = Path.of("src/test/resources/ridgeproof/examination");

  private final ExampleList list;

  ExamplesTest(ExampleList list) {
    this.list = list;
  }

  /**
   * Where a change is meant, {@code -Dridgeproof.examples=write} writes the list anew, to be read
   * line by line before it is committed.
   */
  @TestFactory
  Stream<DynamicTest> eachExampleHasItsFindingsAndNoOthers() throws IOException {
    if (System.getProperty("ridgeproof.examples", "").equals("write")) {
      write(list);
    }
    Map<String, String> listed = listed(list);
    assertEquals(listed.keySet(), list.offending().keySet(), list.name());
    return list.offending().entrySet().stream()
        .map(
            example ->
                DynamicTest.dynamicTest(
                    example.getKey(),
                    () ->
                        hasItsFindings(
                            example.getKey(), example.getValue(), listed.get(example.getKey()))));
  }

  private static void hasItsFindings(
      String name, Supplier<FindingsReport> example, String expected) {
    String found = lines(example.get());
    assertEquals(expected, found);
    assertTrue(found.contains(" " + ExampleList.rule(name) + " "), found);
  }

  @TestFactory
  Stream<DynamicTest> theOtherSideOfTheLineIsNotReported() {
    return list.conforming().entrySet().stream()
        .map(
            example ->
                DynamicTest.dynamicTest(
                    example.getKey(),
                    () ->
                        assertFalse(
                            rules(example.getValue().get())
                                .contains(ExampleList.rule(example.getKey())))));
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
  static String lines(FindingsReport report) {
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
