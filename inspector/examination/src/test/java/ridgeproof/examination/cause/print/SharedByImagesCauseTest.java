package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
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
}
