package ridgeproof.corpus.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import ridgeproof.corpus.composition.FileEncoding;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.xml.writer.TraditionalDrafts;

class CorpusCommandTest {

  @TempDir Path folder;

  private final StringWriter error = new StringWriter();

  private int run(String... arguments) {
    CommandLine line = CorpusCommand.commandLine();
    line.setErr(new PrintWriter(error));
    return line.execute(arguments);
  }

  @Test
  void theSameOptionsGiveTheSameFolderWhateverTheNumberOfCores() throws Exception {
    Path one = Files.createDirectory(folder.resolve("one"));
    Path other = folder.resolve("other");
    new Batch(new SubjectPlan(11, 0.5, 0.5), one, 1, FileEncoding.TRADITIONAL).write(2);
    assertEquals(
        0,
        run(
            "--subjects",
            "2",
            "--seed",
            "11",
            "--defect-rate",
            "0.5",
            "--output",
            other.toString()));
    List<String> names = List.of("labels.csv", "subject-000001.an2", "subject-000002.an2");
    try (var files = Files.list(other)) {
      assertEquals(
          names, files.map(f -> f.getFileName().toString()).sorted().collect(Collectors.toList()));
    }
    for (String name : names) {
      assertArrayEquals(
          Files.readAllBytes(one.resolve(name)), Files.readAllBytes(other.resolve(name)), name);
    }
    List<String> labels = Files.readAllLines(other.resolve("labels.csv"));
    assertEquals("file,position,defect,strength,mistake", labels.get(0));
    assertTrue(
        labels.stream().skip(1).allMatch(l -> l.matches("subject-00000[12]\\.an2,.*,.*,.*,.*")));
    assertTrue(error.toString().contains("2 files in "), error::toString);
  }

  @Test
  void aBatchInXmlHoldsTheSameTransactions() throws IOException {
    Path traditional = folder.resolve("traditional");
    Path xml = folder.resolve("xml");
    String options = "--subjects 1 --seed 3 --defect-rate 0 --output ";
    assertEquals(0, run((options + traditional).split(" ")));
    assertEquals(0, run((options + xml + " --encoding xml").split(" ")));
    Path file = xml.resolve("subject-000001.xml");
    TransactionReader reader = new TransactionReader(SpecTables.open(), ParseLimits.standard());
    Transaction read = reader.read(ByteSource.of(Files.readAllBytes(file)));
    assertTrue(read.isXml());
    assertArrayEquals(
        Files.readAllBytes(traditional.resolve("subject-000001.an2")),
        new TraditionalDrafts(SpecTables.open()).write(read));
    assertEquals(
        Files.readString(traditional.resolve("labels.csv")).replace(".an2", ".xml"),
        Files.readString(xml.resolve("labels.csv")));
  }

  @Test
  void aFolderThatHoldsSomethingIsLeftAlone() throws IOException {
    Files.writeString(folder.resolve("mine.txt"), "mine");
    assertEquals(74, run("--subjects", "1", "--output", folder.toString()));
    assertFalse(Files.exists(folder.resolve("labels.csv")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"--subjects=0", "--subjects=1 --defect-rate=2", "--subjects=1 --what"})
  void wrongUsageWritesNothing(String options) throws IOException {
    Path target = folder.resolve("new");
    assertEquals(64, run((options + " --output=" + target).split(" ")));
    assertFalse(Files.exists(target));
  }

  @Test
  void defectsAndMistakesComeAtTheRateAskedFor() {
    SubjectPlan plan = new SubjectPlan(3, 0.2, 0.2);
    List<Scenario> stories = IntStream.rangeClosed(1, 2000).mapToObj(plan::scenario).toList();
    double images = stories.stream().mapToInt(s -> s.prints().boxes().size()).sum();
    double defects = stories.stream().mapToInt(s -> s.defects().size()).sum();
    double wrong = stories.stream().mapToInt(s -> s.mistakes().size() + s.damages().size()).sum();
    assertEquals(0.2, defects / images, 0.015);
    assertEquals(0.2, wrong / stories.size(), 0.04);
    assertTrue(new SubjectPlan(3, 0, 0).scenario(1).defects().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void withoutDefectsAFileIsReady(int subject) {
    Scenario scenario = new SubjectPlan(3, 0, 0).scenario(subject);
    byte[] bytes = new TransactionComposer(new SubjectCache()).compose(scenario).bytes();
    FindingsReport report =
        new Examiner(SpecTables.open(), ParseLimits.standard())
            .examine(ByteSource.of(bytes), ExaminationOptions.standard().withDepth(Depth.IMAGES));
    assertEquals(Verdict.READY, report.verdict(), () -> report.findings().get(0).rule().title());
  }

  @Test
  void everySubjectHasFingersOfItsOwn() {
    SubjectPlan plan = new SubjectPlan(3, 0.2, 0.2);
    long people =
        IntStream.rangeClosed(1, 500)
            .mapToLong(subject -> plan.scenario(subject).subject().person())
            .distinct()
            .count();
    assertEquals(500, people);
  }
}
