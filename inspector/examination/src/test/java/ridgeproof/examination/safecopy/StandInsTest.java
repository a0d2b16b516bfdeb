package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.examination.limit.MeasuredImage;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.measure.EmptyBand;
import ridgeproof.imagery.measure.RidgePeriod;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

class StandInsTest {

  private static final int THUMB = 3;
  private static final int SLAP = 4;
  private static final int SIZE = SampleCard.WIDTH * SampleCard.HEIGHT;

  /** The right thumb in record 3 and the right slap in record 4, with pixels of their own. */
  private static final FindingsReport CARD = card().examine();

  private final List<PrintOrder> orders = new ArrayList<>();

  private static SampleCard card() {
    return SampleCard.ofType("FAUF", 1).plus(withPixels(SampleCard.taggedPrint(2, 13, 0), 5));
  }

  private static RecordDraft withPixels(RecordDraft print, int step) {
    byte[] pixels = new byte[SIZE];
    for (int i = 0; i < SIZE; i++) {
      pixels[i] = (byte) (i * step);
    }
    List<FieldDraft> fields = new ArrayList<>(print.without(999).fields());
    fields.add(FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(pixels)));
    return RecordDraft.tagged(14, fields);
  }

  /** A drawing of one gray level: the number of the order. */
  private Optional<GrayImage> draw(PrintOrder order) {
    orders.add(order);
    byte[] pixels = new byte[order.width() * order.height()];
    Arrays.fill(pixels, (byte) orders.size());
    return Optional.of(GrayImage.owning(order.width(), order.height(), pixels));
  }

  private StandIns standIns(FindingsReport report) {
    return new StandIns(report, this::draw, new DeidentifiedWriter(report));
  }

  private static byte[] drawing(int number) {
    byte[] pixels = new byte[SIZE];
    Arrays.fill(pixels, (byte) number);
    return pixels;
  }

  private PrintOrder orderOf(FindingsReport report, int ordinal) {
    int before = orders.size();
    standIns(report).of(ordinal);
    assertEquals(before + 1, orders.size());
    return orders.get(before);
  }

  private static FindingsReport found(Finding... findings) {
    return MadeReport.of(CARD, findings);
  }

  private static Location at(int record, int position) {
    return Location.inRecord(record, 14).withPosition(OptionalInt.of(position));
  }

  @Test
  void theOrderIsOfAPrintLikeThatOfTheOriginal() {
    long seed = new DeidentifiedWriter(CARD).seedOfPrints();
    assertEquals(
        new PrintOrder(
            1, true, 32, 24, 500, false, 0, Set.of(), Map.of(), Set.of(), Map.of(), seed, 0),
        orderOf(found(), THUMB));
    assertEquals(
        new PrintOrder(
            13, false, 32, 24, 500, false, 0, Set.of(), Map.of(), Set.of(), Map.of(), seed, 0),
        orderOf(found(), SLAP));
  }

  @Test
  void theDrawingTakesThePlaceOfThePixels() {
    StandIns standIns = standIns(found());
    assertArrayEquals(drawing(1), standIns.of(THUMB).orElseThrow());
    assertArrayEquals(drawing(2), standIns.of(SLAP).orElseThrow());
    assertArrayEquals(drawing(1), standIns.of(THUMB).orElseThrow());
    assertEquals(2, orders.size());
  }

  @Test
  void whatIsNoImageOrCannotBeDrawnIsBlank() {
    StandIns standIns = standIns(found());
    assertEquals(Optional.empty(), standIns.of(2));
    assertEquals(Optional.empty(), standIns.of(9));
    StandIns none = new StandIns(found(), order -> Optional.empty(), new DeidentifiedWriter(CARD));
    assertEquals(Optional.empty(), none.of(THUMB));
  }

  @Test
  void theSameImageTwiceBecomesTheSameDrawingTwice() {
    FindingsReport twice = SampleCard.ofType("FAUF", 1, 2).examine();
    StandIns standIns = standIns(MadeReport.of(twice));
    assertArrayEquals(drawing(1), standIns.of(4).orElseThrow());
    assertArrayEquals(drawing(1), standIns.of(3).orElseThrow());
    assertEquals(List.of(1), orders.stream().map(PrintOrder::position).toList());
  }

  private static FindingsReport report(ExaminedImage... images) {
    return MadeReport.of(CARD, List.of(images));
  }

  private static ExaminedImage thumb(MeasuredImage measured) {
    return opened(measured, List.of());
  }

  private static ExaminedImage opened(MeasuredImage measured, List<ImageDefect> defects) {
    ExaminedImage image = CARD.images().get(0);
    return image.opened(
        image.header().orElseThrow(),
        Optional.of(measured.statistics()),
        defects,
        Optional.empty());
  }

  @Test
  void aDamagedImageIsBlankAndOneWithAnotherDefectIsNot() {
    List<String> drawn = new ArrayList<>();
    for (ImageDefect.Kind kind : ImageDefect.Kind.values()) {
      ImageDefect defect = new ImageDefect(kind, 0, "a defect");
      ExaminedImage image = opened(MeasuredImage.sound(), List.of(defect));
      if (DeidentifiedWriter.isSound(image)) {
        drawn.add(kind.name());
      }
    }
    assertFalse(drawn.contains("DAMAGE"), drawn.toString());
    assertEquals(ImageDefect.Kind.values().length - 1, drawn.size());
    ImageDefect damage = new ImageDefect(ImageDefect.Kind.DAMAGE, 0, "a defect");
    ExaminedImage damaged = opened(MeasuredImage.sound(), List.of(damage));
    assertEquals(Optional.empty(), standIns(report(damaged)).of(THUMB));
    assertFalse(standIns(report(damaged)).learn(Map.of(THUMB, 1)));
  }

  @Test
  void anImageOfSeveralPositionsOrOfNoFingerIsBlank() {
    FindingsReport two = SampleCard.rolled().examine();
    assertEquals(1, two.images().get(0).positions().size());
    FindingsReport several =
        SampleCard.rolledTagged()
            .withoutPrints()
            .plus(SampleCard.taggedPrint(1, 1, 1).with(13, List.of(List.of("1"), List.of("2"))))
            .examine();
    assertEquals(2, several.images().get(0).positions().size());
    assertEquals(Optional.empty(), standIns(several).of(3));
  }

  @Test
  void whereLinesAreLostIsInPercentOfTheHeight() {
    MeasuredImage lost = MeasuredImage.sound().band(new EmptyBand(37, 1, 0));
    assertEquals(37, lostFrom(lost));
    assertEquals(0, lostFrom(MeasuredImage.sound().band(new EmptyBand(37, 0, 0))));
  }

  private int lostFrom(MeasuredImage measured) {
    return orderOf(report(thumb(measured)), THUMB).lostFrom();
  }

  private int ppi(String rule) {
    MeasuredImage fine = MeasuredImage.sound().ridges(new RidgePeriod(18.11, 1, 20, 0.9));
    FindingsReport report =
        MadeReport.of(CARD, List.of(thumb(fine)), MadeReport.finding(rule, at(THUMB, 1)));
    return orderOf(report, THUMB).ppi();
  }

  @ParameterizedTest
  @CsvSource({
    "RP-IMG-039, 1000",
    "RP-IMG-040, 1000",
    "RP-IMG-052, 1000",
    "RP-RDG-013, 1000",
    "RP-IMG-033, 500"
  })
  void ridgesThatContradictTheResolutionAreDrawnAsFarApartAsTheyWere(String rule, int ppi) {
    assertEquals(ppi, ppi(rule));
  }

  @ParameterizedTest
  @CsvSource({
    "RP-SEQ-025, 3, turned, true",
    "RP-SEQ-025, 4, turned, false",
    "RP-SEQ-024, 3, turned by 90 degrees, true",
    "RP-SEQ-024, 3, turned by 180 degrees, false",
    "RP-SEQ-023, 3, turned by 90 degrees, false"
  })
  void anImageTurnedByAQuarterIsDrawnSo(
      String rule, int record, String observed, boolean sideways) {
    FindingsReport report =
        found(MadeReport.finding(rule, Location.inRecord(record, 14), observed));
    assertEquals(sideways, orderOf(report, THUMB).sideways());
  }

  @Test
  void aFindingOfTheWholeFileIsTrueOfEachImage() {
    FindingsReport report = found(MadeReport.finding("RP-SEQ-025", Location.file()));
    assertTrue(orderOf(report, THUMB).sideways());
    assertEquals(Map.of(0, Set.of("RP-SEQ-025")), orderOf(report, SLAP).faults());
  }

  @Test
  void faultsAreOrderedByFingerAndThoseOfTheWholeImageUnderNone() {
    FindingsReport report =
        found(
            MadeReport.finding("RP-RDG-004", at(SLAP, 2)),
            MadeReport.finding("RP-RDG-005", at(SLAP, 2)),
            MadeReport.finding("RP-IMG-033", at(SLAP, 13)),
            MadeReport.finding("RP-RDG-004", at(THUMB, 1)),
            MadeReport.finding("RP-FLD-001", at(SLAP, 2)),
            MadeReport.caused("RP-RDG-006", at(SLAP, 3), "RP-SEQ-025"));
    assertEquals(
        Map.of(2, Set.of("RP-RDG-004", "RP-RDG-005"), 0, Set.of("RP-IMG-033")),
        orderOf(report, SLAP).faults());
    assertEquals(Map.of(1, Set.of("RP-RDG-004")), orderOf(report, THUMB).faults());
  }

  @Test
  void aFingerThatIsNotFoundIsMissing() {
    FindingsReport report = found(MadeReport.finding("RP-RDG-020", at(SLAP, 4)));
    assertEquals(Set.of(4), orderOf(report, SLAP).missing());
  }

  @Test
  void aFingerAnnotatedAsMissingIsUnlessItIsInTheImageAllTheSame() {
    RecordDraft annotated =
        SampleCard.taggedPrint(2, 13, 0).with(18, List.of(List.of("2", "XX"), List.of("3", "XX")));
    FindingsReport card = SampleCard.ofType("FAUF", 1).plus(annotated).examine();
    assertEquals(Set.of(2, 3), orderOf(MadeReport.of(card), SLAP).missing());
    FindingsReport present = MadeReport.of(card, MadeReport.finding("RP-TXN-005", at(SLAP, 3)));
    assertEquals(Set.of(2), orderOf(present, SLAP).missing());
  }

  @Test
  void rollsShowWhatRollsShowAndOnlyTheyAreOfStrangers() {
    FindingsReport report =
        found(
            MadeReport.finding("RP-SEQ-027", Location.file()),
            MadeReport.finding("RP-SEQ-008", at(THUMB, 1)));
    assertEquals(Set.of(1), orderOf(report, THUMB).strangers());
    assertEquals(Map.of(), orders.get(0).shown());
    assertEquals(Set.of(), orderOf(report, SLAP).strangers());
    assertEquals(8, orders.get(1).shown().size());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4000})
  void aRecordThatDiffersIsTriedFiveTimesAndThenBlank(int weight) {
    StandIns standIns = standIns(found());
    for (int attempt = 0; attempt < StandIns.ATTEMPTS; attempt++) {
      assertEquals(attempt, orderOf(standIns).attempt());
      assertTrue(standIns.learn(Map.of(THUMB, weight)));
    }
    assertEquals(Optional.empty(), standIns.of(THUMB));
    assertTrue(standIns.of(SLAP).isPresent());
    assertFalse(standIns.learn(Map.of(THUMB, weight)));
    assertEquals(5, StandIns.ATTEMPTS);
  }

  private PrintOrder orderOf(StandIns standIns) {
    assertTrue(standIns.of(THUMB).isPresent());
    return orders.get(orders.size() - 1);
  }

  @Test
  void whereNothingDiffersNothingIsTried() {
    StandIns standIns = standIns(found());
    assertFalse(standIns.learn(Map.of()));
    assertFalse(standIns.settle());
    assertEquals(0, orderOf(standIns).attempt());
  }

  @Test
  void inTheEndEachRecordHasTheAttemptThatCameClosest() {
    StandIns standIns = standIns(found());
    for (int found : List.of(9, 4, 4, 7)) {
      assertTrue(standIns.learn(Map.of(THUMB, found)));
    }
    assertTrue(standIns.settle());
    assertEquals(1, orderOf(standIns).attempt());
    assertFalse(standIns.settle());
  }

  @Test
  void whatTheRidgesShowDecidesWhetherAPrintIsRolled() {
    for (Impression impression : Impression.values()) {
      RidgeAnalysis ridges = new RidgeAnalysis(impression, Map.of(), Optional.empty(), 0);
      ExaminedImage image =
          SampleRecords.image(CARD.images().get(0), Optional.empty(), Optional.of(ridges));
      boolean rolled = orderOf(report(image), THUMB).rolled();
      assertEquals(impression == Impression.ROLLED, rolled, impression.name());
    }
  }
}
