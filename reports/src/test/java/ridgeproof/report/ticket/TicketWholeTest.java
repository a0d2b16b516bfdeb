package ridgeproof.report.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import ridgeproof.report.Reports;

/** Everything that the four forms of a ticket say, word by word. */
class TicketWholeTest {

  private final Ticket ticket = MadeTicket.ticket(MadeTicket.whole(), MadeTicket.request());

  /** The number of rules grows with the catalogue. */
  private static String expected(String name) throws IOException {
    try (InputStream in = TicketWholeTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .replace("{rules}", Integer.toString(Reports.TABLES.catalogue().rules().size()));
    }
  }

  @Test
  void theTextSaysEachThingOnce() throws IOException {
    assertEquals(expected("whole.txt"), ticket.asText());
  }

  @Test
  void theMarkdownSaysEachThingOnce() throws IOException {
    assertEquals(expected("whole.md"), ticket.asMarkdown());
  }

  @Test
  void aProgramReadsEachThingOnce() throws IOException {
    assertEquals(expected("whole.json"), ticket.asJson());
  }

  @Test
  void thePageSaysEachThingOnce() throws IOException {
    String page = ticket.asHtml();
    assertEquals(
        expected("whole.html"), page.substring(page.indexOf("<body"), page.indexOf("</main>")));
  }
}
