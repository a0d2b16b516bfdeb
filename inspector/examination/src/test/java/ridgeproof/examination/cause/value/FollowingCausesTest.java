package ridgeproof.examination.cause.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.Established.finding;
import static ridgeproof.examination.cause.Established.inField;
import static ridgeproof.examination.cause.Established.inImage;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.cause.Established;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteRange;

/** Which finding says what others say once more. */
class FollowingCausesTest {

  private static List<String> causes(Finding... found) {
    return Established.by(new FollowingCauses(), found);
  }

  @Test
  void printsMayBeInBytesThatWereNotRead() {
    assertEquals(
        List.of("RP-STR-012: RP-TXN-004, RP-STR-014"),
        causes(
            finding("RP-STR-012"),
            finding("RP-STR-018"),
            finding("RP-TXN-004"),
            finding("RP-STR-014"),
            finding("RP-FLD-001")));
  }

  @Test
  void separatorsAreGoneThroughoutFromFourFaultsOn() {
    Finding separator = finding("RP-STR-007");
    Finding field = finding("RP-FLD-001");
    assertEquals(List.of(), causes(separator, finding("RP-STR-007"), finding("RP-STR-007"), field));
    assertEquals(
        List.of("RP-STR-007: RP-STR-007, RP-STR-007, RP-STR-007, RP-FLD-001, RP-COD-001"),
        causes(
            separator,
            finding("RP-STR-007"),
            finding("RP-STR-007"),
            finding("RP-STR-007"),
            field,
            finding("RP-COD-001"),
            finding("RP-TXN-004")));
  }

  @Test
  void whatIsSeenOfPixelsThatWereReadAsWhatTheyAreNotFollows() {
    for (String rule : List.of("RP-IMG-005", "RP-IMG-011")) {
      assertEquals(
          List.of(
              rule + " record 4: RP-IMG-006 record 4, RP-RDG-004 record 4, RP-SEQ-002 record 4",
              "RP-IMG-006 record 4: RP-RDG-004 record 4, RP-SEQ-002 record 4"),
          causes(
              inImage(rule, 4),
              inImage("RP-IMG-006", 4),
              inImage("RP-RDG-004", 4),
              inImage("RP-SEQ-002", 4),
              inImage("RP-RDG-004", 5),
              inField("RP-FLD-001", 4, 14, 5)));
    }
  }

  @Test
  void aGraverFindingOfThePixelsStays() {
    Finding likely = inImage("RP-IMG-006", 4).withSeverity(Severity.ADVICE);
    assertEquals(List.of("RP-IMG-006 record 4: nothing"), causes(likely, inImage("RP-RDG-004", 4)));
  }

  @Test
  void bytesBehindAnImageAreTheSecondImage() {
    assertEquals(
        List.of("RP-IMG-030 record 4: RP-IMG-007 record 4"),
        causes(inImage("RP-IMG-030", 4), inImage("RP-IMG-007", 4), inImage("RP-IMG-007", 5)));
  }

  @Test
  void boxesInAnotherOrderAreNotWhereTheirFingersLie() {
    assertEquals(
        List.of("RP-TXN-023 record 4: RP-RDG-021 record 4"),
        causes(inImage("RP-TXN-023", 4), inImage("RP-RDG-021", 4), inImage("RP-RDG-021", 5)));
    assertEquals(
        List.of("RP-TXN-023 record 4: nothing"),
        causes(inImage("RP-TXN-023", 4).withSeverity(Severity.NOTE), inImage("RP-RDG-021", 4)));
  }

  @Test
  void aPrintThatIsThereTwiceIsOneRecordTooMany() {
    Finding twice = inImage("RP-TXN-003", 4);
    assertEquals(
        List.of("RP-TXN-003 record 4: RP-TXN-048 record 4"),
        causes(twice, inImage("RP-TXN-048", 4), inImage("RP-TXN-048", 5)));
    assertEquals(
        List.of("RP-TXN-003 record 4: nothing"),
        causes(twice.withSeverity(Severity.ADVICE), inImage("RP-TXN-048", 4)));
  }

  @Test
  void anAnnotationThatIsWrittenTwiceIsToldOfItsFingerOnce() {
    assertEquals(
        List.of(
            "RP-TXN-005 finger 3: RP-TXN-022 finger 3",
            "RP-TXN-005 finger 4: nothing",
            "RP-TXN-005: nothing"),
        causes(
            annotated("RP-TXN-005", 3),
            annotated("RP-TXN-005", 4),
            finding("RP-TXN-005"),
            annotated("RP-TXN-022", 3),
            finding("RP-TXN-022"),
            annotated("RP-RDG-004", 3)));
  }

  private static Finding annotated(String rule, int finger) {
    return finding(rule, Location.file().withPosition(OptionalInt.of(finger)));
  }

  @Test
  void withoutTheFirstRecordNoneOfItsFieldsCanBeThere() {
    assertEquals(
        List.of("RP-XML-012: RP-FLD-001 record 1 1.004, RP-STR-014"),
        causes(
            finding("RP-XML-012"),
            inField("RP-FLD-001", 1, 1, 4),
            finding("RP-STR-014"),
            inField("RP-FLD-001", 2, 2, 18),
            finding("RP-TXN-004")));
  }

  @Test
  void ofTheRecordInWhichTheXmlBreaksWhatIsBehindIsNotRead() {
    Transaction card = SampleCard.rolledTagged().examine().transaction();
    ByteRange second = card.records().get(1).range();
    assertEquals(List.of(2), explainedBreakAt(card, second.offset() + 1));
    assertEquals(List.of(2), explainedBreakAt(card, second.end() - 1));
    assertEquals(List.of(1, 2), explainedBreakAt(card, second.offset()));
    assertEquals(List.of(2, 3), explainedBreakAt(card, second.end()));
  }

  /** The records of which a missing field is explained by XML that breaks there. */
  private static List<Integer> explainedBreakAt(Transaction card, int offset) {
    Finding broken = finding("RP-XML-001", Location.file().at(new ByteRange(offset, 1)));
    String line =
        Established.by(
                new FollowingCauses(),
                card,
                broken,
                inField("RP-FLD-001", 1, 1, 4),
                inField("RP-FLD-001", 2, 2, 18),
                inField("RP-FLD-001", 3, 14, 5))
            .get(0);
    return List.of(1, 2, 3).stream().filter(record -> line.contains("record " + record)).toList();
  }
}
