package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RidgeImage;
import ridgeproof.examination.SampleCard;
import ridgeproof.transaction.writer.RecordDraft;

/** An image that shows nothing is excused by a declaration that all its fingers are missing. */
class BlankImageRuleTest {

  private static final int PARTICULARS = 2;
  private static final int THUMB = 3;
  private static final int RIGHT_SLAP = 15;
  private static final List<String> BLANK = List.of("RP-IMG-033 gray level 255 in every pixel");

  private static RecordDraft blank(int position) {
    return RidgeImage.record(position, RidgeImage.constant(255));
  }

  private static List<String> found(SampleCard card) {
    return card.examine().everyFinding().stream()
        .filter(finding -> finding.ruleId().matches("RP-IMG-03[34]"))
        .map(finding -> finding.ruleId() + " " + finding.observed().text())
        .toList();
  }

  private static SampleCard missing(SampleCard card, int... fingers) {
    List<List<String>> declared =
        IntStream.of(fingers).mapToObj(finger -> List.of("%02d".formatted(finger), "XX")).toList();
    return card.with(PARTICULARS, draft -> draft.with(84, declared));
  }

  @Test
  void aBlankImageOfAFingerThatIsThereIsTold() {
    SampleCard card = SampleCard.rolledTagged().with(THUMB, old -> blank(1));
    assertEquals(BLANK, found(card));
    assertEquals(BLANK, found(missing(card, 2)));
  }

  @Test
  void aBlankImageOfAFingerThatIsDeclaredMissingIsExcused() {
    SampleCard card = SampleCard.rolledTagged().with(THUMB, old -> blank(1));
    assertEquals(List.of(), found(missing(card, 1)));
    SampleCard inTheRecord =
        SampleCard.rolledTagged()
            .with(THUMB, old -> blank(1).with(18, List.of(List.of("1", "XX"))));
    assertEquals(List.of(), found(inTheRecord));
  }

  @Test
  void aBlankImageOfNoKnownFingerIsTold() {
    SampleCard card = SampleCard.rolledTagged().with(THUMB, old -> blank(1).without(13));
    assertEquals(BLANK, found(missing(card, 1)));
  }
}
