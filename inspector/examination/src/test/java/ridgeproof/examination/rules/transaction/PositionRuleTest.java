package ridgeproof.examination.rules.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;
import static ridgeproof.examination.SampleRecords.tagged;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;

class PositionRuleTest {

  private static final String TWICE = "RP-TXN-003";
  private static final String MISFIT = "RP-TXN-009";

  private static SampleCard andAlso(int position, int impression) {
    return SampleCard.rolledTagged().plus(SampleCard.taggedPrint(15, position, impression));
  }

  @ParameterizedTest
  @CsvSource({"1, 1, 3", "11, 0, 13", "13, 0, 15"})
  void aSecondImageOfAPositionNamesTheFirst(int position, int impression, int first) {
    assertEquals(
        List.of(
            "RP-TXN-003 record 17 position "
                + position
                + ": also in record "
                + first
                + "; one image for position "
                + position),
        found(andAlso(position, impression), TWICE));
  }

  @Test
  void aThirdImageNamesTheFirstToo() {
    SampleCard card = andAlso(1, 1).plus(SampleCard.taggedPrint(16, 1, 1));
    assertEquals(
        List.of(
            "RP-TXN-003 record 17 position 1: also in record 3; one image for position 1",
            "RP-TXN-003 record 18 position 1: also in record 3; one image for position 1"),
        found(card, TWICE));
  }

  @Test
  void anotherImpressionOrRecordTypeIsAnotherPrint() {
    assertEquals(List.of(), found(andAlso(1, 0), TWICE));
    SampleCard binary = SampleCard.rolledTagged().plus(SampleCard.binaryPrint(15, 1, 1));
    assertEquals(List.of(), found(binary, TWICE));
  }

  @Test
  void latentsAndUnknownFingersMayBeThereTwice() {
    SampleCard latents = andAlso(1, 4).plus(SampleCard.taggedPrint(16, 1, 4));
    assertEquals(List.of(), found(latents, TWICE));
    SampleCard unknown = andAlso(0, 1).plus(SampleCard.taggedPrint(16, 0, 1));
    assertEquals(List.of(), found(unknown, TWICE));
  }

  @Test
  void aRecordWithoutImageIsNoSecondImage() {
    SampleCard card = SampleCard.rolledTagged().plus(SampleCard.taggedPrint(15, 1, 1).without(999));
    assertEquals(List.of(), found(card, TWICE));
  }

  @ParameterizedTest
  @CsvSource({"13, 11", "14, 12"})
  void aPlainPrintCannotBeARoll(int record, int position) {
    assertEquals(
        List.of(
            "RP-TXN-009 record "
                + record
                + " position "
                + position
                + ": impression type 1, rolled; a plain impression"),
        found(tagged(record, draft -> draft.with(3, "1")), MISFIT));
    assertEquals(List.of(), found(tagged(record, draft -> draft.with(3, "20")), MISFIT));
  }

  @Test
  void aPlainThumbMayBeInTheBoxOfItsRoll() {
    assertEquals(List.of(), found(tagged(3, draft -> draft.with(3, "0")), MISFIT));
  }

  @Test
  void aRecordWithoutImageHasNoImpression() {
    SampleCard card = tagged(13, draft -> draft.with(3, "1").without(999));
    assertEquals(List.of(), found(card, MISFIT));
  }
}
