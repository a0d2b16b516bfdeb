package ridgeproof.examination.rules.transaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.SampleRecords.found;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.agency.AgencyProfileReader;
import ridgeproof.spec.agency.ProfileReading;

/** Beside {@code WholeSetTest}: sets that are the user's choice, and lone fingers. */
class CompletenessRuleTest {

  private static final String[] RULES =
      new CompletenessRule().ids().stream().sorted().toArray(String[]::new);

  private static List<String> chosen(
      SampleCard card, UnaryOperator<ExaminationOptions> change, String... rules) {
    ExaminationOptions options =
        ExaminationOptions.standard().withToday(SampleCard.TODAY).withDepth(Depth.IMAGES);
    return found(SampleCard.examine(card.bytes(), change.apply(options)), rules);
  }

  @Test
  void theOnlyFingerThatIsNotAnnotatedIsNamed() {
    List<List<String>> declared =
        IntStream.rangeClosed(1, 10)
            .filter(finger -> finger != 6)
            .mapToObj(finger -> List.of(Integer.toString(finger), "XX"))
            .toList();
    SampleCard lone = SampleCard.ofType("FAUF").with(2, draft -> draft.with(84, declared));
    assertEquals(
        List.of(
            "RP-TXN-004 position 6: no image of position 6;"
                + " an image, or an annotation that explains its absence (Rolled tenprint card)"),
        found(lone, RULES));
    assertEquals(List.of(), found(lone.plus(SampleCard.taggedPrint(6, 6, 0)), RULES));
  }

  @Test
  void aSetOfTheUsersChoiceLacksEachPrintThatIsNotThere() {
    SampleCard rolls = SampleCard.ofType("FAUF", IntStream.rangeClosed(1, 10).toArray());
    assertEquals(
        List.of(
            "RP-TXN-004 position 11: no image of position 11;"
                + " an image, or an annotation that explains its absence (Rolled tenprint card)",
            "RP-TXN-004 position 12: no image of position 12;"
                + " an image, or an annotation that explains its absence (Rolled tenprint card)",
            "RP-TXN-004 position 13: no image of position 13;"
                + " an image, or an annotation that explains its absence (Rolled tenprint card)",
            "RP-TXN-004 position 14: no image of position 14;"
                + " an image, or an annotation that explains its absence (Rolled tenprint card)"),
        chosen(
            rolls,
            options -> options.withProfile(SampleCard.TABLES.profile("rolled-card")),
            RULES));
  }

  @Test
  void aSetOfFewerFingersLacksOnlyThese() {
    assertEquals(
        List.of(
            "RP-TXN-004 position 1: no image of position 1;"
                + " an image, or an annotation that explains its absence (Thumbs of the pier)"),
        chosen(SampleCard.ofType("QQQ", 6), CompletenessRuleTest::thumbs, RULES));
    assertEquals(
        List.of(), chosen(SampleCard.ofType("QQQ", 1, 6), CompletenessRuleTest::thumbs, RULES));
  }

  private static ExaminationOptions thumbs(ExaminationOptions options) {
    String profile =
        """
        name = "thumbs"
        title = "Thumbs of the pier"
        [[prints]]
        position = 1
        kind = "rolled"
        [[prints]]
        position = 6
        kind = "rolled"
        """;
    ProfileReading reading = AgencyProfileReader.read(profile, SampleCard.TABLES);
    return options.withAgency(((ProfileReading.Usable) reading).profile());
  }

  @Test
  void whereTheNeedIsNotSettledEveryFingerInAnUnknownWayIsReviewed() {
    assertEquals(
        List.of(
            "RP-TXN-042: not in the file: plain right four fingers, plain left four fingers;"
                + " plain right four fingers, plain left four fingers (identification flats)"),
        found(SampleCard.ofType("FVR", 11, 12, 40, 42, 43, 45), RULES));
  }

  @Test
  void whereTheNeedIsNotSettledAbsentFingersAreListedByHand() {
    assertEquals(
        List.of(
            "RP-TXN-043: right hand: middle, ring, little;"
                + " left hand: thumb, index, middle, ring, little;"
                + " right middle finger, right ring finger, right little finger, left thumb,"
                + " left index finger, left middle finger, left ring finger, left little finger"),
        found(SampleCard.ofType("FVR", 1, 2), RULES));
    assertEquals(
        List.of(
            "RP-TXN-043: no image of any finger;"
                + " right thumb, right index finger, right middle finger, right ring finger,"
                + " right little finger, left thumb, left index finger, left middle finger,"
                + " left ring finger, left little finger"),
        found(SampleCard.ofType("FVR"), RULES));
  }
}
