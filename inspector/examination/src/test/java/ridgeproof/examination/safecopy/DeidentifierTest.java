package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleXml;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.imagery.GrayImage;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

class DeidentifierTest {

  private static final Examiner EXAMINER = new Examiner(SampleCard.TABLES, ParseLimits.standard());
  private static final int SIZE = SampleCard.WIDTH * SampleCard.HEIGHT;

  /** A file of one thumb. */
  private static final byte[] FILE = SampleCard.ofType("FAUF", 1).bytes();

  private static final byte[] PRINT = SampleCard.pixels(SIZE).toArray();

  private final List<Integer> attempts = new ArrayList<>();

  private static ExaminationOptions options(Depth depth) {
    return ExaminationOptions.standard().withToday(SampleCard.TODAY).withDepth(depth);
  }

  private static FindingsReport report(byte[] file, Depth depth) {
    return EXAMINER.examine(ByteSource.of(file), options(depth));
  }

  private static SafeCopy blank(byte[] file, Depth depth) {
    return new Deidentifier(EXAMINER, options(depth)).of(report(file, depth));
  }

  private SafeCopy drawn(Depth depth, Function<Integer, byte[]> pixelsByAttempt) {
    Function<PrintOrder, Optional<GrayImage>> artist =
        order -> {
          attempts.add(order.attempt());
          return Optional.of(
              GrayImage.owning(
                  order.width(), order.height(), pixelsByAttempt.apply(order.attempt()).clone()));
        };
    return new Deidentifier(EXAMINER, options(depth), artist).of(report(FILE, depth));
  }

  private static byte[] constant(int gray) {
    byte[] pixels = new byte[SIZE];
    Arrays.fill(pixels, (byte) gray);
    return pixels;
  }

  /** Pixels that show as much as those of the original and are others. */
  private static byte[] other() {
    byte[] pixels = new byte[SIZE];
    for (int i = 0; i < SIZE; i++) {
      pixels[i] = (byte) (i * 7 % 256 ^ 0x55);
    }
    return pixels;
  }

  /** Dark and light alone. */
  private static byte[] stripes() {
    byte[] pixels = new byte[SIZE];
    for (int i = 0; i < SIZE; i++) {
      pixels[i] = (byte) (i / 2 % 2 * 255);
    }
    return pixels;
  }

  private static byte[] image(SafeCopy copy) {
    byte[] bytes = copy.bytes().toArray();
    return Arrays.copyOfRange(bytes, bytes.length - 1 - SIZE, bytes.length - 1);
  }

  private static Set<String> rules(List<FindingChange> changes) {
    Set<String> rules = new TreeSet<>();
    changes.forEach(change -> rules.add(change.finding().ruleId()));
    return rules;
  }

  @Test
  void theImageOfTheSampleIsItsLastField() {
    byte[] file = FILE;
    assertArrayEquals(PRINT, Arrays.copyOfRange(file, file.length - 1 - SIZE, file.length - 1));
  }

  @Test
  void aBlankCopySaysWhatItAddsAndLoses() {
    SafeCopy copy = blank(FILE, Depth.IMAGES);
    assertEquals(Set.of("RP-IMG-033"), rules(copy.gained()));
    assertEquals(Set.of(), rules(copy.lost()));
    assertTrue(copy.sameFirst());
    assertFalse(blank(SampleCard.rolledTagged().bytes(), Depth.IMAGES).sameFirst());
  }

  @ParameterizedTest
  @EnumSource(Depth.class)
  void aBlankCopyIsTheSameHoweverDeepTheFileWasLookedAt(Depth depth) {
    SafeCopy copy = blank(FILE, depth);
    assertArrayEquals(blank(FILE, Depth.IMAGES).bytes().toArray(), copy.bytes().toArray());
    assertEquals(depth != Depth.STRUCTURE, rules(copy.gained()).contains("RP-IMG-033"));
  }

  @Test
  void aDrawingThatShowsTheSameIsTakenAtOnce() {
    SafeCopy copy = drawn(Depth.RIDGES, attempt -> other());
    assertArrayEquals(other(), image(copy));
    assertEquals(List.of(0), attempts);
    assertEquals(List.of(), copy.lost());
    assertEquals(List.of(), copy.gained());
    assertTrue(copy.sameFirst());
  }

  @ParameterizedTest
  @EnumSource(Depth.class)
  void aDrawnCopyIsTheSameHoweverDeepTheFileWasLookedAt(Depth depth) {
    SafeCopy copy = drawn(depth, attempt -> attempt < 2 ? constant(200) : other());
    assertArrayEquals(other(), image(copy));
    assertEquals(List.of(0, 1, 2), attempts);
    assertEquals(List.of(), copy.gained());
  }

  @Test
  void whereNoAttemptShowsTheSameTheClosestIsTaken() {
    SafeCopy copy = drawn(Depth.RIDGES, attempt -> attempt == 1 ? stripes() : constant(attempt));
    assertArrayEquals(stripes(), image(copy));
    assertEquals(List.of(0, 1, 2, 3, 4), attempts);
  }

  @Test
  void whereNoDrawingIsBetterThanABlankOneTheFirstOfThemIsTaken() {
    SafeCopy copy = drawn(Depth.RIDGES, attempt -> constant(100 + attempt));
    assertArrayEquals(constant(100), image(copy));
    assertEquals(List.of(0, 1, 2, 3, 4), attempts);
    assertTrue(rules(copy.gained()).contains("RP-IMG-033"));
  }

  @Test
  void aPictureThatDoesNotFitLeavesTheImageBlank() {
    Function<PrintOrder, Optional<GrayImage>> none = order -> Optional.empty();
    SafeCopy copy =
        new Deidentifier(EXAMINER, options(Depth.RIDGES), none).of(report(FILE, Depth.RIDGES));
    assertArrayEquals(constant(0x80), image(copy));
  }

  /** Whether the least comes first is no matter of the form of a value: it is tried anew. */
  @Test
  void rangesInOrderStaySoAndRangesInReverseStayInReverse() {
    for (int i = 0; i < 12; i++) {
      String name = "SPECIMEN,ADA" + (char) ('A' + i);
      byte[] file =
          SampleCard.rolled()
              .withoutPrints()
              .with(
                  2,
                  draft ->
                      draft.with(18, name).with(23, "6021").with(28, "511603").with(30, "190150"))
              .bytes();
      FindingsReport report = report(file, Depth.STRUCTURE);
      SafeCopy copy = new Deidentifier(EXAMINER, options(Depth.STRUCTURE)).of(report);
      assertEquals(Set.of(), rules(copy.lost()), name);
      assertEquals(Set.of(), rules(copy.gained()), name);
    }
  }

  @Test
  void theCopyOfXmlIsXmlOfTheSameFieldsAndNothingOfThePerson() {
    byte[] xml = SampleXml.card().getBytes(StandardCharsets.UTF_8);
    SafeCopy copy = blank(xml, Depth.IMAGES);
    String text = new String(copy.bytes().toArray(), StandardCharsets.UTF_8);
    FindingsReport copied = report(copy.bytes().toArray(), Depth.IMAGES);
    assertTrue(copied.transaction().isXml());
    assertEquals(16, copied.transaction().records().size());
    for (String word : List.of("SPECIMEN", "1990-02-14", "19900214", "MDTHP0001", "PILOT", "507")) {
      assertTrue(new String(xml, StandardCharsets.UTF_8).contains(word) || word.length() > 4);
      assertFalse(text.contains(word), word);
    }
    assertTrue(rules(copy.gained()).contains("RP-IMG-033"));
    assertEquals(Set.of(), rules(copy.lost()));
    copied.images().forEach(image -> assertEquals(1, image.pixels().orElseThrow().grayLevels()));
  }

  @Test
  void whatOnlyADeeperLookWouldFindIsNotSaidOfACopy() {
    assertEquals(Set.of("RP-IMG-033"), rules(drawn(Depth.IMAGES, a -> constant(200)).gained()));
    assertEquals(Set.of(), rules(drawn(Depth.STRUCTURE, a -> constant(200)).gained()));
  }

  /** Two prints whose best drawings are those of different attempts. */
  @Test
  void eachImageGoesBackToTheDrawingThatCameClosest() {
    byte[] file = SampleCard.ofType("FAUF", 1).plus(print(2, other())).bytes();
    Function<PrintOrder, Optional<GrayImage>> artist =
        order ->
            Optional.of(
                GrayImage.owning(
                    order.width(),
                    order.height(),
                    order.attempt() == order.position() ? stripes() : constant(order.attempt())));
    SafeCopy copy =
        new Deidentifier(EXAMINER, options(Depth.RIDGES), artist).of(report(file, Depth.RIDGES));
    report(copy.bytes().toArray(), Depth.STRUCTURE)
        .images()
        .forEach(image -> assertArrayEquals(stripes(), image.data().orElseThrow().toArray()));
  }

  private static RecordDraft print(int position, byte[] pixels) {
    RecordDraft print = SampleCard.taggedPrint(position, position, 1).without(999);
    List<FieldDraft> fields = new ArrayList<>(print.fields());
    fields.add(FieldDraft.data(new FieldNumber(14, 999), ByteSource.of(pixels)));
    return RecordDraft.tagged(14, fields);
  }

  /** A state for a country is another finding than a country for a state: no value shows it. */
  @Test
  void ofAttemptsThatAreNoBetterTheFirstIsTaken() {
    byte[] file = SampleCard.ofType("FAUF", 1).with(2, draft -> draft.with(20, "US")).bytes();
    FindingsReport report = report(file, Depth.IMAGES);
    SafeCopy copy = blank(file, Depth.IMAGES);
    assertEquals(Set.of("RP-PTL-010"), rules(copy.lost()));
    assertArrayEquals(
        new DeidentifiedWriter(report).write(Map.of(), ordinal -> Optional.empty()),
        copy.bytes().toArray());
  }
}
