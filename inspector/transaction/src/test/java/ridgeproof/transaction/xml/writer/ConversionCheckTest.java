package ridgeproof.transaction.xml.writer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.TransactionSamples;
import ridgeproof.transaction.xml.RawXml;

/** A file that was written is compared with its original, so that nothing changes in silence. */
class ConversionCheckTest {

  private static final String NAME = RawXml.path("ebts:PersonName/nc:PersonSurName", "SPECIMEN");
  private static final String IMAGE = RawXml.element("nc:BinaryBase64Object", "aW1hZ2U=");
  private static final String CARD =
      RawXml.file(RawXml.headerOf("FAUF"), RawXml.subject(NAME), RawXml.print(1, IMAGE));

  private static Transaction read(String xml) {
    return TransactionSamples.read(xml.getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> losses(String original, String written, Loss... known) {
    return ConversionCheck.of(read(original), read(written), List.of(known)).stream()
        .map(Loss::toString)
        .toList();
  }

  private static Loss known(int record, int type, int field) {
    return new Loss(record, type, Optional.of(new FieldNumber(type, field)), "known");
  }

  @Test
  void aFileEqualsItself() {
    assertEquals(List.of(), losses(CARD, CARD));
  }

  @Test
  void aValueThatChangedIsNamedUnlessItIsKnown() {
    String changed = CARD.replace("SPECIMEN", "SPECIMENT");
    String loss = "record 2 (Type-2), field 2.018: it is not the same when it is read again";
    assertEquals(List.of(loss), losses(CARD, changed));
    assertEquals(List.of(), losses(CARD, changed, known(2, 2, 18)));
    assertEquals(List.of(loss), losses(CARD, changed, known(3, 2, 18), known(2, 2, 19)));
  }

  @Test
  void anImageThatChangedIsNamed() {
    assertEquals(
        List.of("record 3 (Type-14), field 14.999: it is not the same when it is read again"),
        losses(CARD, CARD.replace("aW1hZ2U=", "aW1hZ2Y=")));
    assertEquals(List.of(), losses(CARD, CARD.replace("aW1hZ2U=", "aW1h\nZ2U=")));
  }

  @Test
  void aFieldThatIsGoneOrNewIsNamed() {
    String without = CARD.replace(NAME, "");
    assertEquals(
        List.of("record 2 (Type-2), field 2.018: it is not found again"), losses(CARD, without));
    assertEquals(
        List.of(
            "record 2 (Type-2), field 2.018: it is added, since another field is written to the"
                + " same element"),
        losses(without, CARD));
  }

  @Test
  void aFieldThatIsThereOnceMoreIsNamed() {
    String twice = CARD.replace(IMAGE, IMAGE + IMAGE);
    String loss = "record 3 (Type-14), field 14.999: it is not the same when it is read again";
    assertEquals(List.of(loss), losses(CARD, twice));
    assertEquals(List.of(loss), losses(twice, CARD));
  }

  @Test
  void aRecordThatIsGoneIsNamedUnlessItIsKnownAndTheNextIsCompared() {
    String without = CARD.replace(RawXml.subject(NAME), "").replace("aW1hZ2U=", "aW1h");
    String image = "record 3 (Type-14), field 14.999: it is not the same when it is read again";
    assertEquals(
        List.of("record 2 (Type-2): the record is not found again", image), losses(CARD, without));
    assertEquals(
        List.of(image),
        losses(CARD, without, new Loss(2, 2, Optional.empty(), "has no such record")));
    assertEquals(
        List.of("record 3 (Type-14): the record is not found again"),
        losses(CARD, CARD.replace(RawXml.print(1, IMAGE), "")));
  }

  @Test
  void lengthsAreNotCompared() {
    assertEquals(List.of(), losses(CARD, CARD.replace(">14<", ">13<")));
  }

  @Test
  void aLossSaysItsPlaceAndItsReason() {
    assertEquals("gone", Loss.ofFile("gone").toString());
    assertEquals("record 1 (Type-2): gone", new Loss(1, 2, Optional.empty(), "gone").toString());
    assertEquals("record 3 (Type-2), field 2.018: known", known(3, 2, 18).toString());
  }
}
