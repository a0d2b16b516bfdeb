package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.MeasuredCard.at;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.MeasuredCard;
import ridgeproof.finding.Finding;

/** One image in two records: of which fingers it explains findings, and when it tells nothing. */
class SameImageEvidenceTest {

  private static SampleCard sharing(int bytes, int... records) {
    byte[] pixels = new byte[bytes];
    new Random(8).nextBytes(pixels);
    SampleCard card = SampleCard.rolledTagged();
    for (int record : records) {
      card = card.with(record, draft -> RuleExamples.data(draft, pixels));
    }
    return card;
  }

  private static List<String> told(SampleCard card, Finding... found) {
    return MeasuredCard.of(card).told(new SameImageCause(), found);
  }

  @Test
  void theImageOfARollInTheRecordOfASlapExplainsFingersOfBoth() {
    assertEquals(
        List.of(
            "RP-TXN-080 record 15 finger 13: the image of the left middle finger, byte for byte;"
                + " a separate capture"
                + " -> RP-SEQ-001 record 10 finger 8, RP-SEQ-001 record 15 finger 13,"
                + " RP-SEQ-001 record 4 finger 2, RP-SEQ-001 record 7 finger 5"),
        told(
            sharing(5000, 10, 15),
            at("RP-SEQ-001", 10, 8),
            at("RP-SEQ-001", 15, 13),
            at("RP-SEQ-001", 4, 2),
            at("RP-SEQ-001", 7, 5),
            at("RP-SEQ-001", 9, 7),
            at("RP-RDG-002", 10, 8)));
    assertEquals(Set.of("RP-TXN-080"), new SameImageCause().ids());
  }

  @Test
  void anImageThatTakesNoMoreThanABlankOneTellsNothing() {
    assertEquals(List.of(), told(sharing(4096, 5, 9)));
    assertEquals(1, told(sharing(4097, 5, 9)).size());
  }

  @Test
  void imagesOfOneGrayLevelAreAlike() {
    for (String rule : List.of("RP-IMG-033", "RP-IMG-034")) {
      assertEquals(List.of(), told(sharing(5000, 5, 9), at(rule, 5, 3)));
      assertEquals(List.of(), told(sharing(5000, 5, 9), at(rule, 9, 7)));
      assertEquals(1, told(sharing(5000, 5, 9), at(rule, 6, 4)).size());
    }
    assertEquals(1, told(sharing(5000, 5, 9), at("RP-IMG-035", 5, 3)).size());
  }

  @Test
  void aPrintOfAnUnknownFingerMayBeThereOnPurpose() {
    assertEquals(List.of(), told(sharing(5000, 5, 9).with(9, draft -> draft.with(13, "0"))));
    assertEquals(List.of(), told(sharing(5000, 5, 9).with(5, draft -> draft.with(13, "0"))));
  }
}
