package ridgeproof.report.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.finding.Finding;
import ridgeproof.report.PilotCard;
import ridgeproof.report.Renderings;
import ridgeproof.report.Reports;
import ridgeproof.testing.ReferenceFiles;

class TicketTest {

  private static Ticket ticket(byte[] bytes, Optional<Instant> time) {
    TicketRequest request = TicketRequest.standard();
    return ticket(bytes, time.map(request::withTime).orElse(request));
  }

  private static Ticket ticket(byte[] bytes, TicketRequest request) {
    return Ticket.of(
        Reports.facts(bytes), Reports.examine(bytes, Depth.IMAGES), Renderings.TOOL, request);
  }

  private static String text(PilotCard card) {
    return ticket(card.bytes(), Optional.empty()).asText();
  }

  @Test
  void theSameFileGivesTheSameTicketByteForByte() {
    byte[] bytes = PilotCard.ascii().without(4).bytes();
    Ticket first = ticket(bytes, Optional.empty());
    Ticket again = ticket(bytes.clone(), Optional.empty());
    assertEquals(first.asText(), again.asText());
    assertEquals(first.asMarkdown(), again.asMarkdown());
    assertEquals(first.asHtml(), again.asHtml());
  }

  @Test
  void aTicketTellsATimeOnlyWhenItIsGivenOne() {
    byte[] bytes = PilotCard.ascii().bytes();
    assertFalse(ticket(bytes, Optional.empty()).asText().contains("Created at"));
    String timed = ticket(bytes, Optional.of(Instant.parse("2026-03-02T10:15:00Z"))).asText();
    assertTrue(timed.contains("Created at            2026-03-02T10:15:00Z"), timed);
  }

  @Test
  void aTicketSaysWhatWasExaminedAndByWhat() {
    String text = text(PilotCard.ascii().without(4));
    for (String line :
        List.of(
            "  Version               0500",
            "  Type of transaction   FAUF",
            "  Control number        [masked]",
            "  Records               15: 1 Type-1, 1 Type-2, 13 Type-14",
            "  Verdict               HOLD",
            "  Ridgeproof            0.1",
            "  Rules                 " + Reports.TABLES.catalogue().rules().size(),
            "BLOCKING RP-TXN-004")) {
      assertTrue(text.contains(line), line + " is not in\n" + text);
    }
    assertTrue(text.contains("0".repeat(64)));
  }

  @Test
  void everyFindingStandsUnderItsRule() {
    byte[] bytes = PilotCard.ascii().without(4).header(5, "20261399").bytes();
    FindingsReport report = Reports.examine(bytes, Depth.IMAGES);
    String text = ticket(bytes, Optional.empty()).asText();
    assertTrue(report.findings().size() > 1);
    for (String rule : report.findings().stream().map(Finding::ruleId).distinct().toList()) {
      long headings = text.lines().filter(line -> line.matches("  [A-Z]+ " + rule + " .*")).count();
      assertEquals(1, headings, rule);
    }
  }

  @Test
  void aPlainTicketKeepsWithinSeventyTwoColumns() throws IOException {
    for (Path file : ReferenceFiles.all()) {
      ticket(Files.readAllBytes(file), Optional.of(Instant.EPOCH))
          .asText()
          .lines()
          .forEach(line -> assertTrue(line.length() <= 72, line));
    }
  }

  @Test
  void aFileThatIsNoTransactionHasATicketToo() {
    String text = ticket(new byte[] {1, 2, 3}, Optional.empty()).asText();
    assertTrue(text.contains("UNREADABLE"), text);
  }

  @Test
  void aNameThatFillsItsColumnStandsAlone() {
    Ticket.Line fact = new Ticket.Line.Fact("Finger position check x", "one is in another's");
    String text = TicketText.render(List.of(new Ticket.Section("Examined", List.of(fact))));
    assertTrue(text.endsWith("\n  Finger position check x\n    one is in another's\n"), text);
  }

  @Test
  void theControlNumberIsShownOnlyWhenAskedForAndWhatItTiesIsSaid() {
    byte[] bytes = PilotCard.ascii().header(9, "PILOT 0001").bytes();
    String masked = ticket(bytes, TicketRequest.standard()).asText();
    assertFalse(masked.contains("PILOT 0001"), masked);
    assertTrue(masked.contains("--with-control-number"), masked);
    String shown = ticket(bytes, TicketRequest.standard().withControlNumber()).asText();
    assertTrue(shown.contains("  Control number        PILOT 0001"), shown);
    assertTrue(shown.replaceAll("\\s+", " ").contains("ties this ticket to the applicant"), shown);
  }

  @Test
  void theBureausMessageIsExplainedByTheFindings() {
    byte[] bytes = PilotCard.ascii().without(4).bytes();
    String text =
        ticket(bytes, TicketRequest.standard().withMessage("Missing finger: ten required"))
            .asText()
            .replaceAll("\\s+", " ");
    assertTrue(text.contains("A finger is missing without a reason"), text);
    assertTrue(text.contains("can explain the message: RP-TXN-004"), text);
    String unknown =
        ticket(bytes, TicketRequest.standard().withMessage("Come back later")).asText();
    assertTrue(unknown.contains("No explanation is known for this message."), unknown);
  }

  @Test
  void theVendorHasAListOfItsOwnAndTheStationIsNamed() {
    byte[] bytes =
        PilotCard.ascii()
            .without(4)
            .particular(67, "HARBORLIGHT\u001fTENFOLD 3\u001fSN-SPECIMEN-7")
            .bytes();
    String text = ticket(bytes, TicketRequest.standard()).asText();
    String checks =
        text.substring(
            text.indexOf("What the vendor can check"), text.indexOf("What the operator"));
    assertTrue(checks.contains("RP-TXN-004"), checks);
    assertFalse(checks.contains("Capture these prints"), checks);
    assertTrue(text.contains("HARBORLIGHT | TENFOLD 3"), text);
    assertFalse(text.contains("SN-SPECIMEN-7"), text);
    assertTrue(text.contains("Corrected in version:"), text);
  }

  @Test
  void theJsonFormSaysTheSame() {
    byte[] bytes = PilotCard.ascii().without(4).bytes();
    Ticket ticket =
        ticket(bytes, TicketRequest.standard().withCommandLine("ridgeproof ticket FILE"));
    JsonNode json = Reports.parse(ticket.asJson());
    assertEquals("ridgeproof-ticket", json.get("schema").asText());
    assertEquals("HOLD", json.at("/sections/0/lines/0/verdict").asText());
    assertEquals(
        ticket.asText().lines().filter(line -> line.matches("-+")).count(),
        json.get("sections").size());
    assertTrue(json.toString().contains("ridgeproof ticket FILE"), json.toPrettyString());
  }
}
