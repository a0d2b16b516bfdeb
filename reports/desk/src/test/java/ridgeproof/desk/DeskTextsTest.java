package ridgeproof.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ridgeproof.desk.view.Texts;

/** The bundle and the places that use it agree, so that a translation is one file. */
class DeskTextsTest {

  private static final Pattern IN_TEMPLATES = Pattern.compile("text\\(\"([a-z0-9.-]+)\"[,)]");
  private static final Pattern IN_SCRIPTS = Pattern.compile("desk\\.say\\('([a-z-]+)'");
  private static final Pattern WORDS = Pattern.compile(">\\s*[A-Za-z]{3,}[^<>{}$@]*<");

  private static final Pattern ATTRIBUTE =
      Pattern.compile("(?:aria-label|title|placeholder|alt)=\"[^\"$]*[A-Za-z]{3,}");
  private static final Pattern SENTENCE =
      Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*[A-Za-z]{2,} [a-z]{2,}(?:[^\"\\\\]|\\\\.)*\"");
  private static final Pattern SENTENCE_IN_SCRIPT =
      Pattern.compile("(['`\"])[^'`\"]*[A-Za-z]{2,} [a-z]{2,}[^'`\"]*\\1");

  private static Set<String> keys() throws IOException {
    Properties bundle = new Properties();
    try (Reader reader =
        new InputStreamReader(
            Texts.class.getResourceAsStream("desk.properties"), StandardCharsets.UTF_8)) {
      bundle.load(reader);
    }
    return new TreeSet<>(bundle.stringPropertyNames());
  }

  private static List<Path> files(String folder, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static Set<String> used(Pattern pattern, List<Path> files, String lead)
      throws IOException {
    Set<String> used = new TreeSet<>();
    for (Path file : files) {
      Matcher matcher = pattern.matcher(Files.readString(file));
      while (matcher.find()) {
        used.add(lead + matcher.group(1));
      }
    }
    return used;
  }

  @Test
  void everyTextThatIsUsedIsThere() throws IOException {
    Set<String> missing = used(IN_TEMPLATES, files("src/main/jte", ".jte"), "");
    missing.addAll(used(IN_SCRIPTS, files("src/main/resources", ".js"), "script."));
    missing.removeAll(keys());
    assertEquals(Set.of(), missing);
  }

  @Test
  void templatesHoldNoWordsOfTheirOwn() throws IOException {
    Set<String> words = new TreeSet<>();
    for (Path file : files("src/main/jte", ".jte")) {
      String markup = Files.readString(file).replaceAll("(?m)^@.*$", "");
      Matcher matcher = WORDS.matcher(markup);
      while (matcher.find()) {
        words.add(file.getFileName() + ": " + matcher.group());
      }
    }
    words.removeIf(
        found ->
            found.contains("Ridgeproof")
                || found.contains("kbd")
                || found.endsWith(">Tab<")
                || found.endsWith(">Esc<"));
    assertEquals(Set.of(), words);
  }

  @Test
  void attributesHoldNoWordsOfTheirOwn() throws IOException {
    assertEquals(
        Set.of(), linesWith(ATTRIBUTE, files("src/main/jte", ".jte"), line -> false), "templates");
  }

  /** What a program says to itself: exceptions, headers, a sign of life of a stream. */
  @Test
  void programsHoldNoSentences() throws IOException {
    assertEquals(
        Set.of(),
        linesWith(
            SENTENCE,
            files("src/main/java", ".java"),
            line ->
                line.contains("throw new")
                    || line.contains("sendComment(")
                    || line.contains("-src 'none'")
                    || line.contains("frame-ancestors")),
        "classes");
    assertEquals(
        Set.of(),
        linesWith(
            SENTENCE_IN_SCRIPT,
            files("src/main/resources", ".js"),
            line ->
                line.contains("'use strict'")
                    || line.contains(".style.")
                    || line.contains("className")),
        "scripts");
  }

  @Test
  void aSentenceOutsideTheBundleIsFoundOut() {
    assertTrue(ATTRIBUTE.matcher("<p title=\"Harbor closed\">").find());
    assertFalse(ATTRIBUTE.matcher("<p title=\"${frame.text(\"x\")}\">").find());
    assertTrue(SENTENCE.matcher("return \"The harbor is closed.\";").find());
    assertFalse(SENTENCE.matcher("return texts.of(\"harbor.closed\");").find());
    assertTrue(SENTENCE_IN_SCRIPT.matcher("say('The harbor is closed')").find());
  }

  /** Lines of code in which a pattern is found, comments apart. */
  private static Set<String> linesWith(
      Pattern pattern, List<Path> files, Predicate<String> isTechnical) throws IOException {
    Set<String> found = new TreeSet<>();
    for (Path file : files) {
      for (String line : Files.readAllLines(file)) {
        String code = line.strip();
        if (!code.startsWith("*")
            && !code.startsWith("//")
            && !code.startsWith("/*")
            && pattern.matcher(code).find()
            && !isTechnical.test(code)) {
          found.add(file.getFileName() + ": " + code);
        }
      }
    }
    return found;
  }
}
