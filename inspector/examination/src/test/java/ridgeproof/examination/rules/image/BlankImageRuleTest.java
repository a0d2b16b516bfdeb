package ridgeproof.examination.rules.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

  private static SampleCard slap(SampleCard card, String... declared) {
    List<List<String>> entries = Stream.of(declared).map(f -> List.of(f, "XX")).toList();
    return card.with(
        RIGHT_SLAP, old -> declared.length == 0 ? blank(13) : blank(13).with(18, entries));
  }

  @Test
  void aBlankSlapIsExcusedOnlyWhereEachOfItsFingersIsDeclaredMissing() {
    SampleCard card = SampleCard.rolledTagged();
    assertEquals(BLANK, found(slap(card)));
    assertEquals(BLANK, found(slap(card, "2")));
    assertEquals(BLANK, found(slap(card, "2", "3", "4")));
    assertEquals(List.of(), found(slap(card, "2", "3", "4", "5")));
    assertEquals(List.of(), found(slap(missing(card, 2, 3), "4", "5")));
    assertEquals(List.of(), found(missing(slap(card), 2, 3, 4, 5)));
  }

  @Test
  void aPlainThumbIsDeclaredMissingByItsFinger() {
    SampleCard card = SampleCard.rolledTagged().with(13, old -> blank(11));
    assertEquals(BLANK, found(missing(card, 6)));
    assertEquals(List.of(), found(missing(card, 1)));
  }

  @Test
  void anEmptyDeclarationExcusesNothing() {
    SampleCard card =
        SampleCard.rolledTagged().with(THUMB, old -> blank(1).with(18, List.of(List.of("", ""))));
    assertEquals(BLANK, found(card));
  }

  private static List<String> absent(String... declared) {
    List<List<String>> entries = Stream.of(declared).map(f -> List.of(f, "XX")).toList();
    return SampleCard.rolledTagged()
        .with(RIGHT_SLAP, old -> old.without(999).with(18, entries))
        .examine()
        .everyFinding()
        .stream()
        .filter(finding -> finding.ruleId().equals("RP-IMG-013"))
        .map(finding -> finding.location().record().getAsInt() + " " + finding.observed().text())
        .toList();
  }

  @Test
  void aSlapWithoutImageIsExcusedOnlyWhereEachOfItsFingersIsDeclaredMissing() {
    assertEquals(List.of("15 no image data"), absent("2"));
    assertEquals(List.of(), absent("2", "3", "4", "5"));
  }

  @Test
  void aBlankImageOfNoKnownFingerIsTold() {
    SampleCard card = SampleCard.rolledTagged().with(THUMB, old -> blank(1).without(13));
    assertEquals(BLANK, found(missing(card, 1)));
  }
}
