package ridgeproof.examination;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.Turn;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.testing.ReferenceFiles;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/**
 * The card of a real person after what happens to whole cards: one cause, and no finger accused.
 */
@Tag("slow")
class PictureCausesTest {

  private static GrayImage mirrored(GrayImage image) {
    byte[] pixels = new byte[image.width() * image.height()];
    for (int i = 0; i < pixels.length; i++) {
      int x = i % image.width();
      pixels[i] = (byte) image.grayAt(image.width() - 1 - x, i / image.width());
    }
    return GrayImage.owning(image.width(), image.height(), pixels);
  }

  private static Map<Integer, GrayImage> prints() {
    ImageExtraction extraction = new ImageExtraction(SampleCard.TABLES, DecodingLimits.standard());
    Map<Integer, GrayImage> prints = new TreeMap<>();
    for (ExaminedImage image :
        extraction.imagesOf(
            new TransactionReader(SampleCard.TABLES, ParseLimits.standard())
                .read(ByteSource.of(ReferenceFiles.read("type-4-tpcard.an2"))))) {
      prints.put(image.position().orElseThrow(), extraction.decode(image).pixels().orElseThrow());
    }
    return prints;
  }

  private static RecordDraft record(int position, GrayImage image) {
    RecordDraft sample = SampleCard.binaryPrint(position, position, position <= 10 ? 1 : 0);
    return RecordDraft.binary(
        4,
        sample.fields().stream()
            .map(
                field ->
                    switch (field.number().field()) {
                      case 6 -> SampleCard.number(4, 6, 2, image.width());
                      case 7 -> SampleCard.number(4, 7, 2, image.height());
                      case 9 ->
                          FieldDraft.binary(new FieldNumber(4, 9), ByteSource.of(image.toArray()));
                      default -> field;
                    })
            .toList());
  }

  /** Causes of pictures, and findings of fingers above a note that are left beside them. */
  private static Set<String> found(Consumer<Map<Integer, GrayImage>> change) {
    Map<Integer, GrayImage> prints = prints();
    change.accept(prints);
    SampleCard card = SampleCard.rolled().withoutPrints();
    for (Map.Entry<Integer, GrayImage> print : prints.entrySet()) {
      card = card.plus(record(print.getKey(), print.getValue()));
    }
    FindingsReport report =
        SampleCard.examine(card.bytes(), ExaminationOptions.standard().withToday(SampleCard.TODAY));
    Set<String> ids = new TreeSet<>();
    for (Finding finding : report.findings()) {
      String id = finding.ruleId();
      if (id.matches("RP-IMG-05.|RP-SEQ-02.|RP-SEQ-00[1-6]|RP-SEQ-010")) {
        ids.add(id);
      }
    }
    return ids;
  }

  private static void shiftRolls(Map<Integer, GrayImage> prints) {
    GrayImage first = prints.get(1);
    for (int box = 1; box < 10; box++) {
      prints.put(box, prints.get(box + 1));
    }
    prints.put(10, first);
  }

  @Test
  void theCardAsItIsHasNoCause() {
    assertEquals(Set.of(), found(prints -> {}));
  }

  @Test
  void allImagesMirrored() {
    assertEquals(
        Set.of("RP-SEQ-020"),
        found(prints -> prints.replaceAll((position, image) -> mirrored(image))));
  }

  @Test
  void allImagesUpsideDown() {
    assertEquals(
        Set.of("RP-SEQ-021"),
        found(prints -> prints.replaceAll((position, image) -> Turn.HALF.of(image))));
  }

  @Test
  void oneSlapUpsideDown() {
    assertEquals(
        Set.of("RP-SEQ-021"),
        found(prints -> prints.computeIfPresent(14, (position, image) -> Turn.HALF.of(image))));
  }

  /** The right slap of this card matches its rolls in one finger or two. */
  @Test
  void aSlapOfWhichHardlyAFingerMatchesTellsItsPoseAllTheSame() {
    assertEquals(
        Set.of("RP-SEQ-021"),
        found(prints -> prints.computeIfPresent(13, (position, image) -> Turn.HALF.of(image))));
    assertEquals(
        Set.of("RP-SEQ-022"),
        found(prints -> prints.computeIfPresent(13, (position, image) -> mirrored(image))));
    assertEquals(
        Set.of("RP-SEQ-025"),
        found(
            prints ->
                prints.computeIfPresent(13, (position, image) -> Turn.QUARTER_RIGHT.of(image))));
  }

  @Test
  void oneSlapMirrored() {
    assertEquals(
        Set.of("RP-SEQ-022"),
        found(prints -> prints.computeIfPresent(14, (position, image) -> mirrored(image))));
  }

  @Test
  void oneRollMirrored() {
    assertEquals(
        Set.of("RP-SEQ-023"),
        found(prints -> prints.computeIfPresent(9, (position, image) -> mirrored(image))));
  }

  @Test
  void oneRollUpsideDown() {
    assertEquals(
        Set.of("RP-SEQ-024"),
        found(prints -> prints.computeIfPresent(8, (position, image) -> Turn.HALF.of(image))));
  }

  @Test
  void oneSlapTurnedByAQuarter() {
    assertEquals(
        Set.of("RP-SEQ-025"),
        found(
            prints ->
                prints.computeIfPresent(14, (position, image) -> Turn.QUARTER_LEFT.of(image))));
  }

  @Test
  void allRollsShiftedByOneBox() {
    assertEquals(Set.of("RP-SEQ-026"), found(PictureCausesTest::shiftRolls));
  }

  @Test
  void slapsExchangedWhereNoRollTells() {
    assertEquals(
        Set.of("RP-SEQ-027"),
        found(
            prints -> {
              prints.keySet().removeIf(position -> position <= 10);
              GrayImage right = prints.put(13, prints.get(14));
              prints.put(14, right);
            }));
  }

  private static List<String> ids(SampleCard card) {
    List<String> ids = new ArrayList<>();
    card.examine().findings().forEach(finding -> ids.add(finding.ruleId()));
    return ids;
  }

  @Test
  void aUnitThatDoesNotGoWithItsNumberIsOneFinding() {
    SampleCard inches =
        RuleExamples.wsqCard(RidgeImage.usual(), 2)
            .with(3, draft -> draft.with(8, "1").with(9, "197").with(10, "197"));
    SampleCard centimeters =
        RuleExamples.wsqCard(RidgeImage.usual(), 2)
            .with(3, draft -> draft.with(8, "2").with(9, "500").with(10, "500"));
    assertEquals(List.of("RP-IMG-052"), ids(inches));
    assertEquals(List.of("RP-IMG-052"), ids(centimeters));
  }

  @Test
  void widthAndHeightThatAreExchangedAreOneFinding() {
    SampleCard card =
        RuleExamples.wsqCard(RidgeImage.usual(), 2)
            .with(
                3,
                draft ->
                    draft
                        .with(6, Integer.toString(RidgeImage.HEIGHT))
                        .with(7, Integer.toString(RidgeImage.WIDTH)));
    assertEquals(List.of("RP-IMG-055"), ids(card));
  }

  @Test
  void anotherResolutionInsideOfManyImagesIsOneFinding() {
    SampleCard card = SampleCard.rolledTagged();
    SampleCard one = RuleExamples.wsqCard(RidgeImage.usual(), 2);
    RecordDraft noted =
        RecordDraft.tagged(14, RuleExamples.wsqRecord(RidgeImage.usual(), 250).fields());
    for (int record = 3; record <= 6; record++) {
      int position = record - 2;
      card =
          card.with(
              record,
              draft ->
                  noted.with(2, "%02d".formatted(position)).with(13, Integer.toString(position)));
    }
    // The samples share one image, which is another matter.
    assertEquals(
        List.of("RP-IMG-054"), ids(card).stream().filter(id -> !id.equals("RP-TXN-080")).toList());
    assertEquals(List.of(), ids(one));
  }
}
