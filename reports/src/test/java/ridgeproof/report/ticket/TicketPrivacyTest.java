package ridgeproof.report.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.spec.rule.Severity;
import ridgeproof.transaction.record.ByteRange;

/** What a ticket does not say of the person, and what it says of that. */
class TicketPrivacyTest {

  private static String found(Location place, Observed observed, TicketRequest request) {
    Finding finding = MadeTicket.finding("RP-FLD-990", Severity.ADVICE, place, observed);
    List<Line> lines = MadeTicket.section("Findings by rule", MadeTicket.report(finding), request);
    return ((Line.Place) lines.get(1)).found();
  }

  /** Whatever the rule says of the value: a ticket goes to people outside of the agency. */
  @ParameterizedTest
  @CsvSource({
    "1, 8, THP000001",
    "1, 9, [masked]",
    "1, 10, [masked]",
    "1, 11, THP000001",
    "2, 18, [masked]",
    "2, 67, THP000001",
    "2, 9, [masked]",
    "14, 9, THP000001",
    "14, 10, THP000001",
    "14, 904, THP000001"
  })
  void aFoundValueIsShownOnlyWhereItsFieldIsPublicAndNoControlNumber(
      int type, int field, String shown) {
    assertEquals(
        shown,
        found(
            MadeTicket.field(1, type, field).subfield(1, new ByteRange(0, 1)),
            Observed.of("THP000001"),
            TicketRequest.standard()));
  }

  @ParameterizedTest
  @CsvSource({"9, PILOT-0002", "10, PILOT-0002", "12, PILOT-0002"})
  void aFoundControlNumberIsShownWhenAskedFor(int field, String shown) {
    assertEquals(
        shown,
        found(
            MadeTicket.field(1, 1, field),
            Observed.of("PILOT-0002"),
            TicketRequest.standard().withControlNumber()));
  }

  @Test
  void aValueThatTellsOfAPersonIsMaskedWhereverItIs() {
    assertEquals(
        "[masked]",
        found(Location.file(), Observed.personal("SPECIMEN"), TicketRequest.standard()));
    assertEquals(
        "3 images", found(Location.file(), Observed.of("3 images"), TicketRequest.standard()));
  }

  /** The serial number is the third item of the equipment. */
  @ParameterizedTest
  @CsvSource({"1, SN-7", "2, SN-7", "3, [masked]"})
  void anItemIsMaskedByItsOwnRow(int item, String shown) {
    Location place = MadeTicket.field(2, 2, 67);
    assertEquals(
        shown,
        found(
            new Location(
                place.record(),
                place.recordType(),
                place.idc(),
                place.field(),
                OptionalInt.of(1),
                OptionalInt.of(item),
                place.bytes(),
                place.position(),
                place.text()),
            Observed.of("SN-7"),
            TicketRequest.standard()));
  }

  private static final String STRICT =
      "Personal values and the file name are left out. The file is identified by its SHA-256."
          + " Do not attach the file itself unless the receiver may keep fingerprints.";

  private static final List<Line> CAUTIONS =
      List.of(
          new Line.Prose("This report neither identifies anyone nor certifies the file."),
          new Line.Prose(
              "The receiving bureau's specification and your agency's policy decide what is"
                  + " accepted."));

  @Test
  void notesSayWhatIsLeftOutAndHowToShowTheControlNumber() {
    List<Line> lines = MadeTicket.section("Notes", MadeTicket.report());
    assertEquals(
        List.of(
            new Line.Prose(STRICT),
            new Line.Prose(
                "The control number is masked. If the bureau or the vendor needs it to find the"
                    + " transaction, make the ticket again with --with-control-number. It ties two"
                    + " rejections of one applicant together.")),
        lines.subList(0, 2));
    assertEquals(CAUTIONS, lines.subList(2, lines.size()));
  }

  @Test
  void notesSayWhatAShownControlNumberTiesTogether() {
    List<Line> lines =
        MadeTicket.section(
            "Notes", MadeTicket.report(), TicketRequest.standard().withControlNumber());
    assertEquals(
        new Line.Prose(
            "The control number is shown: it ties this ticket to the applicant's transaction and"
                + " to other rejections of the same applicant."),
        lines.get(1));
  }

  @Test
  void notesAllowToSendTheSafeCopyWhereThereIsOne() {
    AttachedCopy copy = MadeTicket.copy(List.of(), List.of());
    List<Line> lines =
        MadeTicket.section("Notes", MadeTicket.report(), TicketRequest.standard().withCopy(copy));
    assertEquals(
        new Line.Prose(STRICT + " The safe copy may be sent with the ticket."), lines.get(0));
  }

  private static Line controlNumber(TicketRequest request) {
    return MadeTicket.section("File", MadeTicket.report(), request).get(4);
  }

  @Test
  void theControlNumberOfTheFileIsShownOnlyWhenAskedFor() {
    assertEquals(
        new Line.Fact("Control number", "[masked]"), controlNumber(TicketRequest.standard()));
    assertEquals(
        new Line.Fact("Control number", "PILOT-0002"),
        controlNumber(TicketRequest.standard().withControlNumber()));
  }

  @Test
  void notesWarnOfAMessageThatMayTellOfThePerson() {
    List<Line> lines =
        MadeTicket.section(
            "Notes", MadeTicket.report(), TicketRequest.standard().withMessage("SPECIMEN,ADA"));
    assertEquals(
        List.of(
            new Line.Prose(STRICT),
            new Line.Prose(
                "The bureau's message is shown as received. It may contain personal data: review it"
                    + " before you send the ticket.")),
        lines.subList(0, 2));
  }
}
