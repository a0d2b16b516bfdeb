package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.testing.ReferenceFiles;

/**
 * Every finding on the conformant reference transactions is judged in {@code
 * reference-findings.txt}: it says something true of the file, or the rule is mended until it is
 * gone.
 */
class ReferenceFindingsTest {

  @Test
  void everyFindingOnAConformantFileHasBeenJudgedRight() throws IOException {
    TreeMap<String, Integer> found = new TreeMap<>();
    for (Path file : ReferenceFiles.all()) {
      for (Finding finding : Reports.examine(Files.readAllBytes(file), Depth.IMAGES).findings()) {
        String field = finding.location().field().map(Object::toString).orElse("-");
        found.merge(
            String.join(" ", file.getFileName().toString(), finding.ruleId(), field),
            1,
            Integer::sum);
      }
    }
    TreeMap<String, Integer> judged = new TreeMap<>();
    for (String line : table()) {
      String[] cells = line.split(" ", 6);
      assertEquals("right:", cells[4], line);
      assertTrue(cells[5].length() > 20, "a reason is missing: " + line);
      judged.put(String.join(" ", cells[0], cells[1], cells[2]), Integer.parseInt(cells[3]));
    }
    assertEquals(lines(judged), lines(found));
  }

  private static String lines(TreeMap<String, Integer> counts) {
    StringBuilder lines = new StringBuilder();
    counts.forEach((key, count) -> lines.append(key).append(' ').append(count).append('\n'));
    return lines.toString();
  }

  private static List<String> table() throws IOException {
    try (InputStream in =
        ReferenceFindingsTest.class.getResourceAsStream("reference-findings.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .toList();
    }
  }
}
