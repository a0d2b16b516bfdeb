package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.transaction.writer.RecordDraft;

class DamagedAgreementTest {

  private static final int TRIES = 300;
  private static final int CHANGED_BYTES = 12;

  /** A card in which every rule on agreement has something to look at. */
  private static byte[] fullCard() {
    RecordDraft joint =
        SampleCard.taggedPrint(20, 19, 1)
            .with(14, List.of(List.of("1", "EJI")))
            .with(15, List.of(List.of("FV1", "NA", "0", "32", "0", "24")));
    return SampleCard.rolledTagged()
        .with(
            SampleRecords.RIGHT_SLAP,
            record ->
                record
                    .with(18, List.of(List.of("5", "UP")))
                    .with(21, SampleRecords.boxes(2, 3, 4))
                    .with(22, List.of(List.of("2", "1"), List.of("3", "255")))
                    .with(24, List.of(List.of("2", "80", "000F", "1")))
                    .with(25, List.of(SampleRecords.texts(2, 3, 0, 0, 8, 0, 8, 24)))
                    .with(992, "0"))
        .plus(joint)
        .plus(SampleRecords.standardFeatures(3, 3))
        .plus(SampleRecords.pixelFeatures(4, 4))
        .bytes();
  }

  @Test
  void damagedRecordsAreExaminedWithoutAnException() {
    byte[] whole = fullCard();
    Random random = new Random(20260302);
    ExaminationOptions options = ExaminationOptions.standard().withDepth(Depth.STRUCTURE);
    byte[] digits = "0123456789".getBytes(StandardCharsets.US_ASCII);
    for (int i = 0; i < TRIES; i++) {
      byte[] damaged = whole.clone();
      for (int k = 0; k < CHANGED_BYTES; k++) {
        int at = random.nextInt(damaged.length);
        damaged[at] =
            i % 2 == 0 ? (byte) random.nextInt(256) : digits[random.nextInt(digits.length)];
      }
      assertFalse(SampleCard.examine(damaged, options).findings().isEmpty(), "try " + i);
    }
  }
}
