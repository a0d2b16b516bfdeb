package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.cli.ToldStories.Told;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.option.PdfOutput;
import ridgeproof.cli.reporting.ReportFormat;
import ridgeproof.cli.reporting.ReportWriter;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.report.FileAccount;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ToolFacts;
import ridgeproof.report.comparison.ComparisonHtml;
import ridgeproof.report.comparison.ComparisonJson;
import ridgeproof.report.comparison.ComparisonText;
import ridgeproof.report.summary.FolderSummary;
import ridgeproof.report.text.LayoutListing;
import ridgeproof.report.ticket.AttachedCopy;
import ridgeproof.report.ticket.Ticket;
import ridgeproof.report.ticket.TicketRequest;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Item;

/** Nothing of a person is in anything that Ridgeproof writes unless it is asked for. */
@Tag("slow")
class NoPersonalValueLeavesTest {

  private static final ToolFacts TOOL = new ToolFacts("0.1", "17", "a system");
  private static final RenderOptions MASKED = RenderOptions.standard().withEveryFinding(true);
  private static final RenderOptions SHOWN = new RenderOptions(true, false, 200, true);

  /** Why the prints were taken, which the stories state: it stands for an agency's own field. */
  private static final FieldNumber OPERATOR = new FieldNumber(2, 37);

  @TempDir Path folder;

  static List<Told> stories() {
    return ToldStories.all();
  }

  private static FileFacts facts(byte[] bytes) {
    return new FileFacts("file.an2", bytes.length, ByteSource.of(bytes).sha256());
  }

  private static String joined(ReportFormat format, Map<FileFacts, FindingsReport> reports) {
    return joined(format, reports, MASKED);
  }

  private static String joined(
      ReportFormat format, Map<FileFacts, FindingsReport> reports, RenderOptions options) {
    StringWriter text = new StringWriter();
    try {
      ReportWriter assembly =
          ReportWriter.of(
              format,
              ToldStories.TABLES,
              options,
              Optional.empty(),
              text,
              reports.size() > 1,
              false);
      for (Map.Entry<FileFacts, FindingsReport> each : reports.entrySet()) {
        assembly.add(each.getKey(), each.getValue());
      }
      assembly.end(new FileAccount(1, List.of()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  static Map<String, String> outputs(Told told, RenderOptions options) {
    FileFacts file = facts(told.bytes());
    FindingsReport report = told.report();
    Map<String, String> outputs = new LinkedHashMap<>();
    for (ReportFormat format : ReportFormat.values()) {
      if (format == ReportFormat.pdf) {
        byte[] pdf = new PdfOutput().render(file, report, options, Optional.empty());
        outputs.put("pdf", PdfWords.of(pdf));
      } else {
        outputs.put(format.name(), joined(format, Map.of(file, report), options));
      }
    }
    outputs.put(
        "layout", LayoutListing.render(file, report.transaction(), ToldStories.TABLES, options));
    Ticket ticket =
        Ticket.of(
            file,
            report,
            TOOL,
            TicketRequest.standard()
                .withTime(Instant.EPOCH)
                .withCopy(new AttachedCopy(facts(told.copy().bytes().toArray()), told.copy())));
    outputs.put("ticket", ticket.asText());
    outputs.put("ticket markdown", ticket.asMarkdown());
    outputs.put("ticket html", ticket.asHtml());
    outputs.put("ticket json", ticket.asJson());
    return outputs;
  }

  static Map<String, String> comparisons(Told one, Told other, RenderOptions options) {
    TransactionComparison comparison =
        TransactionComparison.of(
            one.report(),
            other.report(),
            new ImageExtraction(ToldStories.TABLES, DecodingLimits.standard()),
            IgnoredFields.parse(IgnoredFields.STANDARD));
    FileFacts first = facts(one.bytes());
    FileFacts second = facts(other.bytes());
    return Map.of(
        "compare", ComparisonText.render(first, second, comparison, options),
        "compare json", ComparisonJson.render(first, second, comparison, options),
        "compare html", ComparisonHtml.render(first, second, comparison, options));
  }

  static String summary(RenderOptions options) {
    FolderSummary summary = new FolderSummary(ToldStories.TABLES, options, List.of(OPERATOR));
    stories()
        .forEach(told -> summary.add(facts(told.bytes()), told.report(), told.name() + ".html"));
    return summary.page();
  }

  private static void assertTellsNothing(String what, String text, PersonalSearch search) {
    assertEquals(Set.of(), search.foundIn(text), what);
  }

  private static PersonalSearch search(Told told) {
    return PersonalSearch.of(told.report().transaction());
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
    PersonalSearch search = search(told);
    outputs(told, MASKED).forEach((form, text) -> assertTellsNothing(form, text, search));
  }

  @Test
  void nothingOfManyFilesTellsAPersonalValueUnlessAsked() {
    Map<FileFacts, FindingsReport> reports = new LinkedHashMap<>();
    stories().forEach(told -> reports.put(facts(told.bytes()), told.report()));
    Map<String, String> outputs =
        Map.of(
            "summary", summary(MASKED),
            "csv", joined(ReportFormat.csv, reports),
            "sarif", joined(ReportFormat.sarif, reports));
    for (Told told : stories()) {
      PersonalSearch search = search(told);
      outputs.forEach((form, text) -> assertTellsNothing(form, text, search));
    }
  }

  @Test
  void theSummaryTellsNoAgencyStationOrOperatorUnlessAsked() {
    String masked = summary(MASKED);
    String shown = summary(SHOWN);
    Set<String> seen = new TreeSet<>();
    for (Told told : stories()) {
      for (String value : origins(told)) {
        assertTellsNothing("summary", masked, PersonalSearch.of(Set.of(value)));
        if (shown.contains(value)) {
          seen.add(value);
        }
      }
    }
    assertTrue(seen.size() >= 2, () -> "the search finds no more than " + seen);
  }

  /** What the fields that tell of the origin of a file hold. */
  private static Set<String> origins(Told told) {
    Set<FieldNumber> fields = new HashSet<>(Set.of(OPERATOR));
    ToldStories.TABLES.captureOrigins().forEach(origin -> fields.add(origin.field()));
    return told.report().transaction().records().stream()
        .flatMap(record -> record.fields().stream())
        .filter(field -> fields.contains(field.number()))
        .flatMap(field -> field.subfields().stream())
        .flatMap(subfield -> subfield.items().stream())
        .map(Item::text)
        .filter(text -> text.length() > 3)
        .collect(Collectors.toSet());
  }

  @Test
  void theSearchFindsWhatIsShownWhenAsked() {
    Told told = stories().get(0);
    Map<String, String> shown = new LinkedHashMap<>(outputs(told, SHOWN));
    shown.putAll(comparisons(told, stories().get(1), SHOWN));
    PersonalSearch search = search(told);
    for (String form :
        List.of("layout", "html", "pdf", "compare", "compare json", "compare html")) {
      assertNotEquals(Set.of(), search.foundIn(shown.get(form)), form);
    }
    String file = new String(told.bytes(), StandardCharsets.ISO_8859_1);
    for (String value : PersonalForms.values(told.report().transaction())) {
      assertNotEquals(Set.of(), PersonalSearch.of(Set.of(value)).foundIn(file), value);
    }
  }

  @Test
  void theWordsOfAPdfAreAlsoThoseThatNoPageShows() {
    Told told = stories().get(0);
    byte[] pdf =
        new PdfOutput()
            .render(
                facts(told.bytes()), told.report(), MASKED, Optional.of(image -> Optional.empty()));
    String words = PdfWords.of(pdf);
    assertTrue(words.contains("image of record "), "the description of a picture");
    assertTrue(words.contains("Ridgeproof\n"), "the producer");
    assertTrue(words.contains(": file.an2 \u2013 Ridgeproof\n"), "the title");
    assertTrue(words.contains("Rules and sources"), "a heading");
  }

  @ParameterizedTest
  @MethodSource("stories")
  void theSafeCopyTellsNoPersonalValueInAnyForm(Told told) {
    ByteSource copy = told.copy().bytes();
    assertTellsNothing("the copy", copy.latin1(0, copy.length()), search(told));
  }

  @Test
  void aComparisonOfTwoStoriesTellsNoPersonalValueOfEither() {
    List<Told> all = stories();
    for (int i = 1; i < all.size(); i++) {
      Told one = all.get(i - 1);
      Told other = all.get(i);
      comparisons(one, other, MASKED)
          .forEach(
              (form, text) -> {
                assertTellsNothing(form, text, search(one));
                assertTellsNothing(form, text, search(other));
              });
    }
  }

  @ParameterizedTest
  @MethodSource("stories")
  void whatIsSaidOfAWrongCommandTellsNoPersonalValue(Told told) throws IOException {
    Path file = Files.write(folder.resolve("file.an2"), told.bytes());
    PersonalSearch search = search(told);
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
      assertTellsNothing(String.join(" ", command), run.out() + run.error(), search);
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

  @Test
  void aValueIsFoundWhereALineEndsWithinIt() {
    PersonalSearch search = PersonalSearch.of(Set.of("SPECIMEN,ADA MARIA", "BRO", "507001"));
    for (String text :
        List.of("x SPECIMEN,ADA\n   MARIA", "SPECI\nMEN,ADA MARIA", "eyes BRO.", "a507001b")) {
      assertEquals(1, search.foundIn(text).size(), text);
    }
    for (String text : List.of("BROKEN", "507\n001", "SPECIMEN,BEA")) {
      assertEquals(Set.of(), search.foundIn(text), text);
    }
  }
}
