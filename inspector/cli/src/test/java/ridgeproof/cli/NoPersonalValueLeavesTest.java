package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.cli.ToldStories.Told;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.ImageExtraction;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.report.AttachedCopy;
import ridgeproof.report.ComparisonJson;
import ridgeproof.report.ComparisonText;
import ridgeproof.report.FileFacts;
import ridgeproof.report.FindingsCsv;
import ridgeproof.report.HtmlReport;
import ridgeproof.report.JsonReport;
import ridgeproof.report.LayoutListing;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.SarifReport;
import ridgeproof.report.TextReport;
import ridgeproof.report.Ticket;
import ridgeproof.report.ToolFacts;
import ridgeproof.transaction.ByteSource;

/** Nothing of a person is in anything that Ridgeproof writes unless it is asked for. */
class NoPersonalValueLeavesTest {

  private static final ToolFacts TOOL = new ToolFacts("0.1", "17", "a system");
  private static final Pattern LINE_BREAKS = Pattern.compile("\\s*\\R\\s*");

  @TempDir Path folder;

  static List<Told> stories() {
    return ToldStories.all();
  }

  private static FileFacts facts(byte[] bytes) {
    return new FileFacts("file.an2", bytes.length, InputFile.sha256(ByteSource.of(bytes)));
  }

  private static String csv(FileFacts file, FindingsReport report, RenderOptions options) {
    StringWriter text = new StringWriter();
    try {
      new FindingsCsv(text, options).add(file, report);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static String sarif(FileFacts file, FindingsReport report, RenderOptions options) {
    StringWriter text = new StringWriter();
    try {
      SarifReport sarif = new SarifReport(ToldStories.TABLES, TOOL, text, options);
      sarif.add(file, report);
      sarif.end();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static Map<String, String> outputs(Told told, RenderOptions options) {
    FileFacts file = facts(told.bytes());
    FindingsReport report = told.report();
    Map<String, String> outputs = new LinkedHashMap<>();
    outputs.put("text", TextReport.render(file, report, options));
    outputs.put("json", JsonReport.render(file, report, options));
    outputs.put("html", HtmlReport.render(file, report, options));
    outputs.put("csv", csv(file, report, options));
    outputs.put("sarif", sarif(file, report, options));
    outputs.put(
        "layout", LayoutListing.render(file, report.transaction(), ToldStories.TABLES, options));
    Ticket ticket =
        Ticket.of(
            file,
            report,
            TOOL,
            Optional.of(Instant.EPOCH),
            Optional.of(new AttachedCopy(facts(told.copy().bytes().toArray()), told.copy())));
    outputs.put("ticket", ticket.asText());
    outputs.put("ticket markdown", ticket.asMarkdown());
    outputs.put("ticket html", ticket.asHtml());
    return outputs;
  }

  private static void assertTellsNothing(String what, String text, Set<String> values) {
    String unbroken = LINE_BREAKS.matcher(text).replaceAll(" ");
    List<String> told = new ArrayList<>();
    for (String value : values) {
      for (String form : PersonalForms.of(value)) {
        boolean there =
            isCode(value) ? isWord(text, form) : text.contains(form) || unbroken.contains(form);
        if (there) {
          told.add(what + " tells " + form);
        }
      }
    }
    assertEquals(List.of(), told);
  }

  /** Three letters come about by chance within other words. */
  private static boolean isCode(String value) {
    return value.length() == 3;
  }

  private static boolean isWord(String text, String form) {
    return Pattern.compile("(?<![\\w./#&-])" + Pattern.quote(form) + "(?![\\w-])")
        .matcher(text)
        .find();
  }

  @Test
  void everyStoryHasValuesToLookFor() {
    stories()
        .forEach(
            told ->
                assertTrue(
                    PersonalForms.values(told.report().transaction()).size() >= 4, told.name()));
  }

  @ParameterizedTest
  @MethodSource("stories")
  void noOutputTellsAPersonalValueUnlessAsked(Told told) {
    Set<String> values = PersonalForms.values(told.report().transaction());
    outputs(told, RenderOptions.standard())
        .forEach((form, text) -> assertTellsNothing(form, text, values));
  }

  @Test
  void theSearchFindsWhatIsShownWhenAsked() {
    Told told = stories().get(0);
    Set<String> values = PersonalForms.values(told.report().transaction());
    Map<String, String> outputs = outputs(told, new RenderOptions(true, false, 200));
    for (String form : List.of("layout", "html")) {
      assertThrows(
          AssertionError.class, () -> assertTellsNothing(form, outputs.get(form), values), form);
    }
    String file = new String(told.bytes(), StandardCharsets.ISO_8859_1);
    for (String value : values) {
      assertThrows(
          AssertionError.class, () -> assertTellsNothing("the file", file, Set.of(value)), value);
    }
  }

  @ParameterizedTest
  @MethodSource("stories")
  void theSafeCopyTellsNoPersonalValueInAnyForm(Told told) {
    ByteSource copy = told.copy().bytes();
    assertTellsNothing(
        "the copy",
        copy.latin1(0, copy.length()),
        PersonalForms.values(told.report().transaction()));
  }

  @Test
  void aComparisonOfTwoStoriesTellsNoPersonalValueOfEither() {
    List<Told> all = stories();
    for (int i = 1; i < all.size(); i++) {
      Told one = all.get(i - 1);
      Told other = all.get(i);
      TransactionComparison comparison =
          TransactionComparison.of(
              one.report(),
              other.report(),
              new ImageExtraction(ToldStories.TABLES, DecodingLimits.standard()),
              IgnoredFields.parse(IgnoredFields.STANDARD));
      FileFacts first = facts(one.bytes());
      FileFacts second = facts(other.bytes());
      RenderOptions options = RenderOptions.standard();
      for (Told told : List.of(one, other)) {
        Set<String> values = PersonalForms.values(told.report().transaction());
        assertTellsNothing(
            "compare", ComparisonText.render(first, second, comparison, options), values);
        assertTellsNothing(
            "compare json", ComparisonJson.render(first, second, comparison, options), values);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("stories")
  void whatIsSaidOfAWrongCommandTellsNoPersonalValue(Told told) throws IOException {
    Path file = Files.write(folder.resolve("file.an2"), told.bytes());
    Set<String> values = PersonalForms.values(told.report().transaction());
    for (List<String> command :
        List.of(
            List.of("examine", file.toString(), "--format", "csv", "--depth", "deep"),
            List.of(
                "ticket",
                file.toString(),
                "--attach-safe-copy",
                file.toString(),
                "--depth",
                "structure"),
            List.of("examine", file.toString(), "--profile", file.toString()),
            List.of("compare", file.toString(), folder.resolve("none.an2").toString()),
            List.of("examine", file.toString(), "--max-file-size", "100"))) {
      CommandRun run = CommandRun.of(command.toArray(String[]::new));
      assertTrue(run.status() >= ExitStatus.USAGE, command.toString());
      assertTellsNothing(String.join(" ", command), run.out() + run.error(), values);
    }
  }

  @Test
  void theFormsThatAreLookedForAreThoseThatOthersWrite() {
    Set<String> date = PersonalForms.of("19880417");
    assertTrue(date.containsAll(Set.of("1988-04-17", "17041988", "17.04.1988", "April 17, 1988")));
    String inText = "xySPECIMEN,ADA";
    String coded =
        java.util.Base64.getEncoder().encodeToString(inText.getBytes(StandardCharsets.UTF_8));
    assertTrue(PersonalForms.of("SPECIMEN,ADA").stream().anyMatch(coded::contains), coded);
    assertTrue(PersonalForms.of("SPECIMEN").contains("53504543494d454e"));
    assertTrue(PersonalForms.of("A B").contains("A+B"));
  }
}
