package ridgeproof.report.ticket;

import java.util.List;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ToolFacts;
import ridgeproof.report.page.HtmlHead;
import ridgeproof.report.page.Templates;
import ridgeproof.report.template.JteticketGenerated;

/**
 * A report for a help desk: what was found and where, without a value that tells of a person and
 * without the name of the file. The same file, tool and machine give the same ticket.
 */
public final class Ticket {

  /** The resource that holds the schema of the JSON form. */
  public static final String SCHEMA = "/ridgeproof/report/ticket.schema.json";

  /** A titled part. */
  public record Section(String title, List<Line> lines) {}

  /** What a section is made of. */
  public sealed interface Line {

    /** Our own words. */
    record Prose(String text) implements Line {}

    /** The verdict. */
    record Outcome(Verdict verdict) implements Line {}

    /** A name and a value that may come from the file. */
    record Fact(String name, String value) implements Line {}

    /** A step, numbered, with what it answers. */
    record Step(int number, String text, String answers) implements Line {}

    /** The rule that the next lines are about. */
    record Rule(String severity, String id, String title) implements Line {}

    /** A place where the rule was met, and the values found and required there. */
    record Place(String where, String found, String required) implements Line {}

    /** Room for an answer. */
    record Room(String name) implements Line {}
  }

  static final String TITLE = "Ridgeproof ticket";

  private final List<Section> sections;

  private Ticket(List<Section> sections) {
    this.sections = sections;
  }

  public static Ticket of(
      FileFacts file, FindingsReport report, ToolFacts tool, TicketRequest request) {
    return new Ticket(new TicketContents(file, report, tool, request).sections());
  }

  /** Plain text, at most 72 columns. */
  public String asText() {
    return TicketText.render(sections);
  }

  /** CommonMark, in which values from the file stand in code spans. */
  public String asMarkdown() {
    return TicketMarkdown.render(sections);
  }

  /** For a program. */
  public String asJson() {
    return TicketJson.render(sections);
  }

  /** A self-contained page. */
  public String asHtml() {
    HtmlHead head = HtmlHead.titled(TITLE);
    return Templates.fill(output -> JteticketGenerated.render(output, null, head, sections));
  }
}
