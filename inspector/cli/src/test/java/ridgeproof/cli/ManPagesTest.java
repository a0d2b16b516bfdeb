package ridgeproof.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each command has a manual page that says what its help says. */
class ManPagesTest {

  @TempDir Path folder;

  @Test
  void everyCommandHasAPage() throws Exception {
    ManPages.write(folder.toFile(), "7.8.9");
    for (String command : UsageTest.commands()) {
      String page = Files.readString(folder.resolve("ridgeproof-" + command + ".adoc"));
      assertEquals(List.of(), Voice.faults(command, page.replaceAll("\\{[^}]*\\}", "")));
      assertTrue(page.startsWith("// tag::picocli-generated-full-manpage[]"), page);
    }
    String whole = Files.readString(folder.resolve("ridgeproof.adoc"));
    assertTrue(whole.contains(":mansource: ridgeproof 7.8.9"), whole);
    String examine = Files.readString(folder.resolve("ridgeproof-examine.adoc"));
    for (String part : List.of("What to check:", "--profile", "Limits", "--max-file-size")) {
      assertTrue(examine.contains(part), part);
    }
  }
}
