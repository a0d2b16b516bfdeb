package ridgeproof.corpus.composition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ridgeproof.corpus.impression.FingerBox;
import ridgeproof.corpus.scenario.Expected;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.corpus.scenario.ScenarioError;
import ridgeproof.corpus.scenario.ScenarioReader;
import ridgeproof.finding.Finding;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;
import ridgeproof.transaction.record.Subfield;

class TransactionComposerTest {

  private static final SubjectCache PEOPLE = new SubjectCache();

  private final ScenarioReader reader = new ScenarioReader();
  private final TransactionComposer composer = new TransactionComposer(PEOPLE);

  private Scenario scenario(String body) {
    return reader.read("test", "story = \"A test\"\nseed = 5\n" + body);
  }

  private byte[] bytes(String body) {
    return composer.compose(scenario(body)).bytes();
  }

  private static Transaction read(byte[] bytes) {
    return new TransactionReader(Expected.TABLES, ParseLimits.standard())
        .read(ByteSource.of(bytes));
  }

  private List<CapturedPrint> prints(String body) {
    return new CaptureSession(scenario(body), PEOPLE).prints();
  }

  /** A slap of four prints under an annotation is seen, and one of three is left in peace. */
  @ParameterizedTest
  @CsvSource({"true,1", "false,0"})
  void aSlapWithMorePrintsThanFingersIsSeen(boolean imaged, int findings) {
    String toml =
        "[prints]\nset = \"flats\"\nboxes = [13]\n[[missing]]\nfinger = 3\nimaged = %s\n"
            .formatted(imaged);
    List<String> rules =
        Expected.examine(composer.compose(scenario(toml))).findings().stream()
            .map(Finding::ruleId)
            .filter("RP-TXN-054"::equals)
            .toList();
    assertEquals(findings, rules.size());
  }

  private static List<FingerPosition> digits(int... positions) {
    return Arrays.stream(positions).mapToObj(p -> FingerPosition.values()[p - 1]).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "0200,4,NONE",
    "0201,4,WSQ",
    "0300,14,WSQ",
    "0400,4,WSQ",
    "0400,14,PNG",
    "0500,14,NONE",
    "0501,4,WSQ",
    "0502,14,WSQ"
  })
  void aCleanPairOfThumbsIsCleanInEveryEditionRecordAndCompression(
      String version, int record, String compression) {
    String toml =
        """
        [transaction]
        version = "%s"
        [prints]
        boxes = [11, 12]
        record = %d
        compression = "%s"
        """
            .formatted(version, record, compression);
    ComposedTransaction composed = composer.compose(scenario(toml));
    // Nothing is said but that an applicant's set has more fingers.
    assertEquals(List.of("RP-TXN-040"), Expected.rules(Expected.compared(composed)));
    assertEquals(2 + 2, read(composed.bytes()).records().size());
  }

  @Test
  void segmentsAreTheTrueBoxesInTheOrderOfTheHand() {
    String toml =
        "[prints]\nboxes = [14]\nrecord = 14\nsegments = true\nalternate_segments = true\n";
    CapturedPrint print = prints(toml).get(0);
    LogicalRecord record = read(bytes(toml)).records().get(2);
    List<Subfield> segments = record.field(new FieldNumber(14, 21)).orElseThrow().subfields();
    List<Subfield> polygons = record.field(new FieldNumber(14, 25)).orElseThrow().subfields();
    assertEquals(List.of("10", "9", "8", "7"), segments.stream().map(s -> s.text(1)).toList());
    for (int i = 0; i < 4; i++) {
      FingerBox box = print.impression().boxes().get(i);
      assertEquals(Integer.toString(box.left()), segments.get(i).text(2));
      assertEquals(Integer.toString(box.right()), segments.get(i).text(3));
      assertEquals(Integer.toString(box.top()), segments.get(i).text(4));
      assertEquals(Integer.toString(box.bottom()), segments.get(i).text(5));
      assertEquals("4", polygons.get(i).text(2));
      assertEquals(10, polygons.get(i).items().size());
    }
  }

  @Test
  void aMissingFingerLeavesItsPlaceEmptyAndIsDeclaredOnlyIfTheStorySaysSo() {
    String set = "[prints]\nboxes = [10, 14]\nrecord = 14\nsegments = true\n";
    List<CapturedPrint> prints = prints(set + "[[missing]]\nfinger = 10\n");
    assertEquals(List.of(14), prints.stream().map(CapturedPrint::box).toList());
    assertEquals(digits(9, 8, 7), prints.get(0).shown());
    Transaction declared = read(bytes(set + "[[missing]]\nfinger = 10\nreason = \"UP\"\n"));
    assertEquals(
        "UP",
        declared
            .records()
            .get(2)
            .field(new FieldNumber(14, 18))
            .orElseThrow()
            .subfields()
            .get(0)
            .text(2));
    assertTrue(declared.records().get(1).field(new FieldNumber(2, 84)).isPresent());
    Transaction silent = read(bytes(set + "[[missing]]\nfinger = 10\nundeclared = true\n"));
    assertFalse(silent.records().get(2).field(new FieldNumber(14, 18)).isPresent());
    assertFalse(silent.records().get(1).field(new FieldNumber(2, 84)).isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "fingers_exchanged, 2, 3, 2, 3",
    "fingers_exchanged, 2, 3, 3, 2",
    "finger_twice, 2, 3, 2, 3",
    "finger_twice, 2, 3, 3, 3",
    "thumbs_exchanged, 0, 0, 11, 6",
    "thumbs_exchanged, 0, 0, 12, 1"
  })
  void aMistakePutsAnotherFingerIntoTheBox(
      String kind, int box, int finger, int looked, int expected) {
    List<CapturedPrint> prints =
        prints(
            "[prints]\nboxes = [%d]\n[[mistakes]]\nkind = \"%s\"\nbox = %d\nfinger = %d\n"
                .formatted(looked, kind, box, finger));
    assertEquals(digits(expected), prints.get(0).shown());
    assertEquals(looked, prints.get(0).box());
  }

  @Test
  void exchangedHandsShowTheOtherHandUnderTheNamesOfThisOne() {
    CapturedPrint print =
        prints("[prints]\nboxes = [13]\n[[mistakes]]\nkind = \"hands_exchanged\"\n").get(0);
    assertEquals(digits(10, 9, 8, 7), print.shown());
    assertEquals(digits(2, 3, 4, 5), print.labels());
  }

  @Test
  void exchangedThumbsInOneImageAreNamedTheWrongWayRound() {
    CapturedPrint print =
        prints("[prints]\nboxes = [15]\n[[mistakes]]\nkind = \"thumbs_exchanged\"\n").get(0);
    assertEquals(digits(6, 1), print.shown());
    assertEquals(digits(1, 6), print.labels());
  }

  @Test
  void aRetakeIsAnotherImageWithoutTheDefectOfTheFirst() {
    List<CapturedPrint> prints =
        prints(
            """
            [prints]
            boxes = [2]
            [[defects]]
            box = 2
            kind = "slippage"
            strength = 0.5
            [[mistakes]]
            kind = "retake_kept"
            box = 2
            """);
    assertEquals(2, prints.size());
    assertEquals(1, prints.get(0).defects().size());
    assertTrue(prints.get(1).defects().isEmpty());
    assertFalse(
        Arrays.equals(
            prints.get(0).impression().image().toArray(),
            prints.get(1).impression().image().toArray()));
  }

  @Test
  void finerThanLabelledHasTwiceThePixelsUnderTheOldLabel() {
    CapturedPrint print =
        prints("[prints]\nboxes = [2]\n[[mistakes]]\nkind = \"finer_than_labelled\"\n").get(0);
    assertEquals(1600, print.impression().image().width());
    assertEquals(500, print.labelledPpi());
  }

  @Test
  void minutiaeLieWithinTheImageInHundredthsOfAMillimetre() {
    String toml = "minutiae = [2]\n[transaction]\nversion = \"0300\"\n[prints]\nboxes = [2]\n";
    Transaction transaction = read(bytes(toml));
    LogicalRecord record = transaction.records().get(3);
    List<Subfield> minutiae = record.field(new FieldNumber(9, 12)).orElseThrow().subfields();
    assertEquals(record.text(10).orElseThrow(), Integer.toString(minutiae.size()));
    assertTrue(minutiae.size() > 20, () -> minutiae.size() + " minutiae");
    IntStream.range(0, minutiae.size())
        .forEach(
            i -> {
              String place = minutiae.get(i).text(2);
              assertTrue(Integer.parseInt(place.substring(0, 4)) <= 4064, place);
              assertTrue(Integer.parseInt(place.substring(4, 8)) <= 3810, place);
              assertTrue(Integer.parseInt(place.substring(8)) < 360, place);
              assertEquals(Integer.toString(i + 1), minutiae.get(i).text(1));
            });
    assertEquals(transaction.records().get(2).idc().getAsInt(), record.idc().getAsInt());
  }

  @Test
  void aChangedFieldIsRightInAllButItsValue() {
    String thumb = "[prints]\nboxes = [11]\nrecord = 14\n";
    Transaction changed =
        read(bytes(thumb + "[[changes]]\nrecord = 2\nfield = \"2.020\"\nvalue = \"USA\"\n"));
    assertEquals("USA", changed.records().get(1).text(20).orElseThrow());
    assertEquals(List.of(), changed.findings());
    Transaction removed = read(bytes(thumb + "[[changes]]\nrecord = 3\nfield = \"14.005\"\n"));
    assertFalse(removed.records().get(2).field(new FieldNumber(14, 5)).isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "'kind = \"length_off\"\nrecord = 3\nby = 1', 0",
    "'kind = \"length_off\"\nrecord = 2\nby = -1', 0",
    "'kind = \"tail_cut\"\nbytes = 10', -10",
    "'kind = \"separator_dropped\"\nrecord = 2\nfield = \"2.022\"', -1",
    "'kind = \"separator_dropped\"\nrecord = 2', -1",
    "'kind = \"records_swapped\"\nrecord = 2\nother = 3', 0",
    "'kind = \"bytes_added\"\nbytes = 3', 3"
  })
  void damageChangesTheBytesAndIsFound(String damage, int growth) {
    String thumb = "[prints]\nboxes = [11]\n";
    byte[] sound = bytes(thumb);
    byte[] damaged = bytes(thumb + "[[damages]]\n" + damage + "\n");
    assertEquals(sound.length + growth, damaged.length);
    assertFalse(Arrays.equals(sound, damaged));
    assertEquals(List.of(), read(sound).findings());
    assertFalse(read(damaged).findings().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[[changes]]\nrecord = 9\nfield = \"2.020\"\n",
        "[[changes]]\nrecord = 2\nfield = \"14.003\"\n",
        "[[changes]]\nrecord = 3\nfield = \"4.003\"\n",
        "[[damages]]\nkind = \"length_off\"\nrecord = 9\nby = 1\n",
        "[[damages]]\nkind = \"separator_dropped\"\nrecord = 2\nfield = \"2.099\"\n",
        "[[damages]]\nkind = \"separator_dropped\"\nrecord = 3\n"
      })
  void aStoryAboutWhatIsNotThereIsRefused(String body) {
    Scenario scenario = scenario("[prints]\nboxes = [11]\nrecord = 4\n" + body);
    assertThrows(ScenarioError.class, () -> composer.compose(scenario));
  }
}
