package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.message.BureauMessages;
import ridgeproof.report.catalogue.MessageListing;
import ridgeproof.report.catalogue.RuleExport;
import ridgeproof.report.ticket.Ticket;
import ridgeproof.report.ticket.TicketRequest;
import ridgeproof.testing.ReferenceFiles;

/** What a program reads is as the published schema has it. */
class PublishedSchemasTest {

  private static String ticket(byte[] bytes, TicketRequest request) {
    return Ticket.of(
            Reports.facts(bytes), Reports.examine(bytes, Depth.IMAGES), Renderings.TOOL, request)
        .asJson();
  }

  @Test
  void ticketsOfSoundFaultyAndUnreadableFiles() {
    TicketRequest full =
        TicketRequest.standard()
            .withCommandLine("ridgeproof ticket FILE")
            .withMessage("L0008 the quality of the print is too low")
            .withTime(Instant.parse("2026-03-02T10:15:00Z"))
            .withControlNumber();
    for (byte[] bytes :
        List.of(
            PilotCard.ascii().bytes(),
            PilotCard.ascii().without(4).bytes(),
            new byte[0],
            "no transaction".getBytes(StandardCharsets.UTF_8))) {
      for (TicketRequest request : List.of(TicketRequest.standard(), full)) {
        assertEquals(Set.of(), Reports.objections(Ticket.SCHEMA, ticket(bytes, request)));
      }
    }
  }

  @Test
  void ticketsOfReferenceFiles() {
    for (Path file : ReferenceFiles.all()) {
      String name = file.getFileName().toString();
      String json = ticket(ReferenceFiles.read(name), TicketRequest.standard());
      assertEquals(Set.of(), Reports.objections(Ticket.SCHEMA, json), name);
    }
  }

  @Test
  void theSchemaOfTicketsObjectsToALineOfNoKind() {
    String json = ticket(PilotCard.ascii().bytes(), TicketRequest.standard());
    ObjectNode ticket = (ObjectNode) Reports.parse(json);
    ArrayNode lines = (ArrayNode) ticket.get("sections").get(0).get("lines");
    lines.addObject().put("kind", "nothing").put("text", "x");
    assertFalse(Reports.objections(Ticket.SCHEMA, ticket.toString()).isEmpty());
  }

  @Test
  void explanationsOfEveryMessageThatIsKnownAndOfOneThatIsNot() {
    BureauMessages messages = new BureauMessages(Reports.TABLES);
    MessageListing listing = new MessageListing(Reports.TABLES);
    for (String text :
        List.of("L0008", "Fingerprint sequence error", "L0008 and E9999", "nothing at all", "")) {
      String json = listing.json(messages.explain(text));
      assertEquals(Set.of(), Reports.objections(MessageListing.SCHEMA, json), text);
    }
  }

  @Test
  void everyRule() {
    String json =
        new RuleExport(Reports.TABLES).json(List.copyOf(Reports.TABLES.catalogue().rules()));
    assertEquals(Set.of(), Reports.objections(RuleExport.SCHEMA, json));
  }
}
