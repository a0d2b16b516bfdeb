package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import ridgeproof.cli.ToldStories.Told;
import ridgeproof.cli.io.Console;
import ridgeproof.corpus.scenario.DemonstrationSet;
import ridgeproof.report.RenderOptions;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;

/** Every sentence that a user meets reads as professional American English, and says one thing. */
@Tag("slow")
class VoiceTest {

  private static final Pattern LITERALS =
      Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"(?:\\s*\\+\\s*\"(?:[^\"\\\\\\n]|\\\\.)*\")*");

  private static final Pattern WORDS = Pattern.compile("[A-Za-z0-9] [A-Za-z]");

  /** Folders of tools and of their results. */
  private static final Set<String> SKIPPED =
      Set.of("target", ".git", ".ridgeproof", "node_modules", "test", "fuzz", "benchmarks");

  /** Texts of faults and of their evaluation, which only contributors read. */
  private static final Set<String> OF_CONTRIBUTORS =
      Set.of(
          "faults.md",
          "faults-in-xml.md",
          "detection.md",
          "real-prints.md",
          "statistics.md",
          "benchmarks.md");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Held to: rolled card",
        "Two fingers are exchanged",
        "the 1 particulars that AMN needs",
        "1 files",
        "and 1 more images",
        "2 file(s)",
        "found minutiae minutiae found",
        "the colour of the eyes",
        "show values that tell of a person",
        "text unless set",
        "It has to be a date"
      })
  void whatWasSaidBeforeIsFound(String text) {
    assertFalse(Voice.faults("here", text).isEmpty(), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1 file, 2 files",
        "Record 1: Type-1 records begin the file",
        "0.1 degrees, 11 files, 1,001 records",
        "Checked as: rolled card",
        "codes eye-colours"
      })
  void whatIsSaidNowPasses(String text) {
    assertEquals(List.of(), Voice.faults("here", text));
  }

  @Test
  void theCatalogueKeepsToTheVoice() {
    List<String> faults = new ArrayList<>();
    for (RuleRow rule : ToldStories.TABLES.catalogue().rules()) {
      for (String text : List.of(rule.title(), rule.explanation(), rule.remedy())) {
        faults.addAll(Voice.faults(rule.id(), text));
      }
      Stream.of(RuleRow.Capture.values())
          .flatMap(capture -> ToldStories.TABLES.catalogue().remedy(rule.id(), capture).stream())
          .forEach(remedy -> faults.addAll(Voice.faults(rule.id(), remedy)));
    }
    assertNone(faults);
  }

  /** A person is called in again only for what a bureau is likely to reject. */
  @Test
  void adviceAsksForNoRecapture() {
    Pattern plain = Pattern.compile("(^|[.:;,] )(and |then |or )?(Recapture|recapture)\\b");
    for (RuleRow rule : ToldStories.TABLES.catalogue().rules()) {
      if (rule.severity() == Severity.ADVICE || rule.severity() == Severity.NOTE) {
        assertFalse(
            plain.matcher(rule.remedy()).find() && !rule.remedy().startsWith("Consider"),
            rule.id() + ": " + rule.remedy());
      }
    }
  }

  /** A slap is placed, a roll is rolled, and a card never touches the platen. */
  /** A position may be that of four fingers, and a step may name several. */
  @Test
  void noVerbOfASingleFingerFollowsAFingerThatMayBeSeveral() {
    Pattern single = Pattern.compile("\\{finger\\} (is|was|has|touches|shows|lies|matches)\\b");
    for (RuleRow rule : ToldStories.TABLES.catalogue().rules()) {
      Stream.concat(
              Stream.of(rule.remedy()),
              Stream.of(RuleRow.Capture.values()).flatMap(capture -> remedy(rule, capture)))
          .forEach(text -> assertFalse(single.matcher(text).find(), rule.id() + ": " + text));
    }
  }

  @Test
  void remediesSuitTheCapture() {
    for (RuleRow rule : ToldStories.TABLES.catalogue().rules()) {
      remedy(rule, RuleRow.Capture.SLAP)
          .forEach(text -> assertFalse(text.matches("(?i).*\\broll(s|ed)?\\b.*"), text));
      remedy(rule, RuleRow.Capture.PLAIN)
          .forEach(text -> assertFalse(text.matches("(?i).*\\broll(s|ed)?\\b.*"), text));
      remedy(rule, RuleRow.Capture.CARD)
          .forEach(text -> assertFalse(text.contains("platen"), text));
    }
  }

  private static Stream<String> remedy(RuleRow rule, RuleRow.Capture capture) {
    return ToldStories.TABLES.catalogue().remedy(rule.id(), capture).stream();
  }

  @Test
  void helpKeepsToTheVoice() {
    CommandLine line = RidgeproofCommand.commandLine(Console.system());
    List<String> faults = new ArrayList<>(Voice.faults("help", line.getUsageMessage()));
    line.getSubcommands()
        .forEach(
            (name, command) ->
                faults.addAll(Voice.faults("help " + name, command.getUsageMessage())));
    assertNone(faults);
  }

  /** Also what no story comes to: messages of errors, findings and wording. */
  @Test
  void whatTheProgramsSayKeepsToTheVoice() {
    List<String> faults = new ArrayList<>();
    for (Path source : files(".java")) {
      Matcher literal = LITERALS.matcher(withoutComments(text(source)));
      while (literal.find()) {
        String words = literal.group().replaceAll("\"\\s*\\+\\s*\"", "").replace("\\n", " ");
        if (words.indexOf(' ') > 0) {
          faults.addAll(Voice.faults(source.getFileName().toString(), words));
        }
      }
    }
    assertNone(faults);
  }

  @Test
  void templatesKeepToTheVoice() {
    List<String> faults = new ArrayList<>();
    for (Path template : files(".jte")) {
      String words = text(template).replaceAll("(?m)^\\s*[@!].*$|\\$\\{[^}]*\\}", " ");
      faults.addAll(Voice.faults(template.getFileName().toString(), withoutTags(words)));
    }
    assertNone(faults);
  }

  @Test
  void documentsKeepToTheVoice() {
    List<String> faults = new ArrayList<>();
    for (Path document : files(".md")) {
      if (!OF_CONTRIBUTORS.contains(document.getFileName().toString())) {
        for (String paragraph : text(document).split("\n\n")) {
          String words = paragraph.replaceAll("`[^`\n]*`", " _ ").replace('|', ';');
          faults.addAll(Voice.faults(document.getFileName().toString(), words));
        }
      }
    }
    assertNone(faults);
  }

  @Test
  void storiesKeepToTheVoice() {
    List<String> faults = new ArrayList<>();
    DemonstrationSet.scenarios()
        .forEach(scenario -> faults.addAll(Voice.faults(scenario.name(), scenario.story())));
    assertNone(faults);
  }

  @Test
  void reportsOfTheDemonstrationKeepToTheVoice() {
    Set<String> read = new HashSet<>();
    List<String> faults = new ArrayList<>();
    for (Told told : ToldStories.all()) {
      NoPersonalValueLeavesTest.outputs(told, RenderOptions.standard())
          .forEach((form, output) -> read(told.name() + " as " + form, output, read, faults));
    }
    assertNone(faults);
  }

  /** Most lines are in many reports, and most of the others hold no words. */
  private static void read(String where, String output, Set<String> read, List<String> faults) {
    output
        .lines()
        .map(VoiceTest::withoutTags)
        .filter(line -> WORDS.matcher(line).find() && read.add(line))
        .forEach(line -> faults.addAll(Voice.faults(where, line)));
  }

  @Test
  void whatIsSaidOfSeveralFilesKeepsToTheVoice() {
    RenderOptions masked = RenderOptions.standard();
    Set<String> read = new HashSet<>();
    List<String> faults = new ArrayList<>();
    read("summary", NoPersonalValueLeavesTest.summary(masked), read, faults);
    List<Told> stories = ToldStories.all();
    for (Told other : stories.subList(1, stories.size())) {
      NoPersonalValueLeavesTest.comparisons(stories.get(0), other, masked)
          .forEach((form, text) -> read(form, text, read, faults));
    }
    assertNone(faults);
  }

  private static void assertNone(List<String> faults) {
    assertEquals("", String.join("\n", faults));
  }

  private static String withoutComments(String java) {
    return java.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)^\\s*//.*$", "");
  }

  private static String withoutTags(String text) {
    return text.replaceAll("<[^<>]*>", " \u00B7 ");
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> files(String ending) {
    List<Path> files = new ArrayList<>();
    try {
      Files.walkFileTree(
          project(),
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes facts) {
              return SKIPPED.contains(folder.getFileName().toString())
                  ? FileVisitResult.SKIP_SUBTREE
                  : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes facts) {
              if (file.getFileName().toString().endsWith(ending)) {
                files.add(file);
              }
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertTrue(files.size() > 4, "no " + ending + " below " + project());
    return files;
  }

  private static Path project() {
    Path folder = Path.of("").toAbsolutePath();
    while (folder != null && !Files.exists(folder.resolve("DEVELOPERS.md"))) {
      folder = folder.getParent();
    }
    assertTrue(folder != null, "the project is not found");
    return folder;
  }
}
