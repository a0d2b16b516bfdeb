package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.Version;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.comparison.ComparisonHtml;
import ridgeproof.report.comparison.ComparisonJson;
import ridgeproof.report.comparison.ComparisonText;
import ridgeproof.report.text.LayoutListing;
import ridgeproof.report.ticket.Ticket;
import ridgeproof.report.ticket.TicketRequest;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

/** Whatever a file holds and however it is damaged, only what a row calls public is written. */
@Tag("slow")
class OnlyPublicValuesLeaveTest {

  private static final String WHOLE = "letters-0502";

  /** Records of a few types: a document of all of them takes long to lay out. */
  private static final String FEW = "few";

  private static final SpecTables TABLES = ToldStories.TABLES;
  private static final Map<String, byte[]> FILES = CanaryFiles.all(TABLES);

  private static final Set<String> PUBLIC =
      FILES.values().stream()
          .map(
              bytes ->
                  new TransactionReader(TABLES, ParseLimits.standard()).read(ByteSource.of(bytes)))
          .flatMap(transaction -> Canaries.publicIn(transaction, TABLES).stream())
          .collect(Collectors.toSet());

  private static final Map<String, Set<String>> CANARIES =
      FILES.entrySet().stream()
          .collect(
              Collectors.toMap(Map.Entry::getKey, file -> Canaries.foundIn(text(file.getValue()))));

  private static final Examiner EXAMINER = new Examiner(TABLES, ParseLimits.standard());
  private static final ExaminationOptions OPTIONS =
      ExaminationOptions.standard().withDepth(Depth.STRUCTURE);
  private static final Map<String, FindingsReport> REPORTS =
      FILES.entrySet().stream()
          .collect(
              Collectors.toMap(
                  Map.Entry::getKey,
                  file -> EXAMINER.examine(ByteSource.of(file.getValue()), OPTIONS)));

  @TempDir static Path inputs;
  @TempDir Path outputs;

  static Set<String> names() {
    return FILES.keySet();
  }

  @BeforeAll
  static void writeFiles() throws IOException {
    for (Map.Entry<String, byte[]> file : FILES.entrySet()) {
      Files.write(path(file.getKey()), file.getValue());
    }
  }

  private static Path path(String name) {
    return inputs.resolve(name + ".an2");
  }

  /** Everything that a command printed, wrote, and how it named what it wrote. */
  private Map<String, String> run(String... arguments) {
    CommandRun run = CommandRun.of(arguments);
    assertTrue(run.status() != ExitStatus.DEFECT, () -> String.join(" ", arguments) + run.error());
    Map<String, String> written = new LinkedHashMap<>();
    String command = String.join(" ", arguments);
    written.put(command, run.out() + run.error());
    try (Stream<Path> files = Files.walk(outputs)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = outputs.relativize(file).toString();
        byte[] bytes = Files.readAllBytes(file);
        String text =
            name.endsWith(".pdf")
                ? PdfWords.of(bytes)
                : new String(bytes, StandardCharsets.ISO_8859_1);
        written.put(command + ": " + name, name + "\n" + text);
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return written;
  }

  private static void assertOnlyPublic(Map<String, String> written, String... names) {
    Set<String> known = new HashSet<>();
    for (String name : names) {
      known.addAll(CANARIES.get(name));
    }
    Set<String> told = new TreeSet<>();
    for (Map.Entry<String, String> output : written.entrySet()) {
      for (String canary : Canaries.foundIn(output.getValue())) {
        // A copy for strangers is filled with letters, which may come to look like a canary.
        boolean plain = Canaries.isPlain(canary);
        if (!PUBLIC.contains(canary) && (!plain || known.contains(canary))) {
          told.add(
              output.getKey() + " tells " + canary + ", as " + around(output.getValue(), canary));
        }
      }
    }
    assertEquals(List.of(), told.stream().limit(20).toList());
  }

  private static String around(String text, String canary) {
    int at = text.indexOf(canary);
    return at < 0
        ? ""
        : text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 30))
            .replaceAll("\\s+", " ");
  }

  private String output(String name) {
    return outputs.resolve(name).toString();
  }

  private Map<String, String> examineAll(String... options) {
    List<String> arguments = new ArrayList<>(List.of("examine", "--depth", "structure"));
    arguments.addAll(List.of(options));
    FILES.keySet().forEach(name -> arguments.add(path(name).toString()));
    return run(arguments.toArray(String[]::new));
  }

  private static String[] all() {
    return FILES.keySet().toArray(String[]::new);
  }

  private static FileFacts facts(String name) {
    return new FileFacts(name, FILES.get(name).length, "0".repeat(64));
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "json", "csv", "sarif"})
  void noReportTellsMoreThanPublicValues(String format) {
    assertOnlyPublic(examineAll("--format", format), all());
  }

  @Test
  void noPageAndNoSummaryTellsMoreThanPublicValues() {
    Map<String, String> written =
        examineAll(
            "--format", "html", "--operator-field", "2.777", "--output-dir", outputs.toString());
    assertEquals(
        FILES.size() + 2, written.size(), "a page for each file, the summary, the terminal");
    assertOnlyPublic(written, all());
  }

  @Test
  void noDocumentTellsMoreThanPublicValues() {
    String file = path(FEW).toString();
    assertOnlyPublic(run(document(file).toArray(String[]::new)), FEW);
  }

  @ParameterizedTest
  @MethodSource("names")
  void noListingAndNoTicketTellsMoreThanPublicValues(String name) {
    FindingsReport report = REPORTS.get(name);
    Ticket ticket =
        Ticket.of(
            facts(name), report, Version.facts(), TicketRequest.standard().withTime(Instant.EPOCH));
    assertOnlyPublic(
        Map.of(
            "layout",
            LayoutListing.render(
                facts(name), report.transaction(), TABLES, RenderOptions.standard()),
            "ticket",
            ticket.asText(),
            "ticket markdown",
            ticket.asMarkdown(),
            "ticket html",
            ticket.asHtml()),
        name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"letters-0502", "digits-0400", "lengths", "record-separators", "images"})
  void noCopyForStrangersTellsMoreThanPublicValues(String name) {
    SafeCopy copy = new Deidentifier(EXAMINER, OPTIONS).of(REPORTS.get(name));
    assertOnlyPublic(Map.of("copy", text(copy.bytes().toArray())), name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"digits-0502", "letters-0400", "subfields-are-items", "tags", "contents"})
  void noComparisonTellsMoreThanPublicValues(String name) {
    TransactionComparison comparison =
        TransactionComparison.of(
            REPORTS.get(WHOLE),
            REPORTS.get(name),
            new ImageExtraction(TABLES, DecodingLimits.standard()),
            IgnoredFields.parse(IgnoredFields.STANDARD));
    FileFacts first = facts(WHOLE);
    FileFacts second = facts(name);
    RenderOptions masked = RenderOptions.standard();
    assertOnlyPublic(
        Map.of(
            "compare", ComparisonText.render(first, second, comparison, masked),
            "compare json", ComparisonJson.render(first, second, comparison, masked),
            "compare html", ComparisonHtml.render(first, second, comparison, masked)),
        WHOLE,
        name);
  }

  @Test
  void noPictureTellsMoreThanPublicValues() {
    for (String name : List.of("images", WHOLE)) {
      assertOnlyPublic(
          run("images", "--crop", "--output", output("images"), path(name).toString()), name);
    }
    String file = path("images").toString();
    for (String format : List.of("json", "html")) {
      assertOnlyPublic(run("examine", "--depth", "ridges", "--format", format, file), "images");
    }
  }

  @Test
  void noCommandTellsMoreThanPublicValues() {
    String file = path(WHOLE).toString();
    String other = path("digits-0502").toString();
    for (String[] command :
        List.of(
            new String[] {"layout", file},
            new String[] {"ticket", "--attach-safe-copy", output("copy.an2"), file},
            new String[] {"compare", file, other},
            new String[] {"examine", "--profile", file, file},
            new String[] {"examine", "--max-file-size", "100", file},
            new String[] {"examine", "--depth", "structure", file, path("none").toString()},
            new String[] {"compare", file, path("none").toString()},
            new String[] {"ticket", "--attach-safe-copy", file, file},
            new String[] {"images", "--finger", "9", "--output", output("images"), file},
            new String[] {"rules", file},
            new String[] {"codes", file},
            new String[] {"layout", path("none").toString()})) {
      assertOnlyPublic(run(command), WHOLE, "digits-0502");
    }
  }

  /** Else nothing would be proved by what the search does not find. */
  @Test
  void theSearchFindsWhatIsShownWhenAsked() {
    Set<String> all = CANARIES.get(WHOLE);
    String file = path(WHOLE).toString();
    String shown = String.join("", run("layout", "--show-personal", file).values());
    String masked = String.join("", run("layout", file).values());
    Set<String> missing = new TreeSet<>(all);
    missing.removeAll(Canaries.foundIn(shown));
    assertTrue(all.size() > 3000, () -> all.size() + " canaries");
    assertTrue(missing.size() < 70, () -> "not shown: " + missing);
    Set<String> told = Canaries.foundIn(masked);
    assertTrue(told.size() > 300, () -> "public values are shown: " + told.size());
    for (String form :
        List.of(
            "qzxwabcd",
            "QZXW\n    ABCD",
            "51 5A 58 57 41",
            "515a5857",
            "x1F0731 73190123",
            "73,190,123",
            Base64.getEncoder().encodeToString("name QZXWABCD".getBytes(StandardCharsets.UTF_8)))) {
      assertFalse(Canaries.foundIn(form).isEmpty(), form);
    }
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private List<String> document(String file) {
    return List.of(
        "examine", "--depth", "structure", "--format", "pdf", "--output", output("a.pdf"), file);
  }

  @Test
  void nothingIsPutAsideInAFileOfItsOwn() throws Exception {
    String file = path("images").toString();
    for (List<String> command :
        List.of(
            document(file),
            List.of(
                "ticket",
                "--depth",
                "structure",
                "--attach-safe-copy",
                output("copy.an2"),
                file))) {
      List<String> java =
          new ArrayList<>(
              List.of(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:-UsePerfData",
                  "-Djava.io.tmpdir=" + outputs.resolve("there-is-no-such-folder"),
                  "-cp",
                  System.getProperty("java.class.path"),
                  "ridgeproof.cli.Main"));
      java.addAll(command);
      Path printed = outputs.resolve("printed");
      Process process =
          new ProcessBuilder(java)
              .redirectErrorStream(true)
              .redirectOutput(printed.toFile())
              .start();
      int status = process.waitFor();
      assertTrue(status < ExitStatus.USAGE, () -> status + " " + command);
      assertOnlyPublic(Map.of(command.toString(), Files.readString(printed)), "images");
    }
  }
}
