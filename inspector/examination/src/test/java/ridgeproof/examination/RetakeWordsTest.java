package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.RuleRow;

class RetakeWordsTest {

  private static final SpecTables TABLES = SpecTables.open();

  private static Finding finding(RuleRow rule) {
    return new Finding(
        rule,
        rule.severity(),
        Location.file(),
        Observed.of("something"),
        "nothing",
        rule.explanation(),
        rule.remedy(),
        rule.source(),
        List.of());
  }

  @Test
  void noRemedyIsCutHoweverManyThereAre() {
    List<Finding> answered =
        TABLES.catalogue().rules().stream()
            .filter(rule -> rule.id().startsWith("RP-RDG-"))
            .map(RetakeWordsTest::finding)
            .toList();
    String words = new RetakeWords(TABLES).how(answered);
    for (Finding finding : answered) {
      String remedy = finding.remedy().replace("{finger}", "the finger");
      assertTrue(words.contains(remedy), remedy);
    }
  }

  @Test
  void fingersOfOneHandAreNamedTogether() {
    assertEquals(
        "right index and ring fingers",
        RetakeWords.together(List.of("right index finger", "right ring finger")));
    assertEquals(
        "left index, middle, ring, and little fingers",
        RetakeWords.together(
            List.of(
                "left index finger",
                "left middle finger",
                "left ring finger",
                "left little finger")));
  }

  @Test
  void otherPrintsAreNamedInFull() {
    assertEquals("right thumb", RetakeWords.together(List.of("right thumb")));
    assertEquals(
        "left thumb and the right thumb",
        RetakeWords.together(List.of("left thumb", "right thumb")));
    assertEquals("finger", RetakeWords.together(List.of("finger")));
  }
}
