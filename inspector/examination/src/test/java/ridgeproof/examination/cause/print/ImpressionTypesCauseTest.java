package ridgeproof.examination.cause.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.finding.Finding;

class ImpressionTypesCauseTest {

  private static final List<String> RULES =
      List.of("RP-TXN-009", "RP-TXN-081", "RP-TXN-082", "RP-TXN-010", "RP-TXN-042");

  /** What is found once these positions have this impression type. */
  private static List<Finding> found(IntPredicate positions, int impression) {
    SampleCard card = SampleCard.rolledTagged();
    for (int position = 1; position <= 14; position++) {
      if (positions.test(position)) {
        card = card.with(position + 2, draft -> draft.with(3, Integer.toString(impression)));
      }
    }
    return card.examine().findings().stream()
        .filter(finding -> RULES.contains(finding.ruleId()))
        .toList();
  }

  private static List<String> ids(List<Finding> findings) {
    return findings.stream().map(Finding::ruleId).toList();
  }

  @Test
  void aSoundCardIsNotAccused() {
    assertEquals(List.of(), found(position -> false, 0));
  }

  @Test
  void oneRollFiledAsPlainIsToldAtItsRecord() {
    List<Finding> found = found(position -> position == 4, 0);
    assertEquals(List.of("RP-TXN-081"), ids(found));
    assertEquals(OptionalInt.of(4), found.get(0).location().position());
  }

  @Test
  void allRollsFiledAsPlainAreOneFindingOfTheFile() {
    List<Finding> found = found(position -> position <= 10, 0);
    assertEquals(List.of("RP-TXN-081"), ids(found));
    assertEquals("10 of 10 rolled prints coded as plain", found.get(0).observed().text());
  }

  @Test
  void plainPrintsOfAllKindsFiledAsRolledAreOneFinding() {
    assertEquals(List.of("RP-TXN-082"), ids(found(position -> position > 10, 1)));
  }

  @Test
  void oneSlapFiledAsRolledSaysSoItself() {
    assertEquals(List.of("RP-TXN-009"), ids(found(position -> position == 13, 1)));
  }

  @Test
  void plainPrintsByThemselvesWithoutSlapsAreFlats() {
    SampleCard card = SampleCard.rolledTagged();
    for (int record = 16; record > 12; record--) {
      card = card.without(record);
    }
    for (int position = 1; position <= 10; position++) {
      card = card.with(position + 2, draft -> draft.with(3, "0"));
    }
    assertEquals(
        List.of(),
        card.examine().findings().stream()
            .map(Finding::ruleId)
            .filter("RP-TXN-081"::equals)
            .toList());
  }
}
