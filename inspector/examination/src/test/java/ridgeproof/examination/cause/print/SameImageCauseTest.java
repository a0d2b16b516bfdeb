package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;

class SameImageCauseTest {

  private static final String RULE = "RP-TXN-080";
  private static final int SIDE = 100;

  private static SampleCard noisy(SampleCard card, int record, long seed) {
    byte[] pixels = new byte[SIDE * SIDE];
    new Random(seed).nextBytes(pixels);
    return card.with(
            record, draft -> draft.with(6, Integer.toString(SIDE)).with(7, Integer.toString(SIDE)))
        .withField(record, FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(pixels)));
  }

  @Test
  void oneImageInTwoBoxesIsReportedAtTheSecond() {
    SampleCard card = noisy(noisy(SampleCard.rolledTagged(), 5, 1), 9, 1);
    List<Finding> found =
        card.examine().findings().stream().filter(f -> f.ruleId().equals(RULE)).toList();
    assertEquals(1, found.size());
    assertEquals(OptionalInt.of(9), found.get(0).location().record());
    assertEquals(OptionalInt.of(7), found.get(0).location().position());
  }

  @Test
  void imagesThatDifferAreNot() {
    SampleCard card = noisy(noisy(SampleCard.rolledTagged(), 5, 1), 9, 2);
    assertFalse(SampleRecords.reports(card, RULE));
  }

  @Test
  void smallImagesOfNothingAreAlike() {
    assertFalse(SampleRecords.reports(SampleCard.rolledTagged(), RULE));
  }

  @Test
  void theSamePositionTwiceIsAnotherFault() {
    SampleCard card =
        noisy(noisy(SampleCard.rolledTagged(), 5, 1), 9, 1).with(9, draft -> draft.with(13, "3"));
    assertFalse(SampleRecords.reports(card, RULE));
  }
}
