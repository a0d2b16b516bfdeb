package ridgeproof.examination.cause.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static ridgeproof.examination.cause.Established.finding;
import static ridgeproof.examination.cause.Established.inField;
import static ridgeproof.examination.cause.Established.inImage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.examination.cause.Established;
import ridgeproof.finding.Finding;

/** What rests on a value that cannot be read. */
class MisreadValuesTest {

  private static List<String> causes(Finding... found) {
    return Established.by(new MisreadFieldCause(), found);
  }

  @ParameterizedTest
  @CsvSource({
    "2, RP-FLD-011, RP-TXN-001",
    "11, RP-TXN-001, RP-TXN-002",
    "12, RP-RDG-013, RP-RDG-004"
  })
  void aFieldOfTheHeaderExplainsWhatUsesIt(int field, String follows, String stays) {
    String cause = "RP-FLD-008 record 1 1." + String.format("%03d", field);
    assertEquals(
        List.of(cause + ": " + follows),
        causes(inField("RP-FLD-008", 1, 1, field), finding(follows), finding(stays)));
  }

  @Test
  void aFieldOnWhichNothingRestsExplainsNothing() {
    assertEquals(List.of(), causes(inField("RP-FLD-008", 2, 2, 22), finding("RP-TXN-001")));
    assertEquals(List.of(), causes(finding("RP-FLD-008"), finding("RP-TXN-001")));
  }

  @Test
  void onlyAFindingOfTheFormOfAValueIsACause() {
    assertEquals(List.of(), causes(inField("RP-FLD-011", 1, 1, 11), finding("RP-TXN-001")));
  }

  @Test
  void aListOfContentsExplainsWhatItDoesNotListAndItsOwnFaults() {
    assertEquals(
        List.of(
            "RP-FLD-008 record 1 1.003: RP-STR-014, RP-FLD-005 record 1 1.003",
            "RP-FLD-005 record 1 1.003: RP-STR-014"),
        causes(
            inField("RP-FLD-008", 1, 1, 3),
            finding("RP-STR-014"),
            inField("RP-FLD-005", 1, 1, 3),
            inField("RP-FLD-005", 2, 2, 18)));
  }

  @Test
  void anIdcExplainsWhatTheListOfContentsAndTheLinksMakeOfIt() {
    assertEquals(
        List.of(
            "RP-FLD-008 record 4 14.002: RP-STR-014, RP-STR-016 record 4 14.022,"
                + " RP-FLD-005 record 1 1.003, RP-FLD-004 record 4 14.002",
            "RP-FLD-005 record 1 1.003: RP-STR-014, RP-STR-016 record 4 14.022,"
                + " RP-STR-016 record 5 14.022",
            "RP-FLD-004 record 4 14.002: RP-FLD-008 record 4 14.002, RP-STR-014,"
                + " RP-STR-016 record 4 14.022, RP-FLD-005 record 1 1.003",
            "RP-FLD-004 record 5 14.002: RP-STR-014, RP-STR-016 record 5 14.022,"
                + " RP-FLD-005 record 1 1.003"),
        causes(
            inField("RP-FLD-008", 4, 14, 2),
            finding("RP-STR-014"),
            inField("RP-STR-016", 4, 14, 22),
            inField("RP-STR-016", 5, 14, 22),
            inField("RP-FLD-005", 1, 1, 3),
            inField("RP-FLD-004", 4, 14, 2),
            inField("RP-FLD-004", 5, 14, 2),
            inField("RP-FLD-004", 4, 14, 5)));
  }

  @Test
  void theSecondFieldOfTheHeaderIsNoIdc() {
    assertEquals(
        List.of("RP-FLD-008 record 1 1.002: nothing"),
        causes(inField("RP-FLD-008", 1, 1, 2), finding("RP-STR-014")));
  }

  @Test
  void anIdcThatIsNoNumberIsOneWhereverItIs() {
    assertEquals(
        List.of("RP-STR-028 record 4: RP-STR-014"),
        causes(inImage("RP-STR-028", 4), finding("RP-STR-014")));
  }

  @ParameterizedTest
  @CsvSource({"13, RP-COD-001", "3, RP-FLD-008"})
  void aPositionOrAnImpressionExplainsTheMissingPrintAndItsRidges(int field, String rule) {
    String cause = rule + " record 4 14." + String.format("%03d", field);
    assertEquals(
        List.of(cause + ": RP-TXN-004, RP-RDG-004 record 4, RP-SEQ-002 record 4"),
        causes(
            inField(rule, 4, 14, field),
            finding("RP-TXN-004"),
            inImage("RP-RDG-004", 4),
            inImage("RP-SEQ-002", 4),
            inImage("RP-RDG-004", 5)));
  }

  @Test
  void anotherFieldOfAPrintDoesNotExplainTheMissingPrint() {
    assertEquals(List.of(), causes(inField("RP-FLD-008", 4, 14, 5), finding("RP-TXN-004")));
  }

  @Test
  void morePrintsMissingThanMisreadStay() {
    assertEquals(
        List.of("RP-COD-001 record 4 14.013: RP-RDG-004 record 4"),
        causes(
            inField("RP-COD-001", 4, 14, 13),
            finding("RP-TXN-004"),
            finding("RP-TXN-004"),
            inImage("RP-RDG-004", 4)));
  }
}
