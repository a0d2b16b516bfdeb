package ridgeproof.examination.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.comparison.PrintComparison.Reason;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.codec.PngWriter;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** What is asked of two records that were paired. */
class PairComparisonTest {

  private static final int INDEX = 4;
  private static final SampleCard CARD = SampleCard.rolledTagged();
  private static final MadePrints FIRST =
      MadePrints.on(CARD, 1).with(INDEX, 2, "A").with(5, 3, "B");

  private static RecordPair pair(FindingsReport first, FindingsReport second, int record) {
    return Compared.reports(first, second).pairs().get(record - 1);
  }

  private static List<Reason> reasons(RecordPair pair) {
    return pair.fingers().orElseThrow().prints().stream().map(PrintComparison::reason).toList();
  }

  @ParameterizedTest(name = "an index finger that shows {0}: {2}")
  @CsvSource({
    "A, ALIKE, SAME_FINGER",
    "B, SECOND_MATCHES_ANOTHER, DIFFERENT_FINGER",
    "C, NOT_ALIKE, CANNOT_BE_TOLD"
  })
  void otherPixelsAreComparedByTheirRidges(String letter, Reason reason, ImageLevel level) {
    FindingsReport second = MadePrints.on(CARD, 2).with(INDEX, 2, letter).report();
    RecordPair pair = pair(FIRST.report(), second, INDEX);
    assertEquals(List.of(reason), reasons(pair));
    assertEquals(Optional.of(level), pair.level());
    assertEquals(INDEX, pair.first().ordinal());
    assertEquals(INDEX, pair.second().ordinal());
    assertTrue(pair.differs());
  }

  @Test
  void anImageOfAnotherSizeIsComparedByItsRidges() {
    FindingsReport second =
        FIRST.change(card -> card.with(INDEX, draft -> draft.with(6, "24").with(7, "32"))).report();
    RecordPair pair = pair(FIRST.report(), second, INDEX);
    assertEquals(Optional.of(new ImageDifference.DifferentSize(32, 24, 24, 32)), pair.image());
    assertEquals(List.of(Reason.ALIKE), reasons(pair));
  }

  @Test
  void theSameCaptureIsNotAskedForItsRidges() {
    FindingsReport first = FIRST.report();
    assertEquals(Optional.empty(), pair(first, first, INDEX).fingers());
    byte[] again = MadePrints.pixels(1, INDEX);
    again[0] ^= 1;
    FindingsReport second =
        FIRST.change(card -> card.with(INDEX, draft -> RuleExamples.data(draft, again))).report();
    assertEquals(Optional.empty(), pair(first, second, INDEX).fingers());
    assertEquals(Optional.of(ImageLevel.SAME_CAPTURE), pair(first, second, INDEX).level());
  }

  @Test
  void belowTheDepthOfRidgesNoneAreCompared() {
    FindingsReport first = Compared.report(CARD, Depth.IMAGES);
    RecordPair pair = pair(first, MadePrints.on(CARD, 2).with(INDEX, 2, "A").report(), INDEX);
    assertEquals(Optional.empty(), pair.fingers());
    assertEquals(Optional.of(ImageLevel.DIFFERENT_PIXELS), pair.level());
  }

  @Test
  void filesAreComparedAsDeepAsBothWereLookedAt() {
    for (Depth one : Depth.values()) {
      for (Depth other : Depth.values()) {
        Depth least = Depth.values()[Math.min(one.ordinal(), other.ordinal())];
        assertEquals(
            least,
            Compared.reports(Compared.report(CARD, one), Compared.report(CARD, other)).depth());
      }
    }
  }

  /** A face beside the prints. */
  private static RecordDraft face(int seed) {
    return RecordDraft.tagged(
        10,
        Stream.concat(
                Stream.of(
                        "1:",
                        "2:20",
                        "3:FACE",
                        "4:TIDEWATER PILOTS",
                        "5:20260302",
                        "6:32",
                        "7:24",
                        "8:1",
                        "9:500",
                        "10:500",
                        "11:PNG",
                        "12:GRAY")
                    .map(field -> field.split(":", 2))
                    .map(part -> SampleCard.text(10, Integer.parseInt(part[0]), part[1])),
                Stream.of(
                    FieldDraft.data(
                        new FieldNumber(10, 999), ByteSource.of(png(MadePrints.pixels(seed, 17))))))
            .toList());
  }

  private static byte[] png(byte[] pixels) {
    return PngWriter.encode(
        GrayImage.owning(SampleCard.WIDTH, SampleCard.HEIGHT, pixels), Optional.empty());
  }

  @Test
  void aPictureThatShowsNoFingerIsComparedByItsPixels() {
    FindingsReport first = FIRST.change(card -> card.plus(face(1))).report();
    FindingsReport second = FIRST.change(card -> card.plus(face(2))).report();
    RecordPair pair = pair(first, second, 17);
    assertEquals(10, pair.first().type());
    assertEquals(Optional.empty(), pair.fingers());
    assertEquals(Optional.of(ImageLevel.DIFFERENT_PIXELS), pair.level());
    assertFalse(pair.showsFingers());
    assertTrue(pair(first, second, INDEX).showsFingers());
    assertFalse(pair(first, second, 2).showsFingers());
  }

  /** The number of a field of the personal data is broken, so that nobody can read the field. */
  private static FindingsReport broken(String name) {
    byte[] bytes =
        new String(CARD.with(2, draft -> draft.with(18, name)).bytes(), StandardCharsets.ISO_8859_1)
            .replace("2.018:", "2x018:")
            .getBytes(StandardCharsets.ISO_8859_1);
    return SampleCard.examine(
        bytes,
        ExaminationOptions.standard().withToday(SampleCard.TODAY).withDepth(Depth.STRUCTURE));
  }

  @Test
  void bytesThatBelongToNoFieldAreCompared() {
    assertFalse(pair(broken("SPECIMEN,ADA"), broken("SPECIMEN,ADA"), 2).otherUnread());
    RecordPair other = pair(broken("SPECIMEN,ADA"), broken("SPECIMEN,BEA"), 2);
    assertTrue(other.otherUnread());
    assertEquals(List.of(), other.differences());
    assertTrue(other.differs());
    assertFalse(Compared.reports(broken("SPECIMEN,ADA"), broken("SPECIMEN,BEA")).same());
  }

  @Test
  void everyLevelAndEveryReasonHasWordsOfItsOwn() {
    assertEquals(
        ImageLevel.values().length,
        Arrays.stream(ImageLevel.values()).map(ImageLevel::words).distinct().count());
    assertEquals(
        Reason.values().length,
        Arrays.stream(Reason.values()).map(Reason::words).distinct().count());
  }
}
