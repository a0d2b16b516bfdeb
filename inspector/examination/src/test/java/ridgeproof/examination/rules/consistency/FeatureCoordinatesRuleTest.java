package ridgeproof.examination.rules.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;
import static ridgeproof.examination.SampleRecords.pixelFeatures;
import static ridgeproof.examination.SampleRecords.standardFeatures;
import static ridgeproof.examination.SampleRecords.tagged;
import static ridgeproof.examination.SampleRecords.texts;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.transaction.writer.RecordDraft;

/** The image of the sample card has 32 x 24 pixels. */
class FeatureCoordinatesRuleTest {

  private static final String RULE = "RP-TXN-028";
  private static final int FINGER_3 = 5;

  private static List<String> pixels(UnaryOperator<RecordDraft> change) {
    return found(SampleCard.rolledTagged().plus(change.apply(pixelFeatures(3, 3))), RULE);
  }

  private static UnaryOperator<RecordDraft> core(int x, int y) {
    return draft -> draft.with(139, List.of(texts(x, y, 0)));
  }

  private static String outside(String field, String feature, String area) {
    return "RP-TXN-028 record 17 field "
        + field
        + " subfield 1: "
        + feature
        + ": 1 of 1 outside, first at number 1; within "
        + area;
  }

  @Test
  void theAreaThatTheRecordStatesGoesBeforeTheImage() {
    UnaryOperator<RecordDraft> larger = draft -> draft.with(128, "64").with(129, "48");
    assertEquals(List.of(), pixels(draft -> larger.apply(core(64, 48).apply(draft))));
    assertEquals(
        List.of(outside("9.139", "core", "64 x 48 pixels")),
        pixels(draft -> larger.apply(core(65, 48).apply(draft))));
    assertEquals(
        List.of(outside("9.139", "core", "64 x 48 pixels")),
        pixels(draft -> larger.apply(core(64, 49).apply(draft))));
  }

  @ParameterizedTest
  @CsvSource({"128", "129"})
  void anAreaOfWhichOneSideIsNotStatedIsThatOfTheImage(int left) {
    int other = left == 128 ? 129 : 128;
    UnaryOperator<RecordDraft> half = draft -> draft.with(other, "99").without(left);
    assertEquals(List.of(), pixels(draft -> half.apply(core(32, 24).apply(draft))));
    assertEquals(
        List.of(outside("9.139", "core", "32 x 24 pixels")),
        pixels(draft -> half.apply(core(33, 24).apply(draft))));
    assertEquals(
        List.of(outside("9.139", "core", "32 x 24 pixels")),
        pixels(draft -> half.apply(core(32, 25).apply(draft))));
  }

  @Test
  void theRegionOfInterestHasItsWidthFirst() {
    UnaryOperator<RecordDraft> region = draft -> draft.with(300, List.of(texts(100, 50)));
    List<String> out = List.of(outside("9.331", "minutia", "1.0 x 0.5 mm"));
    assertEquals(List.of(), pixels(draft -> minutia(105, 55, region.apply(draft))));
    assertEquals(out, pixels(draft -> minutia(106, 55, region.apply(draft))));
    assertEquals(out, pixels(draft -> minutia(105, 56, region.apply(draft))));
  }

  private static RecordDraft minutia(int x, int y, RecordDraft draft) {
    return draft.with(331, List.of(List.of(Integer.toString(x), Integer.toString(y), "0", "E")));
  }

  /** Twice as many pixels to the inch down as across: 1.63 x 0.61 mm. */
  @ParameterizedTest
  @CsvSource({"01670065, true", "01680065, false", "01670066, false"})
  void acrossAndDownHaveTheirOwnResolutions(String core, boolean inside) {
    SampleCard card =
        tagged(FINGER_3, draft -> draft.with(10, "1000"))
            .plus(
                standardFeatures(3, 3)
                    .without(9)
                    .with(8, core)
                    .with(12, List.of(List.of("001", "00000000000", "30", "A"))));
    assertEquals(
        inside ? List.of() : List.of(outside("9.008", "core", "1.6 x 0.6 mm")), found(card, RULE));
  }

  @Test
  void anImageOfUnknownResolutionLimitsNothingInMillimeters() {
    SampleCard card =
        tagged(FINGER_3, draft -> draft.without(9).without(10))
            .plus(standardFeatures(3, 3).with(8, "99999999"));
    assertEquals(List.of(), found(card, RULE));
  }

  @Test
  void aPlaceThatIsCutShortIsNoPlace() {
    SampleCard card = SampleCard.rolledTagged().plus(standardFeatures(3, 3).with(8, "9999999"));
    assertEquals(List.of(), found(card, RULE));
    assertEquals(List.of(), found(card.with(17, draft -> draft.with(8, "9999abcd")), RULE));
  }
}
