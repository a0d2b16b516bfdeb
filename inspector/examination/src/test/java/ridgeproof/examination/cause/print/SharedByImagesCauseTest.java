package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.finding.Finding;

/** What is wrong with all images alike is one finding; with one of them, a finding of that one. */
class SharedByImagesCauseTest {

  private static final String BYTES = "RP-IMG-011";

  private static List<Finding> found(int images) {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 3; record < 3 + images; record++) {
      card = card.with(record, draft -> draft.with(6, Integer.toString(SampleCard.WIDTH + 1)));
    }
    return card.examine().findings().stream()
        .filter(finding -> finding.ruleId().equals(BYTES))
        .toList();
  }

  @Test
  void ofAllImagesItIsOneFindingOfTheFile() {
    List<Finding> found = found(14);
    assertEquals(1, found.size());
    assertEquals(OptionalInt.empty(), found.get(0).location().record());
    assertTrue(found.get(0).observed().text().startsWith("14 of 14 images"));
    assertTrue(found.get(0).explains().isPresent());
  }

  @Test
  void ofTwoImagesItIsTwo() {
    assertEquals(2, found(2).size());
  }

  /** Which source a row has decides how grave it is: what is only remembered holds no file. */
  @Test
  void ofAllImagesItIsAsGraveAndFromTheSameSourceAsOfOne() {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 3; record < 17; record++) {
      card = card.with(record, draft -> draft.with(9, "1000").with(10, "1000").with(11, "WSQ20"));
    }
    assertEquals(
        Set.of("LIKELY ITL2015: compression algorithm codes"),
        card.examine().everyFinding().stream()
            .filter(finding -> finding.ruleId().equals("RP-IMG-012"))
            .map(f -> f.severity() + " " + f.source().document() + ": " + f.source().place())
            .collect(Collectors.toSet()));
  }
}
