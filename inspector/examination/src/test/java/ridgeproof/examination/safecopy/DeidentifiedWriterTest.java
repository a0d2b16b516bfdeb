package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.writer.RecordDraft;

class DeidentifiedWriterTest {

  private static final int FILES = 20;
  private static final int SIZE = SampleCard.WIDTH * SampleCard.HEIGHT;
  private static final int PARTICULARS = 2;
  private static final int THUMB = 3;

  /** A card of one thumb, of so many subjects. */
  private static SampleCard card(int subject) {
    String name = "SPECIMEN,ADA" + (char) ('A' + subject);
    return SampleCard.ofType("FAUF", 1).with(PARTICULARS, draft -> draft.with(18, name));
  }

  private static byte[] copy(byte[] file) {
    return copy(file, ordinal -> Optional.empty());
  }

  private static byte[] copy(byte[] file, IntFunction<Optional<byte[]>> standIns) {
    return new DeidentifiedWriter(SampleCard.examine(file)).write(Map.of(), standIns);
  }

  private static Transaction read(byte[] file) {
    return new TransactionReader(SampleCard.TABLES, ParseLimits.standard())
        .read(ByteSource.of(file));
  }

  private static String text(byte[] file, int record, int field) {
    return read(file).records().get(record - 1).text(field).orElse("");
  }

  private static byte[] image(byte[] file) {
    return read(file).records().get(THUMB - 1).data().orElseThrow().toArray();
  }

  private static byte[] constant(int gray) {
    byte[] pixels = new byte[SIZE];
    Arrays.fill(pixels, (byte) gray);
    return pixels;
  }

  /** Words stand in any field and in any item of it; chance would bring them again. */
  @Test
  void noWordOfOneFieldIsWhatIsMadeUpForAnother() {
    for (int i = 0; i < FILES; i++) {
      byte[] file =
          card(i)
              .with(
                  PARTICULARS,
                  draft ->
                      draft
                          .with(10, List.of(List.of("BLK", "GRN"), List.of("GRY", "HAZ")))
                          .with(37, "BLU MAR"))
              .bytes();
      String eyes = text(copy(file), PARTICULARS, 31);
      assertTrue(Set.of("MUL", "PNK", "XXX").contains(eyes), eyes);
    }
  }

  @Test
  void aDateAfterThatOfTheTransactionStaysAfterIt() {
    for (int i = 0; i < FILES; i++) {
      byte[] file = card(i).with(THUMB, draft -> draft.with(5, "20310101")).bytes();
      byte[] copy = copy(file);
      assertTrue(text(copy, THUMB, 5).compareTo("20320000") > 0, text(copy, THUMB, 5));
      assertTrue(text(copy, 1, 5).compareTo("20250401") < 0, text(copy, 1, 5));
    }
  }

  @Test
  void eachFileHasPrintsOfItsOwn() {
    Set<Long> seeds = new HashSet<>();
    for (int i = 0; i < FILES; i++) {
      seeds.add(new DeidentifiedWriter(SampleCard.examine(card(i).bytes())).seedOfPrints());
    }
    assertEquals(FILES, seeds.size());
  }

  @Test
  void whatHasNoFieldNumberKeepsTheKindOfItsCharactersAlone() {
    String text = new String(card(0).bytes(), StandardCharsets.ISO_8859_1);
    int at = text.indexOf("2.037:");
    byte[] file = text.replace("2.037:", "2,037:").getBytes(StandardCharsets.ISO_8859_1);
    String copy = new String(copy(file), StandardCharsets.ISO_8859_1);
    assertEquals("\u001d0,000:XXXXX XXXXXXX\u001d", copy.substring(at - 1, at + 20));
  }

  @Test
  void anImageOfAnotherLengthTakesNoPlace() {
    byte[] file = card(0).bytes();
    assertArrayEquals(constant(7), image(copy(file, record -> Optional.of(constant(7)))));
    for (int length : List.of(SIZE - 1, 3, SIZE + 1)) {
      byte[] other = new byte[length];
      assertArrayEquals(constant(0x80), image(copy(file, record -> Optional.of(other))));
    }
  }

  @Test
  void onlyTheRecordThatIsAskedForIsReplaced() {
    byte[] file = SampleCard.ofType("FAUF", 1, 2).bytes();
    byte[] copy = copy(file, record -> record == 4 ? Optional.of(constant(7)) : Optional.empty());
    assertArrayEquals(constant(0x80), image(copy));
    assertArrayEquals(constant(7), read(copy).records().get(3).data().orElseThrow().toArray());
  }

  @Test
  void anImageOfOneBitIsBlankInWhite() {
    byte[] file = card(0).with(THUMB, draft -> draft.with(12, "1")).bytes();
    assertArrayEquals(constant(0), image(copy(file)));
  }

  @Test
  void anImageWhoseHeaderIsDamagedIsNotSound() {
    ExaminedImage image = SampleCard.examine(card(0).bytes()).images().get(0);
    assertTrue(DeidentifiedWriter.isSound(image));
    ImageHeader header = image.header().orElseThrow();
    for (ImageDefect.Kind kind : ImageDefect.Kind.values()) {
      ImageHeader other =
          new ImageHeader(
              header.format(),
              header.width(),
              header.height(),
              header.bitsPerPixel(),
              header.components(),
              header.density(),
              header.lossless(),
              OptionalDouble.empty(),
              header.extent(),
              Map.of(),
              Map.of(),
              List.of(new ImageDefect(kind, 0, "a defect")));
      boolean sound =
          DeidentifiedWriter.isSound(
              image.opened(other, image.pixels(), List.of(), Optional.empty()));
      assertEquals(kind != ImageDefect.Kind.DAMAGE, sound, kind.name());
    }
    assertFalse(
        DeidentifiedWriter.isSound(
            image.opened(header, Optional.empty(), List.of(), Optional.empty())));
  }

  private static List<Subfield> points(byte[] file) {
    return read(file).records().get(3).field(137).orElseThrow().subfields();
  }

  @Test
  void theMisplacedMinutiaOfSeveralIsTheOneThatStaysMisplaced() {
    List<List<String>> minutiae = new ArrayList<>();
    for (int i = 1; i <= 6; i++) {
      minutiae.add(List.of("00" + i, i == 3 ? "900" : "01" + i, "6", "0", "1", "80"));
    }
    for (int i = 0; i < FILES; i++) {
      RecordDraft features = SampleRecords.pixelFeatures(1, 1).with(137, minutiae);
      byte[] file = card(i).plus(features).bytes();
      FindingsReport report = SampleCard.examine(file);
      List<Subfield> points =
          points(new DeidentifiedWriter(report).write(Map.of(), ordinal -> Optional.empty()));
      for (int p = 1; p <= 6; p++) {
        int x = Integer.parseInt(points.get(p - 1).text(2));
        assertEquals(p == 3, x >= SampleCard.WIDTH, p + ": " + x);
      }
    }
  }

  @Test
  void anotherAttemptAtAFieldChangesThatFieldAlone() {
    byte[] file = card(0).bytes();
    DeidentifiedWriter writer = new DeidentifiedWriter(SampleCard.examine(file));
    byte[] first = writer.write(Map.of(), ordinal -> Optional.empty());
    byte[] second =
        writer.write(
            Map.of(new DeidentifiedWriter.Place(PARTICULARS, 18), 1), ordinal -> Optional.empty());
    ByteRange name = read(file).records().get(1).field(18).map(Field::value).orElseThrow();
    assertFalse(Arrays.equals(first, name.offset(), name.end(), second, name.offset(), name.end()));
    System.arraycopy(second, name.offset(), first, name.offset(), name.length());
    assertArrayEquals(first, second);
  }

  /** As a feature a single place only moves towards the corner; as a value it becomes any other. */
  @ParameterizedTest
  @CsvSource({"2, 9.012:", "4, 2.012:"})
  void aFieldOfAnotherTypeIsNoFeature(int record, String tag) {
    Set<Boolean> further = new HashSet<>();
    for (int i = 0; i < FILES; i++) {
      RecordDraft features = SampleRecords.standardFeatures(1, 1).with(13, "M1,10001000100");
      String file =
          new String(
              card(i)
                  .with(PARTICULARS, draft -> draft.with(37, "M1,10001000100"))
                  .plus(features)
                  .bytes(),
              StandardCharsets.ISO_8859_1);
      String old = record == PARTICULARS ? "2.037:" : "9.013:";
      int at = file.indexOf(old + "M1,") + old.length();
      byte[] stray =
          file.replace(old + "M1,", tag + "M1\u001f").getBytes(StandardCharsets.ISO_8859_1);
      byte[] copy = copy(stray);
      assertEquals(0x1F, copy[at + 2]);
      String made = new String(copy, at + 3, 11, StandardCharsets.ISO_8859_1);
      assertTrue(made.matches("[0-9]{11}") && !made.equals("10001000100"), made);
      further.add(made.compareTo("1001") > 0);
    }
    assertTrue(further.contains(true));
  }
}
