package ridgeproof.examination.safecopy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;
import ridgeproof.transaction.record.Item;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;
import ridgeproof.transaction.writer.FieldDraft;
import ridgeproof.transaction.writer.RecordDraft;

/** The copy with blank images of small cards, byte for byte. */
class SafeCopyOfCardTest {

  private static final Examiner EXAMINER = new Examiner(SampleCard.TABLES, ParseLimits.standard());
  private static final ExaminationOptions OPTIONS =
      ExaminationOptions.standard().withToday(SampleCard.TODAY).withDepth(Depth.IMAGES);

  private static SampleCard card() {
    return SampleCard.ofType("FAUF", 1, 13);
  }

  private static byte[] copy(byte[] file) {
    SafeCopy copy =
        new Deidentifier(EXAMINER, OPTIONS).of(EXAMINER.examine(ByteSource.of(file), OPTIONS));
    byte[] bytes = copy.bytes().toArray();
    assertEquals(file.length, bytes.length);
    return bytes;
  }

  private static Transaction read(byte[] file) {
    return new TransactionReader(SampleCard.TABLES, ParseLimits.standard())
        .read(ByteSource.of(file));
  }

  private static byte[] cut(byte[] bytes, ByteRange range) {
    return Arrays.copyOfRange(bytes, range.offset(), range.end());
  }

  private static String latin(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static List<ByteRange> values(byte[] file) {
    List<ByteRange> values = new ArrayList<>();
    for (LogicalRecord record : read(file).records()) {
      for (Field field : record.fields()) {
        if (field.isData()) {
          values.add(field.value());
        }
        for (Subfield subfield : field.subfields()) {
          subfield.items().forEach(item -> values.add(item.range()));
        }
      }
    }
    return values;
  }

  /** Fields with an item that is the same in the copy, though it says something. */
  private static Set<String> kept(byte[] file, byte[] copy) {
    Set<String> kept = new TreeSet<>();
    for (LogicalRecord record : read(file).records()) {
      for (Field field : record.fields()) {
        for (Subfield subfield : field.subfields()) {
          for (Item item : subfield.items()) {
            if (!item.text().isBlank()
                && Arrays.equals(cut(file, item.range()), cut(copy, item.range()))) {
              kept.add(field.number().toString());
            }
          }
        }
      }
    }
    return kept;
  }

  @Test
  void outsideOfValuesNoByteIsChanged() {
    byte[] file = card().plus(SampleRecords.standardFeatures(1, 1)).bytes();
    byte[] copy = copy(file);
    byte[] expected = file.clone();
    for (ByteRange value : values(file)) {
      System.arraycopy(copy, value.offset(), expected, value.offset(), value.length());
    }
    assertEquals(latin(expected), latin(copy));
  }

  @Test
  void onlyLayoutAndCodesOfCaptureStay() {
    byte[] file = card().bytes();
    Set<String> kept = kept(file, copy(file));
    assertEquals(
        Set.of(
            "1.001", "1.002", "1.003", "1.004", "1.011", "1.012", "1.013", "2.001", "2.002",
            "2.005", "14.001", "14.002", "14.003", "14.006", "14.007", "14.008", "14.009", "14.010",
            "14.011", "14.012", "14.013"),
        kept);
  }

  @Test
  void noWordOfTheFileOccursAnywhereInTheCopy() {
    String copy = latin(copy(card().bytes()));
    for (String word :
        List.of(
            "SPECIMEN",
            "ADA",
            "THP000000",
            "THP000001",
            "PILOT",
            "0001",
            "20260302",
            "101500",
            "19900214",
            "507",
            "BRO",
            "BLK",
            "LICENCE",
            "MDTHP",
            "TIDEWATER")) {
      assertFalse(copy.contains(word), word);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void everyPixelOfTheCopyIsTheSameGray(int index) {
    byte[] file = card().bytes();
    Transaction copy = read(copy(file));
    ByteSource pixels = copy.records().get(2 + index).data().orElseThrow();
    byte[] gray = new byte[SampleCard.WIDTH * SampleCard.HEIGHT];
    Arrays.fill(gray, (byte) 0x80);
    assertArrayEquals(gray, pixels.toArray());
  }

  @Test
  void aBinaryRecordKeepsItsNumbersAndNoPixel() {
    byte[] file = SampleCard.rolled().withoutPrints().plus(SampleCard.binaryPrint(1, 1, 1)).bytes();
    byte[] copy = copy(file);
    LogicalRecord print = read(file).records().get(2);
    int image = print.field(9).orElseThrow().value().offset();
    assertEquals(18, image - print.range().offset());
    assertArrayEquals(
        Arrays.copyOfRange(file, print.range().offset(), image),
        Arrays.copyOfRange(copy, print.range().offset(), image));
    for (int i = image; i < copy.length; i++) {
      assertEquals((byte) 0x80, copy[i]);
    }
  }

  @Test
  void aNumberOfABinaryRecordThatMayTellOfAPersonIsNoneInTheCopy() {
    byte[] pen = {0, 10, 0, 12, (byte) 200, 0, 14, 0, 15, 90};
    byte[] file =
        SampleCard.rolled()
            .withoutPrints()
            .plus(
                RecordDraft.binary(
                    7,
                    List.of(
                        SampleCard.number(7, 1, 4, 0),
                        SampleCard.number(7, 2, 1, 1),
                        FieldDraft.binary(new FieldNumber(7, 3), ByteSource.of(pen)))))
            .bytes();
    byte[] copy = copy(file);
    byte[] tail = Arrays.copyOfRange(copy, file.length - pen.length, file.length);
    for (int i = 0; i + 4 <= pen.length; i++) {
      assertFalse(latin(tail).contains(latin(Arrays.copyOfRange(pen, i, i + 4))));
    }
  }

  @Test
  void minutiaeAreDealtOutAnewAndTheirCountsStay() {
    byte[] file = card().plus(SampleRecords.pixelFeatures(1, 1)).bytes();
    LogicalRecord before = read(file).records().get(4);
    LogicalRecord after = read(copy(file)).records().get(4);
    assertEquals(before.text(136), after.text(136));
    assertEquals(before.text(128), after.text(128));
    assertNotEquals(points(before), points(after));
    for (int i = 0; i < 2; i++) {
      List<Item> items = after.field(137).orElseThrow().subfields().get(i).items();
      assertEquals("00" + (i + 1), items.get(0).text());
      assertTrue(Integer.parseInt(items.get(1).text()) < SampleCard.WIDTH);
      assertTrue(Integer.parseInt(items.get(2).text()) < SampleCard.HEIGHT);
    }
  }

  private static List<String> points(LogicalRecord record) {
    return record.field(137).orElseThrow().subfields().stream()
        .map(subfield -> subfield.text(2) + "," + subfield.text(3))
        .toList();
  }

  @Test
  void aMinutiaThatAFindingCallsMisplacedStaysMisplacedAndTheOtherInPlace() {
    RecordDraft features =
        SampleRecords.pixelFeatures(1, 1)
            .with(
                137,
                List.of(
                    List.of("001", "5", "6", "0", "1", "80"),
                    List.of("002", "900", "20", "179", "2", "80")));
    byte[] file = card().plus(features).bytes();
    LogicalRecord after = read(copy(file)).records().get(4);
    List<Subfield> points = after.field(137).orElseThrow().subfields();
    assertTrue(Integer.parseInt(points.get(0).text(2)) < SampleCard.WIDTH);
    assertTrue(Integer.parseInt(points.get(1).text(2)) > SampleCard.WIDTH);
  }

  @Test
  void whatNoFieldHoldsKeepsTheKindOfItsCharactersAlone() {
    byte[] file = card().bytes();
    byte[] rest = "SPECIMEN ada 507".getBytes(StandardCharsets.US_ASCII);
    byte[] longer = Arrays.copyOf(file, file.length + rest.length);
    System.arraycopy(rest, 0, longer, file.length, rest.length);
    byte[] copy = copy(longer);
    assertEquals("XXXXXXXX xxx 000", latin(Arrays.copyOfRange(copy, file.length, copy.length)));
  }

  @Test
  void aFileThatIsNoTransactionHasACopyThatSaysNothing() {
    byte[] file = {1, 2, 3, 'A', 'D', 'A', (byte) 200, (byte) 201, (byte) 202};
    byte[] copy = copy(file);
    assertEquals("?????????", latin(copy));
  }

  @Test
  void aValueOfBytesThatAreNoTextKeepsTheFirstOfThemAlone() {
    String value = "\u0001SPECIMEN\u0002\u0003ADA";
    byte[] file = card().with(2, draft -> draft.with(37, value)).bytes();
    byte[] copy = copy(file);
    Field reason = read(file).records().get(1).field(37).orElseThrow();
    assertEquals("\u0001" + "?".repeat(13), latin(cut(copy, reason.value())));
  }

  @Test
  void aValueInUtf8KeepsItsBytesAndCharacters() {
    String name = "\u00c5SE\u4eba,ADA";
    byte[] file =
        card()
            .with(1, draft -> draft.with(15, List.of(List.of("003", "UTF-8"))))
            .with(2, draft -> draft.with(18, "#########,ADA"))
            .bytes();
    byte[] utf8 = name.getBytes(StandardCharsets.UTF_8);
    int at = latin(file).indexOf("#########");
    assertEquals(11, utf8.length);
    byte[] written = file.clone();
    System.arraycopy(utf8, 0, written, at, 7);
    String made = new String(Arrays.copyOfRange(copy(written), at, at + 7), StandardCharsets.UTF_8);
    assertTrue(made.matches("\u00e9[A-Z]{2}\u6c34"), made);
    assertNotEquals("SE", made.substring(1, 3));
  }

  @Test
  void aValueThatIsTooLongStaysTooLong() {
    String name = "SPECIMEN,ADA MARIA THE PILOT OF THE HARBOUR OF TIDEWATER";
    byte[] file = card().with(2, draft -> draft.with(18, name)).bytes();
    FindingsReport report = EXAMINER.examine(ByteSource.of(file), OPTIONS);
    SafeCopy copy = new Deidentifier(EXAMINER, OPTIONS).of(report);
    assertEquals(List.of(), copy.lost().stream().map(change -> change.finding().ruleId()).toList());
    FindingsReport again = EXAMINER.examine(copy.bytes(), OPTIONS);
    assertEquals(
        SampleRecords.found(report, "RP-FLD-003").size(),
        SampleRecords.found(again, "RP-FLD-003").size());
  }

  @Test
  void theSeedOfPrintsIsANumberThatCanBeMultiplied() {
    for (int i = 0; i < 20; i++) {
      String name = "SPECIMEN,ADA" + (char) ('A' + i);
      byte[] file = card().with(2, draft -> draft.with(18, name)).bytes();
      long seed =
          new DeidentifiedWriter(EXAMINER.examine(ByteSource.of(file), OPTIONS)).seedOfPrints();
      assertTrue(seed >= 0 && seed < 1L << 40, () -> "" + seed);
    }
  }

  @Test
  void pastTheLimitOfItemsNoCharacterOfAValueStays() {
    byte[] file = card().bytes();
    int unread = 0;
    for (int limit = 1; limit < 40; limit++) {
      Examiner few = new Examiner(SampleCard.TABLES, new ParseLimits(100_000, 100, limit, 100));
      FindingsReport report = few.examine(ByteSource.of(file), OPTIONS);
      byte[] copy = new DeidentifiedWriter(report).write(Map.of(), ordinal -> Optional.empty());
      List<LogicalRecord> records = report.transaction().records();
      for (Field field : records.get(records.size() - 1).fields()) {
        if (!field.isData() && field.text().isEmpty() && field.value().length() > 0) {
          assertEquals("?".repeat(field.value().length()), latin(cut(copy, field.value())));
          unread++;
        }
      }
    }
    assertTrue(unread > 10, () -> "the limit is met within a field");
  }
}
