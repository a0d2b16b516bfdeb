package ridgeproof.corpus.scenario;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ridgeproof.corpus.composition.ComposedTransaction;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.finding.Finding;

@Tag("slow")
class DemonstrationSetTest {

  /** The bytes of a photograph come from the JPEG library of the machine. */
  private static final List<String> WITH_JPEG = List.of("face-and-signature");

  /** What a story is about, where it has consequences that are findings too. */
  private static final Map<String, String> FIRST =
      Map.of("missing-little-finger", "RP-TXN-004", "separator-lost", "RP-STR-007");

  private static Map<String, ComposedTransaction> set;

  @BeforeAll
  static void compose() {
    TransactionComposer composer = new TransactionComposer(new SubjectCache());
    set =
        DemonstrationSet.scenarios().parallelStream()
            .map(composer::compose)
            .collect(Collectors.toMap(c -> c.scenario().name(), Function.identity()));
  }

  static List<String> names() {
    return DemonstrationSet.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void anExaminationFindsWhatTheStoryExpectsAndNothingElse(String name) {
    ComposedTransaction composed = set.get(name);
    Expectation expects = composed.scenario().expects();
    List<Finding> found = Expected.compared(composed);
    assertEquals(
        expects.findings(),
        Expected.rules(found),
        () ->
            name
                + ".toml: a rule of "
                + expects.areas()
                + " reports more or less than the story says; if the rule is right, change"
                + " [expects]: "
                + found.stream().map(f -> f.ruleId() + " " + f.observed().text()).toList());
    assertEquals(expects.verdict(), Expected.verdict(found));
    if (!found.isEmpty()) {
      assertEquals(
          FIRST.getOrDefault(name, expects.findings().get(0)),
          found.stream().min(Comparator.comparing(Finding::severity)).orElseThrow().ruleId(),
          "the first finding is not the story's");
    }
  }

  @Test
  void theFilesAreTheSameOnEveryMachine() throws IOException {
    Map<String, String> pinned = new TreeMap<>();
    for (String line : resource("demonstration-set.sha256").lines().toList()) {
      pinned.put(line.substring(66), line.substring(0, 64));
    }
    Map<String, String> made = new TreeMap<>();
    set.forEach((name, composed) -> made.put(name, Hashes.sha256(composed.bytes())));
    WITH_JPEG.forEach(made::remove);
    assertEquals(pinned, made);
  }

  @Test
  void theSameStoryGivesTheSameBytesAgain() {
    for (String name : List.of("clean-flats", "face-and-signature")) {
      byte[] again =
          new TransactionComposer(new SubjectCache())
              .compose(DemonstrationSet.scenario(name))
              .bytes();
      assertArrayEquals(set.get(name).bytes(), again, name);
    }
  }

  @Test
  void theExamplesAreWhatTheGeneratorMakes() throws IOException {
    Path examples = examples();
    Map<String, byte[]> there = new LinkedHashMap<>();
    try (var files = Files.list(examples)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".an2")).sorted().toList()) {
        there.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    assertEquals(
        List.of("clean-flats.an2", "date-turned-round.an2", "length-off-by-one.an2"),
        List.copyOf(there.keySet()));
    there.forEach(
        (file, bytes) -> assertArrayEquals(set.get(file.replace(".an2", "")).bytes(), bytes, file));
    assertTrue(there.values().stream().mapToInt(b -> b.length).sum() < 900_000);
  }

  private static Path examples() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("docs/examples"))) {
      folder = folder.getParent();
    }
    return folder.resolve("docs/examples");
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = DemonstrationSetTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
