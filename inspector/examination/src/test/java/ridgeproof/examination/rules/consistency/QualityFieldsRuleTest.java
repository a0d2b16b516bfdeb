package ridgeproof.examination.rules.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ridgeproof.examination.SampleRecords.RIGHT_SLAP;
import static ridgeproof.examination.SampleRecords.count;
import static ridgeproof.examination.SampleRecords.found;
import static ridgeproof.examination.SampleRecords.reports;
import static ridgeproof.examination.SampleRecords.tagged;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

class QualityFieldsRuleTest {

  private static List<String> rating(String position, String value, String product) {
    return List.of(position, value, "000F", product);
  }

  private static SampleCard slap(int field, List<List<String>> ratings) {
    return tagged(RIGHT_SLAP, record -> record.with(field, ratings));
  }

  @ParameterizedTest
  @ValueSource(strings = {"RP-TXN-024", "RP-TXN-025", "RP-TXN-026"})
  void oneRatingByEachMethodForFingersOfTheSlapIsNotReported(String rule) {
    assertFalse(reports(slap(24, List.of(rating("2", "80", "1"), rating("2", "70", "2"))), rule));
    assertFalse(reports(slap(24, List.of(rating("13", "80", "1"))), rule));
    assertFalse(reports(slap(22, List.of(List.of("2", "1"), List.of("3", "2"))), rule));
  }

  @ParameterizedTest
  @ValueSource(ints = {22, 23, 24})
  void aRatingOfAFingerThatTheImageDoesNotShowIsReported(int field) {
    List<String> rating = field == 22 ? List.of("7", "2") : rating("7", "80", "1");
    assertEquals(1, count(slap(field, List.of(rating)), "RP-TXN-024"));
  }

  @Test
  void aRatingOfAWholeSlapInTheRecordOfOneFingerIsReported() {
    assertTrue(
        reports(
            tagged(4, record -> record.with(24, List.of(rating("13", "80", "1")))), "RP-TXN-024"));
  }

  @Test
  void twoRatingsByOneMethodAreReported() {
    assertEquals(
        1, count(slap(24, List.of(rating("2", "80", "1"), rating("2", "70", "1"))), "RP-TXN-025"));
    assertEquals(1, count(slap(22, List.of(List.of("2", "1"), List.of("2", "2"))), "RP-TXN-025"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"254", "255"})
  void aRatingThatWasNotComputedIsNotedOnceForTheField(String value) {
    SampleCard card =
        slap(24, List.of(rating("2", value, "1"), rating("3", value, "1"), rating("4", "9", "1")));
    assertEquals(1, count(card, "RP-TXN-026"));
    assertTrue(
        card.examine().findings().stream()
            .filter(finding -> finding.ruleId().equals("RP-TXN-026"))
            .allMatch(finding -> finding.observed().text().contains(value + " for position 3")));
  }

  @ParameterizedTest
  @CsvSource({"21, 0", "25, 0", "20, 0", "23, 1"})
  void aPalmIsRatedWholeOrInPartsOfTheSameHand(String position, int times) {
    RecordDraft palm =
        RecordDraft.tagged(
            15,
            List.of(
                SampleCard.text(15, 1, ""),
                SampleCard.text(15, 2, "20"),
                SampleCard.text(15, 3, "10"),
                SampleCard.text(15, 13, "21"),
                FieldDraft.text(new FieldNumber(15, 24), List.of(rating(position, "80", "1")))));
    assertEquals(times, count(SampleCard.rolledTagged().plus(palm), "RP-TXN-024"));
  }

  @Test
  void anExtraDigitMayBeInASlapAndAPalmMayNot() {
    assertEquals(List.of(), found(slap(24, List.of(rating("16", "80", "1"))), "RP-TXN-024"));
    assertEquals(
        List.of(
            "RP-TXN-024 record 15 field 14.024 subfield 1 position 21:"
                + " position 21 in an image of position 13; a position shown in the image"),
        found(slap(24, List.of(rating("21", "80", "1"))), "RP-TXN-024"));
  }
}
