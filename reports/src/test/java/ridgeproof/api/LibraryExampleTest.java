package ridgeproof.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example of {@code docs/library.md}, compiled and run as it stands there. */
class LibraryExampleTest {

  private static final Path PROJECT = Path.of("").toAbsolutePath().getParent();
  private static final Path FAULTY = PROJECT.resolve("docs/examples/date-turned-round.an2");

  @TempDir Path folder;

  private static String block(String name) throws IOException {
    String page = Files.readString(PROJECT.resolve("docs/library.md"));
    Matcher block =
        Pattern.compile("<!-- " + name + " -->\\n```\\w+\\n(.*?)```", Pattern.DOTALL).matcher(page);
    assertTrue(block.find(), "docs/library.md has no block named " + name);
    return block.group(1);
  }

  @Test
  void theExampleOfThePageDoesWhatThePageSays() throws Exception {
    Path source = Files.writeString(folder.resolve("CheckBeforeSending.java"), block("example"));
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    ByteArrayOutputStream problems = new ByteArrayOutputStream();
    int status =
        compiler.run(
            null,
            null,
            problems,
            "--release",
            "17",
            "-proc:none",
            "-cp",
            System.getProperty("java.class.path"),
            "-d",
            folder.toString(),
            source.toString());
    assertEquals(0, status, problems.toString(StandardCharsets.UTF_8));
    assertEquals(block("output"), run(FAULTY));
  }

  /** What the class prints; standard output is restored whatever happens. */
  private String run(Path file) throws Exception {
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    try (URLClassLoader loader =
        new URLClassLoader(new URL[] {folder.toUri().toURL()}, getClass().getClassLoader())) {
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      loader
          .loadClass("CheckBeforeSending")
          .getMethod("main", String[].class)
          .invoke(null, (Object) new String[] {file.toString()});
    } finally {
      System.setOut(before);
    }
    return printed.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
  }
}
