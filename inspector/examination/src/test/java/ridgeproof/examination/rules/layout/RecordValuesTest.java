package ridgeproof.examination.rules.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.RuleExamples;
import ridgeproof.examination.SampleCard;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Reference;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.LogicalRecord;

/** What the references of a condition stand for, seen from the second print of a card. */
class RecordValuesTest {

  private static final FieldNumber SEGMENTS = new FieldNumber(14, 21);
  private static final Transaction CARD =
      new TransactionReader(SampleCard.TABLES, ParseLimits.standard())
          .read(
              ByteSource.of(
                  SampleCard.rolledTagged()
                      .with(
                          4,
                          print ->
                              print
                                  .with(
                                      SEGMENTS.field(),
                                      List.of(
                                          List.of("2", "", "16"),
                                          List.of("3", "7", "24"),
                                          List.of("", "9", "")))
                                  .with(20, ""))
                      .bytes()));
  private static final LogicalRecord PRINT = CARD.records().get(3);
  private static final RecordValues VALUES = new RecordValues(CARD, PRINT);

  private static List<String> field(int type, int field) {
    return VALUES.apply(new Reference.OfField(new FieldNumber(type, field)));
  }

  @Test
  void aFieldOfTheRecordsTypeIsItsOwn() {
    assertEquals(List.of("2"), field(14, 13));
  }

  @Test
  void aFieldOfAnotherTypeIsThatOfTheFirstRecordOfIt() {
    assertEquals(List.of("FAUF"), field(1, 4));
    assertEquals(List.of("SPECIMEN,ADA"), field(2, 18));
    RecordValues fromHeader = new RecordValues(CARD, CARD.records().get(0));
    assertEquals(List.of("1"), fromHeader.apply(new Reference.OfField(new FieldNumber(14, 13))));
  }

  @Test
  void aFieldThatIsAbsentOrEmptyHasNoValue() {
    assertEquals(List.of(), field(14, 15));
    assertEquals(List.of(), field(14, 20));
    assertEquals(List.of(), field(13, 13));
  }

  @Test
  void aFieldStandsForTheFirstItemsOfItsSubfieldsThatSayAnything() {
    assertEquals(List.of("2", "3"), field(14, 21));
  }

  @Test
  void anItemStandsForThatOfEachSubfieldThatSaysAnything() {
    assertEquals(List.of("7", "9"), VALUES.apply(new Reference.OfItem(SEGMENTS, 2)));
    assertEquals(List.of("16", "24"), VALUES.apply(new Reference.OfItem(SEGMENTS, 3)));
    assertEquals(List.of(), VALUES.apply(new Reference.OfItem(SEGMENTS, 4)));
  }

  @Test
  void anItemOfTheSameSubfieldIsThatOfNoOther() {
    RecordValues second = VALUES.within(PRINT.field(SEGMENTS).orElseThrow().subfields().get(1));
    RecordValues third = VALUES.within(PRINT.field(SEGMENTS).orElseThrow().subfields().get(2));
    assertEquals(List.of("7"), second.apply(new Reference.OfSameSubfield(2)));
    assertEquals(List.of("9"), third.apply(new Reference.OfSameSubfield(2)));
    assertEquals(List.of(), third.apply(new Reference.OfSameSubfield(3)));
    assertEquals(List.of(), VALUES.apply(new Reference.OfSameSubfield(2)));
  }

  @Test
  void theVersionIsThatByWhichTheFileIsRead() {
    assertEquals(List.of("500"), VALUES.apply(new Reference.OfVersion()));
  }

  @Test
  void anImageThatIsThereIsData() {
    assertEquals(List.of("data"), field(14, 999));
  }

  @Test
  void anImageOfNoBytesIsNoData() {
    Transaction empty =
        new TransactionReader(SampleCard.TABLES, ParseLimits.standard())
            .read(
                ByteSource.of(
                    SampleCard.rolledTagged()
                        .with(3, print -> RuleExamples.data(print, new byte[0]))
                        .bytes()));
    RecordValues values = new RecordValues(empty, empty.records().get(2));
    assertEquals(List.of(), values.apply(new Reference.OfField(new FieldNumber(14, 999))));
  }
}
