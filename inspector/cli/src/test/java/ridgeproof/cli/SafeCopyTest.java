package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.cli.ToldStories.Told;
import ridgeproof.cli.drawing.SyntheticPrints;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.PrintComparison;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.examination.safecopy.FindingChange;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.spec.rule.Severity;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

@Tag("slow")
class SafeCopyTest {

  private static final String OF_RIDGES = "RP-(RDG|SEQ)-.*";
  private static final ExaminationOptions IMAGES =
      ExaminationOptions.standard().withDepth(Depth.IMAGES);

  private static final int FEW_LEVELS = 3;
  private static final String ONE_GRAY_LEVEL = "RP-IMG-033";

  /** US in place of a state is the value itself; pixels finer than they are labelled are gone. */
  private static final Map<String, List<String>> NOT_REPRODUCED =
      Map.of(
          "amputated-yet-imaged", List.of("RP-TXN-005"),
          "country-as-birthplace", List.of("RP-PTL-010"),
          "finer-than-labelled", List.of("RP-IMG-039"),
          "packed-too-tight", List.of("RP-IMG-016"));

  @TempDir Path folder;

  static List<Told> stories() {
    return ToldStories.all();
  }

  private static Transaction read(ByteSource bytes) {
    return new TransactionReader(ToldStories.TABLES, ParseLimits.standard()).read(bytes);
  }

  private static String structure(List<Finding> findings) {
    return findings.stream()
        .filter(finding -> finding.ruleId().startsWith("RP-STR-"))
        .map(finding -> finding.ruleId() + " " + finding.location() + " " + finding.required())
        .collect(Collectors.joining("\n"));
  }

  private static List<String> layout(Transaction transaction) {
    return transaction.records().stream()
        .map(
            record ->
                record.type()
                    + " "
                    + record.idc()
                    + " "
                    + record.range()
                    + record.fields().stream().map(f -> f.number() + "@" + f.range()).toList())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("stories")
  void theLayoutAndItsDamageAreThoseOfTheOriginal(Told told) {
    Transaction copy = read(told.copy().bytes());
    assertEquals(layout(told.report().transaction()), layout(copy));
    assertEquals(structure(told.report().transaction().findings()), structure(copy.findings()));
    assertEquals(told.bytes().length, told.copy().bytes().length());
  }

  @ParameterizedTest
  @MethodSource("stories")
  void noImageOfTheCopyShowsAnything(Told told) {
    ByteSource copy = told.copy().bytes();
    FindingsReport report = ToldStories.EXAMINER.examine(copy, IMAGES);
    for (int i = 0; i < report.images().size(); i++) {
      ExaminedImage before = told.report().images().get(i);
      ExaminedImage after = report.images().get(i);
      assertFalse(before.data().equals(after.data()));
      assertEquals(before.pixels().isPresent(), after.pixels().isPresent(), told.name());
      boolean sound = before.decodingDefects().isEmpty();
      if (sound && after.pixels().isPresent()) {
        assertTrue(after.pixels().get().grayLevels() <= FEW_LEVELS, told.name() + " " + i);
        assertEquals(before.pixels().get().width(), after.pixels().get().width());
        assertEquals(before.pixels().get().height(), after.pixels().get().height());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("stories")
  void theCopyReproducesAllButWhatTheTicketNames(Told told) {
    // What was seen of ridges goes with the images, as it must.
    List<String> lost =
        rules(told.copy().lost()).stream().filter(rule -> !rule.matches(OF_RIDGES)).toList();
    assertEquals(NOT_REPRODUCED.getOrDefault(told.name(), List.of()), lost, told.name());
    // A note objects to nothing: where a blank image contradicts an annotation no longer, it is
    // one.
    List<FindingChange> gained =
        told.copy().gained().stream()
            .filter(change -> change.finding().severity() != Severity.NOTE)
            .toList();
    for (String rule : rules(gained)) {
      assertTrue(rule.equals(ONE_GRAY_LEVEL), () -> told.name() + " " + rule);
    }
  }

  private static List<String> rules(List<FindingChange> changes) {
    return changes.stream().map(change -> change.finding().ruleId()).distinct().sorted().toList();
  }

  @Test
  void whyTheCopyDoesNotShowAFindingIsSaidInPlainWords() {
    Map<String, Set<String>> words = new TreeMap<>();
    for (Told told : stories()) {
      for (FindingChange change : told.copy().lost()) {
        words
            .computeIfAbsent(change.finding().ruleId().substring(0, 7), area -> new TreeSet<>())
            .add(change.reason().inWords());
      }
    }
    assertEquals(
        Map.of(
            "RP-IMG-", Set.of("the image was replaced"),
            "RP-PTL-", Set.of("the value was replaced"),
            "RP-RDG-", Set.of("the ridges were replaced with the image"),
            "RP-SEQ-", Set.of("the fingers were replaced with the images"),
            "RP-TXN-", Set.of("the image was replaced")),
        words);
  }

  @ParameterizedTest
  @MethodSource("stories")
  void noValueOfThePersonIsInTheCopy(Told told) {
    String copy = latin(told.copy().bytes()).toUpperCase(Locale.ROOT);
    for (String value : PersonalForms.words(told.report().transaction())) {
      assertFalse(copy.contains(value.toUpperCase(Locale.ROOT)), told.name());
    }
  }

  @Test
  void theSameFileGivesTheSameCopy() {
    Told told = story("country-as-birthplace");
    ExaminationOptions options = ToldStories.options(told.scenario());
    SafeCopy again =
        new Deidentifier(ToldStories.EXAMINER, options)
            .of(ToldStories.EXAMINER.examine(ByteSource.of(told.bytes().clone()), options));
    assertArrayEquals(told.copy().bytes().toArray(), again.bytes().toArray());
  }

  @Test
  void aCopyIsTheSameHoweverDeepTheFileWasLookedAt() {
    for (Told told : List.of(story("finger-twice"), story("country-as-birthplace"))) {
      ExaminationOptions options = ToldStories.options(told.scenario()).withDepth(Depth.STRUCTURE);
      SafeCopy quick =
          new Deidentifier(ToldStories.EXAMINER, options)
              .of(ToldStories.EXAMINER.examine(ByteSource.of(told.bytes()), options));
      assertArrayEquals(told.copy().bytes().toArray(), quick.bytes().toArray(), told.name());
    }
  }

  private static boolean isWordOfMarks(String value) {
    return ToldStories.TABLES.codes("smt-sources").codes().stream()
        .anyMatch(code -> code.code().contains(value.toUpperCase(Locale.ROOT)));
  }

  @Test
  void aCopyOfAReferenceFileReadsWithTheSameRecordsAndShowsNoImage() {
    for (Path file : ReferenceFiles.all()) {
      ByteSource bytes = ByteSource.of(ReferenceFiles.read(file.getFileName().toString()));
      FindingsReport report = ToldStories.EXAMINER.examine(bytes, IMAGES);
      SafeCopy copy = new Deidentifier(ToldStories.EXAMINER, IMAGES).of(report);
      FindingsReport copied = ToldStories.EXAMINER.examine(copy.bytes(), IMAGES);
      String name = file.getFileName().toString();
      assertEquals(layout(report.transaction()), layout(copied.transaction()), name);
      assertEquals(List.of(), rules(copy.lost()), name);
      for (ExaminedImage image : copied.images()) {
        assertTrue(
            image.pixels().filter(pixels -> pixels.grayLevels() <= FEW_LEVELS).isPresent(), name);
      }
      String text = latin(copy.bytes()).toUpperCase(Locale.ROOT);
      for (String value : PersonalForms.words(report.transaction())) {
        // A word of the table of marks tells of nobody, and another mark of the table has it too.
        if (!isWordOfMarks(value)) {
          assertFalse(text.contains(value.toUpperCase(Locale.ROOT)), name);
        }
      }
    }
  }

  @Test
  void theTicketNamesTheCopyAndWhatItDoesNotShow() throws IOException {
    Told told = story("country-as-birthplace");
    Path file = Files.write(folder.resolve("file.an2"), told.bytes());
    Path copy = folder.resolve("copy.an2");
    CommandRun run =
        CommandRun.of(
            "ticket",
            file.toString(),
            "--depth",
            "images",
            "--profile",
            told.scenario().expects().profile().isEmpty()
                ? "identification-flats"
                : told.scenario().expects().profile(),
            "--attach-safe-copy",
            copy.toString());
    assertEquals(0, run.status(), run.error());
    String words = run.out().replaceAll("\\s+", " ");
    assertTrue(words.contains("Name copy.an2"), words);
    assertTrue(words.contains(ByteSource.of(Files.readAllBytes(copy)).sha256()), words);
    assertTrue(words.contains("Not reproduced in the copy: RP-PTL-010 "), words);
    assertTrue(words.contains("(record 2): the value was replaced."), words);
    assertFalse(words.contains("Only in the copy"), words);
    assertArrayEquals(told.bytes(), Files.readAllBytes(file));
  }

  @Test
  void anExistingFileOrTheInputIsNotOverwritten() throws IOException {
    Path file = Files.write(folder.resolve("file.an2"), story("clean-flats").bytes());
    Path copy = Files.write(folder.resolve("copy.an2"), new byte[] {1});
    String attach = "--attach-safe-copy";
    CommandRun.of("ticket", file.toString(), attach, copy.toString())
        .isOneLineOf(ExitStatus.INPUT_OUTPUT, "already exists");
    assertArrayEquals(new byte[] {1}, Files.readAllBytes(copy));
    CommandRun.of("ticket", file.toString(), attach, file.toString(), "--overwrite")
        .isOneLineOf(ExitStatus.USAGE, "input files are never changed");
    String same = folder.resolve("new.txt").toString();
    CommandRun.of("ticket", file.toString(), attach, same, "--output", same)
        .isOneLineOf(ExitStatus.USAGE, "need different files");
    CommandRun run =
        CommandRun.of(
            "ticket",
            file.toString(),
            "--depth",
            "structure",
            attach,
            copy.toString(),
            "--overwrite");
    assertEquals(0, run.status(), run.error());
    assertEquals(Files.size(file), Files.size(copy));
  }

  private static Told story(String name) {
    return stories().stream().filter(told -> told.name().equals(name)).findFirst().orElseThrow();
  }

  private static String latin(ByteSource bytes) {
    return bytes.latin1(0, bytes.length());
  }

  @Test
  void aFaultyPrintIsReproducedByAPrintOfNobody() {
    Told told = story("dry-and-wet");
    ExaminationOptions options = ToldStories.options(told.scenario()).withDepth(Depth.RIDGES);
    FindingsReport report =
        ToldStories.EXAMINER.examine(ByteSource.of(told.bytes().clone()), options);
    SafeCopy copy =
        new Deidentifier(ToldStories.EXAMINER, options, new SyntheticPrints()).of(report);
    assertEquals(told.bytes().length, copy.bytes().length());
    List<String> lost = rules(copy.lost());
    assertFalse(lost.contains("RP-RDG-004") || lost.contains("RP-RDG-005"), lost.toString());
    assertEquals(
        List.of(),
        copy.gained().stream()
            .filter(change -> change.finding().severity() == Severity.BLOCKING)
            .toList());
    TransactionComparison comparison =
        TransactionComparison.of(
            report,
            ToldStories.EXAMINER.examine(copy.bytes(), options),
            new ImageExtraction(ToldStories.TABLES, DecodingLimits.standard()),
            IgnoredFields.parse(IgnoredFields.STANDARD));
    for (RecordPair pair : comparison.pairs()) {
      assertTrue(
          pair.fingers().stream()
              .flatMap(fingers -> fingers.prints().stream())
              .noneMatch(print -> print.answer() == PrintComparison.Answer.SAME_FINGER),
          pair.first().ordinal() + " shows the finger of the original");
    }
  }
}
