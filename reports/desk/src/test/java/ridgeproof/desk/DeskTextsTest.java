package ridgeproof.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
}
