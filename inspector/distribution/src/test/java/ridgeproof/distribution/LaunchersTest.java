package ridgeproof.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The launcher for Windows decides as the one of the shell. No Windows machine has run it. */
class LaunchersTest {

  private static final Path PROJECT = Path.of("").toAbsolutePath().getParent().getParent();

  private static String windows() throws IOException {
    return Files.readString(Path.of("src/main/dist/bin/ridgeproof.cmd"));
  }

  /** The launcher with the lines of the file that it reads, without what only makes the archive. */
  private static String shell() throws IOException {
    String common = Files.readString(PROJECT.resolve(".launcher/java.sh"));
    return Files.readString(Path.of("src/main/dist/bin/ridgeproof"))
        + common.substring(0, common.indexOf("make_archive()"));
  }

  private static Set<String> all(String pattern, String text) {
    Set<String> found = new TreeSet<>();
    for (Matcher matcher = Pattern.compile(pattern).matcher(text); matcher.find(); ) {
      found.add(matcher.group(1).replace('\\', '/').replace(".exe", ""));
    }
    return found;
  }

  private static List<Integer> places(String text, String... parts) {
    return java.util.Arrays.stream(parts).map(text::indexOf).toList();
  }

  @Test
  void bothPassTheSameFlags() throws IOException {
    Set<String> expected =
        Set.of(
            "-XX:+UseSerialGC",
            "-XX:-UsePerfData",
            "-XX:+IgnoreUnrecognizedVMOptions",
            "-XX:+UnlockDiagnosticVMOptions",
            "-XX:ArchiveRelocationMode=",
            "-XX:-AOTReplayTraining",
            "-XX:AOTCache=",
            "-XX:SharedArchiveFile=",
            "-XX:TieredStopAtLevel=1");
    for (String text : List.of(shell(), windows())) {
      String code = text.replaceAll("(?m)^\\s*(#|rem).*$", "");
      assertEquals(new TreeSet<>(expected), all("(-XX:[-+\\w]+(?:=1|=)?)", code));
      assertEquals(Set.of("-Xlog:disable", "-Xshare:auto"), all("(-X(?:log|share):\\w+)", code));
      assertEquals(Set.of(), all("(?<=\\s)(-D\\S+)", code));
    }
  }

  @Test
  void bothStartTheSameJarWithTheSameArchive() throws IOException {
    for (String text : List.of(shell(), windows())) {
      String slashes = text.replace('\\', '/');
      assertTrue(slashes.contains("ridgeproof.jar"), text);
      assertTrue(slashes.contains("classes.jsa"), text);
      assertTrue(slashes.contains(".aot"), text);
      assertTrue(text.indexOf("-XX:AOTCache=") < text.indexOf("-XX:SharedArchiveFile="), text);
    }
    assertEquals(1, all("-jar (\"\\$jar\" \"\\$@\")", shell()).size());
    assertEquals(1, all("-jar (\"%jar%\" %\\*)", windows()).size());
  }

  @Test
  void bothLookForJavaInTheSameOrder() throws IOException {
    List<Integer> shell =
        places(shell(), "\"$home/runtime/", "\"$home/../runtime/", "$JAVA_HOME/bin/java", " java)");
    List<Integer> windows =
        places(
            windows(), "%home%\\runtime\\", "%home%\\..\\runtime\\", "%JAVA_HOME%\\bin", "PATH:j");
    for (List<Integer> places : List.of(shell, windows)) {
      assertTrue(!places.contains(-1), places.toString());
      assertEquals(places.stream().sorted().toList(), places);
    }
  }

  @Test
  void bothAskForTheSameJavaInTheSameWords() throws IOException {
    assertEquals(Set.of("17"), all("MIN_JAVA=(\\d+)", shell()));
    assertEquals(Set.of("17"), all("%version% geq (\\d+)", windows()));
    String words = "(ridgeproof: Java 17 or newer is needed[^\"\\r\\n]*?)(?=\"| 1>)";
    assertEquals(1, all(words, shell()).size());
    assertEquals(all(words, shell()), all(words, windows()));
    assertEquals(Set.of("70"), all("exit (\\d+)", shell()));
    assertTrue(all("exit /b (\\S+)", windows()).contains("70"));
  }

  @Test
  void bothLetTheQuickCompilerWorkForOneOrTwoFiles() throws IOException {
    assertTrue(
        shell().contains("\"$folders\" -eq 0 ] && [ \"$files\" -ge 1 ] && [ \"$files\" -le 2 ]"));
    assertTrue(windows().contains("%folders% equ 0 if %files% geq 1 if %files% leq 2"));
  }
}
