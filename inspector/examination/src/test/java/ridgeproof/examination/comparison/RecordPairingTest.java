package ridgeproof.examination.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** Records are paired by what they show and hold, never by where they stand or their IDC. */
class RecordPairingTest {

  private static final SampleCard CARD = SampleCard.rolledTagged();

  private static RecordDraft print(int idc, int position) {
    return SampleCard.taggedPrint(idc, position, position <= 10 ? 1 : 0);
  }

  /** A card of prints of these positions in this order, numbered as they come. */
  private static SampleCard of(int... positions) {
    SampleCard card = CARD.withoutPrints();
    for (int i = 0; i < positions.length; i++) {
      card = card.plus(shaded(print(i + 1, positions[i]), positions[i]));
    }
    return card;
  }

  private static RecordDraft shaded(RecordDraft print, int shade) {
    byte[] pixels = SampleCard.pixels(SampleCard.WIDTH * SampleCard.HEIGHT).toArray();
    pixels[0] = (byte) shade;
    return RuleExamples.data(print, pixels);
  }

  private static List<Integer> moved(TransactionComparison comparison) {
    return comparison.pairs().stream()
        .filter(RecordPair::moved)
        .map(pair -> pair.first().ordinal())
        .toList();
  }

  @Test
  void printsOfOneFingerAreAPairWhateverTheirOrder() {
    TransactionComparison comparison = Compared.cards(of(1, 2, 3, 4), of(4, 1, 2, 3));
    assertEquals(List.of("3=4", "4=5", "5=6", "6=3"), Compared.elsewhere(comparison));
    assertEquals(List.of(6), moved(comparison));
    assertEquals(List.of(), Compared.differences(comparison));
  }

  @Test
  void ofTwoThatChangedPlacesOneHasMoved() {
    assertEquals(List.of(5), moved(Compared.cards(of(1, 2, 3, 4), of(1, 3, 2, 4))));
    assertEquals(List.of(3, 4), moved(Compared.cards(of(1, 2, 3, 4, 5), of(3, 4, 5, 2, 1))));
    assertEquals(List.of(), moved(Compared.cards(of(1, 2, 3), of(1, 3))));
    assertEquals(List.of(4), moved(Compared.cards(of(1, 2), of(2, 1))));
  }

  @Test
  void aFingerThatOnlyOneHasIsRemovedOrAdded() {
    TransactionComparison comparison = Compared.cards(of(1, 2, 3), of(1, 3, 4));
    assertEquals(List.of(4), Compared.ordinals(comparison.removed()));
    assertEquals(List.of(5), Compared.ordinals(comparison.added()));
    assertEquals(4, comparison.pairs().size());
    assertFalse(comparison.same());
    assertFalse(Compared.cards(of(1, 2), of(1)).same());
    assertFalse(Compared.cards(of(1), of(1, 2)).same());
  }

  @Test
  void ofTwoPrintsOfOneFingerTheOneWithTheSamePixelsIsThePair() {
    SampleCard first = of().plus(shaded(print(1, 2), 50)).plus(shaded(print(2, 2), 60));
    SampleCard second = of().plus(shaded(print(1, 2), 60)).plus(shaded(print(2, 2), 50));
    assertEquals(List.of("3=4", "4=3"), Compared.elsewhere(Compared.cards(first, second)));
  }

  @Test
  void anImageThatChangedItsFingerIsPairedByItsPixels() {
    TransactionComparison comparison =
        Compared.cards(of(1).plus(shaded(print(2, 2), 50)), of(1).plus(shaded(print(2, 3), 50)));
    assertEquals(List.of(), comparison.removed());
    assertEquals(List.of("14.013 0.0: 2 -> 3 (1)"), Compared.differences(comparison));
  }

  @Test
  void printsOfOtherFingersAndPixelsAreNoPair() {
    TransactionComparison comparison =
        Compared.cards(of(1).plus(shaded(print(2, 2), 50)), of(1).plus(shaded(print(2, 3), 60)));
    assertEquals(List.of(4), Compared.ordinals(comparison.removed()));
    assertEquals(List.of(4), Compared.ordinals(comparison.added()));
  }

  private static RecordDraft features(int idc, int finger) {
    return SampleRecords.pixelFeatures(idc, finger);
  }

  @Test
  void recordsWithoutAnImageArePairedByWhatTheyHold() {
    TransactionComparison comparison =
        Compared.cards(
            of(3, 4).plus(features(1, 3)).plus(features(2, 4)),
            of(3, 4).plus(features(2, 4)).plus(features(1, 3)));
    assertEquals(List.of("5=6", "6=5"), Compared.elsewhere(comparison));
    assertEquals(List.of(6), moved(comparison));
  }

  @Test
  void recordsWithoutAnImageArePairedByTheFingerTheyDescribe() {
    TransactionComparison comparison =
        Compared.cards(
            of(3, 4).plus(features(1, 3)).plus(features(2, 4)),
            of(3, 4).plus(features(2, 4).with(4, "S")).plus(features(1, 3).with(4, "S")));
    assertEquals(List.of("5=6", "6=5"), Compared.elsewhere(comparison));
    assertEquals(
        List.of("9.004 0.0: U -> S (1)", "9.004 0.0: U -> S (1)"),
        Compared.differences(comparison));
  }

  @Test
  void otherRecordsArePairedByTheirOrder() {
    SampleCard first = of(1).plus(contact(21, "A")).plus(contact(22, "B"));
    SampleCard second = of(1).plus(contact(31, "C")).plus(contact(32, "D"));
    TransactionComparison comparison = Compared.cards(first, second);
    assertEquals(List.of(), Compared.elsewhere(comparison));
    assertEquals(
        List.of("98.003 0.0: A -> C (1)", "98.003 0.0: B -> D (1)"),
        Compared.differences(comparison));
  }

  /** What a record holds counts, and neither its number nor how long it is. */
  @Test
  void recordsOfNoFingerArePairedByWhatTheyHold() {
    SampleCard first = of(1).plus(contact(21, "A")).plus(contact(22, "B"));
    SampleCard second = of(1).plus(contact(21, "B")).plus(contact(22, "A"));
    assertEquals(List.of("4=5", "5=4"), Compared.elsewhere(Compared.cards(first, second)));
    SampleCard one = of(1).plus(template(21, 7, 8)).plus(template(22, 9, 8));
    SampleCard other = of(1).plus(template(21, 9, 8)).plus(template(22, 7, 8));
    assertEquals(List.of("4=5", "5=4"), Compared.elsewhere(Compared.cards(one, other)));
  }

  private static RecordDraft template(int idc, int... values) {
    byte[] bytes = new byte[values.length];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) values[i];
    }
    return RecordDraft.tagged(
        99,
        List.of(
            SampleCard.text(99, 1, ""),
            SampleCard.text(99, 2, Integer.toString(idc)),
            FieldDraft.data(new FieldNumber(99, 999), ByteSource.of(bytes))));
  }

  @Test
  void imagesThatNameNoFingerArePairedByTheirPixels() {
    SampleCard first =
        of(1).plus(shaded(print(2, 2), 50).without(13)).plus(shaded(print(3, 3), 60).without(13));
    SampleCard second =
        of(1).plus(shaded(print(2, 2), 60).without(13)).plus(shaded(print(3, 3), 50).without(13));
    assertEquals(List.of("4=5", "5=4"), Compared.elsewhere(Compared.cards(first, second)));
    SampleCard other = of(1).plus(shaded(print(2, 2), 70).without(13));
    TransactionComparison comparison = Compared.cards(first, other);
    assertEquals(List.of(5), Compared.ordinals(comparison.removed()));
    assertEquals(List.of(), Compared.ordinals(comparison.added()));
  }

  @Test
  void anImageThatNamesNoFingerGoesWithTheSamePixelsOfAFinger() {
    SampleCard first = of(1).plus(shaded(print(2, 2), 50).without(13));
    SampleCard second =
        of(1).plus(shaded(print(2, 2), 60).without(13)).plus(shaded(print(3, 2), 50));
    assertEquals(List.of("4=5"), Compared.elsewhere(Compared.cards(first, second)));
  }

  @Test
  void pairsAreInTheOrderOfTheFirstFile() {
    assertEquals(
        List.of(1, 2, 3, 4, 5),
        Compared.ordinals(
            Compared.cards(of(3, 1, 2), of(1, 2, 3)).pairs().stream()
                .map(RecordPair::first)
                .toList()));
  }

  private static RecordDraft contact(int idc, String text) {
    return RecordDraft.tagged(
        98,
        List.of(
            SampleCard.text(98, 1, ""),
            SampleCard.text(98, 2, String.format(Locale.ROOT, "%02d", idc)),
            SampleCard.text(98, 3, text)));
  }

  @Test
  void aFileIsTheSameAsItself() {
    TransactionComparison comparison = Compared.cards(CARD, CARD);
    assertTrue(comparison.same());
    assertTrue(comparison.sameBytes());
    assertEquals(16, comparison.pairs().size());
    assertEquals(List.of(), comparison.removed());
    assertEquals(List.of(), comparison.added());
    assertEquals(ComparisonOutcome.SAME, comparison.outcome());
  }

  @Test
  void anAnswerIsKnownByItsControlReference() {
    SampleCard answer = CARD.with(1, header -> header.with(9, "PILOT-0002").with(10, "PILOT-0001"));
    assertTrue(Compared.cards(CARD, answer).secondRefersToFirst());
    assertFalse(Compared.cards(CARD, answer).firstRefersToSecond());
    assertTrue(Compared.cards(answer, CARD).firstRefersToSecond());
    assertFalse(Compared.cards(answer, CARD).secondRefersToFirst());
    assertFalse(Compared.cards(CARD, CARD).secondRefersToFirst());
  }
}
