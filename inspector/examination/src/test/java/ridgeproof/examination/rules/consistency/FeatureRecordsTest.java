package ridgeproof.examination.rules.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;
import static ridgeproof.examination.SampleRecords.pixelFeatures;
import static ridgeproof.examination.SampleRecords.standardFeatures;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.transaction.writer.RecordDraft;

/** Counts, numbers and sizes of features, beside {@code FeatureRulesTest}. */
class FeatureRecordsTest {

  private static SampleCard pixels(UnaryOperator<RecordDraft> change) {
    return SampleCard.rolledTagged().plus(change.apply(pixelFeatures(3, 3)));
  }

  private static List<String> minutia(String number) {
    return List.of(number, "1", "1", "0", "1", "80");
  }

  @Test
  void anEmptyListOfMinutiaeIsNotCounted() {
    SampleCard card = SampleCard.rolled().plus(standardFeatures(3, 3).with(10, "0").with(12, ""));
    assertEquals(List.of(), found(card, "RP-TXN-027", "RP-TXN-029"));
  }

  @Test
  void theLastMinutiaIsNumberedToo() {
    assertEquals(
        List.of("RP-TXN-029 record 17 field 9.137 subfield 2: minutia 2 is numbered 3; 2"),
        found(
            pixels(draft -> draft.with(137, List.of(minutia("001"), minutia("003")))),
            "RP-TXN-029"));
  }

  @ParameterizedTest
  @CsvSource({"128, 33", "129, 25"})
  void oneSideThatDiffersIsEnough(int field, String pixels) {
    assertEquals(
        List.of(
            "RP-TXN-031 record 17 field 9.128: "
                + (field == 128 ? "1.7 x 1.2" : "1.6 x 1.3")
                + " mm; 1.6 x 1.2 mm, as the image has"),
        found(pixels(draft -> draft.with(field, pixels)), "RP-TXN-031"));
  }

  @ParameterizedTest
  @ValueSource(ints = {128, 129, 131, 132})
  void aSizeOrAScaleOfNothingIsNoSize(int field) {
    assertEquals(List.of(), found(pixels(draft -> draft.with(field, "0")), "RP-TXN-031"));
  }
}
