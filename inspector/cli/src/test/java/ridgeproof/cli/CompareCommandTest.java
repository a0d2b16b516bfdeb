package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.ScenarioReader;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.comparison.ComparisonJson;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** Synthetic people captured twice, so that it is known which fingers are the same. */
@Tag("slow")
class CompareCommandTest {

  private static final String ROLLS =
      """
      story = "Five rolls of the right hand"
      seed = %d
      [subject]
      person = %d
      [prints]
      set = "rolled_card"
      boxes = [1, 2, 3, 4, 5]
      %s
      """;

  private static final String FLATS =
      """
      story = "Flats"
      seed = %d
      [subject]
      person = %d
      [prints]
      set = "flats"
      boxes = [13]
      %s
      """;

  private static final String RING_BOX_SHOWS_THE_MIDDLE_FINGER =
      """
      [[mistakes]]
      kind = "finger_twice"
      box = 4
      finger = 3
      """;

  /** What was captured, and what an examination of its ridges found. */
  private record Captured(Path file, byte[] bytes, FindingsReport report) {

    FileFacts facts() {
      return new FileFacts(file.getFileName().toString(), bytes.length, "0".repeat(64));
    }
  }

  private static final SpecTables TABLES = SpecTables.open();

  @TempDir static Path folder;
  private static Captured rolls;
  private static Captured rollsAgain;
  private static Captured fingerTwice;
  private static Captured otherPerson;
  private static Captured slap;
  private static Captured slapWithoutLittle;

  @BeforeAll
  static void captureThem() throws IOException {
    TransactionComposer composer = new TransactionComposer(new SubjectCache());
    rolls = capture(composer, "rolls", ROLLS.formatted(1, 7001, ""));
    rollsAgain = capture(composer, "again", ROLLS.formatted(2, 7001, ""));
    fingerTwice =
        capture(composer, "twice", ROLLS.formatted(3, 7001, RING_BOX_SHOWS_THE_MIDDLE_FINGER));
    otherPerson = capture(composer, "other", ROLLS.formatted(4, 7002, ""));
    slap = capture(composer, "slap", FLATS.formatted(5, 7001, ""));
    slapWithoutLittle =
        capture(
            composer, "less", FLATS.formatted(6, 7001, "[[missing]]\nfinger = 5\nreason = \"XX\""));
  }

  private static Captured capture(TransactionComposer composer, String name, String story)
      throws IOException {
    byte[] bytes = composer.compose(new ScenarioReader().read(name, story)).bytes();
    FindingsReport report =
        new Examiner(TABLES, ParseLimits.standard())
            .examine(ByteSource.of(bytes), ExaminationOptions.standard());
    return new Captured(Files.write(folder.resolve(name + ".an2"), bytes), bytes, report);
  }

  /** What the command prints of them, without examining them again. */
  private static JsonNode compare(Captured first, Captured second) throws IOException {
    TransactionComparison comparison =
        TransactionComparison.of(
            first.report(),
            second.report(),
            new ImageExtraction(TABLES, DecodingLimits.standard()),
            IgnoredFields.parse(IgnoredFields.STANDARD));
    return new ObjectMapper()
        .readTree(
            ComparisonJson.render(
                first.facts(), second.facts(), comparison, RenderOptions.standard()));
  }

  private static JsonNode command(Captured first, Captured second, String... options)
      throws IOException {
    List<String> arguments = new ArrayList<>(List.of("compare", "--format", "json"));
    arguments.addAll(List.of(options));
    arguments.addAll(List.of(first.file().toString(), second.file().toString()));
    CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
    assertEquals(1, run.status(), run.error());
    return new ObjectMapper().readTree(run.out());
  }

  /** The reason of each finger's answer, by its position. */
  private static Map<Integer, String> reasons(JsonNode comparison) {
    Map<Integer, String> reasons = new TreeMap<>();
    comparison
        .findPath("pairs")
        .forEach(
            pair ->
                pair.at("/image/fingers")
                    .forEach(
                        finger ->
                            reasons.put(
                                finger.get("position").asInt(), finger.get("reason").asText())));
    return reasons;
  }

  private static List<String> levels(JsonNode comparison) {
    List<String> levels = new ArrayList<>();
    comparison
        .get("pairs")
        .forEach(
            pair -> {
              if (pair.has("image")) {
                levels.add(pair.at("/image/level").asText());
              }
            });
    return levels;
  }

  @Test
  void fingersCapturedAgainAreTheSameFingers() throws IOException {
    JsonNode comparison = compare(rolls, rollsAgain);
    assertEquals(
        List.of(
            "same finger, different capture",
            "same finger, different capture",
            "same finger, different capture",
            "same finger, different capture",
            "same finger, different capture"),
        levels(comparison));
    assertEquals("ridges", comparison.get("depth").asText());
  }

  @Test
  void theCommandLooksAtRidgesUnlessToldOtherwise() throws IOException {
    JsonNode printed = command(slap, slapWithoutLittle);
    JsonNode made = compare(slap, slapWithoutLittle);
    assertEquals(made.get("pairs"), printed.get("pairs"));
    assertEquals("ridges", printed.get("depth").asText());
  }

  @Test
  void aBoxThatShowsAnotherFingerIsADifferentFingerWhicheverFileComesFirst() throws IOException {
    Map<Integer, String> spoilt = reasons(compare(rolls, fingerTwice));
    Map<Integer, String> mended = reasons(compare(fingerTwice, rolls));
    for (int finger : new int[] {1, 2, 3, 5}) {
      assertEquals("ALIKE", spoilt.get(finger), spoilt.toString());
      assertEquals("ALIKE", mended.get(finger), mended.toString());
    }
    assertEquals("SECOND_MATCHES_ANOTHER", spoilt.get(4));
    assertEquals("FIRST_MATCHES_ANOTHER", mended.get(4));
  }

  @Test
  void fingersOfAnotherPersonCannotBeTold() throws IOException {
    JsonNode comparison = compare(rolls, otherPerson);
    for (String level : levels(comparison)) {
      assertEquals("not determined", level, comparison.toPrettyString());
    }
    reasons(comparison).values().forEach(reason -> assertEquals("NOT_ALIKE", reason));
    assertTrue(
        comparison.at("/personWarning/kind").asText().startsWith("OTHER_PRINTS_"),
        comparison.toPrettyString());
    assertTrue(compare(rolls, rollsAgain).path("personWarning").isMissingNode());
  }

  @Test
  void theFingersOfASlapAreToldOneByOneAndAMissingOneIsHonoured() throws IOException {
    Map<Integer, String> reasons = reasons(compare(slap, slapWithoutLittle));
    assertEquals(
        Map.of(2, "ALIKE", 3, "ALIKE", 4, "ALIKE", 5, "DECLARED_MISSING_IN_SECOND"), reasons);
  }

  @Test
  void fingersAreNotAskedForAtLesserDepth() throws IOException {
    JsonNode images = command(rolls, rollsAgain, "--depth", "images");
    assertEquals(Map.of(), reasons(images));
    assertEquals("different pixels", levels(images).get(0));
    JsonNode structure = command(rolls, rollsAgain, "--depth", "structure");
    assertEquals("not determined", levels(structure).get(0));
  }

  @Test
  void thePageShowsImagesOnlyWhenAsked() {
    String[] arguments = {
      "compare",
      "--depth",
      "images",
      "--format",
      "html",
      rolls.file().toString(),
      rollsAgain.file().toString()
    };
    CommandRun page = CommandRun.of(arguments);
    assertEquals(1, page.status(), page.error());
    assertTrue(page.out().startsWith("<!DOCTYPE html>"), page.out());
    assertFalse(page.out().contains("data:image"));
    List<String> asked = new ArrayList<>(List.of(arguments));
    asked.add("--with-images");
    CommandRun shown = CommandRun.of(asked.toArray(String[]::new));
    assertEquals(5 * 2, shown.out().split("data:image/png", -1).length - 1);
  }

  @Test
  void theFindingsAreThoseOfTheProfileThatIsNamed() throws IOException {
    JsonNode comparison =
        command(rolls, slap, "--depth", "structure", "--profile", "identification-flats");
    assertTrue(comparison.get("resolved").size() > 0, comparison.toPrettyString());
    CommandRun wrong = CommandRun.of("compare", "--profile", "none", "a.an2", "b.an2");
    wrong.isOneLineOf(64, "no profile none");
  }

  @Test
  void aFileThatCannotBeReadEndsWith74() {
    CommandRun.of("compare", rolls.file().toString(), folder.resolve("absent.an2").toString())
        .isOneLineOf(74, "absent.an2");
  }

  @Test
  void nothingIsWrittenToStandardErrorByTheMatcher() throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "compare",
                slap.file().toString(),
                slapWithoutLittle.file().toString())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    String error = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(1, process.waitFor());
    assertEquals("", error);
  }
}
