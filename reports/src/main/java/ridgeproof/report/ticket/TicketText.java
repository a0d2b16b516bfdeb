package ridgeproof.report.ticket;

import java.util.List;
import java.util.Locale;
import ridgeproof.report.TextLayout;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;

/** A ticket as plain text, as it fits into a mail. */
final class TicketText {

  private static final int WIDTH = 72;
  private static final int NAME_COLUMNS = 24;

  private TicketText() {}

  static String render(List<Section> sections) {
    StringBuilder out = new StringBuilder(Ticket.TITLE.toUpperCase(Locale.ROOT)).append('\n');
    for (Section section : sections) {
      out.append('\n').append(section.title()).append('\n');
      out.append("-".repeat(section.title().length())).append('\n');
      section.lines().forEach(line -> line(out, line));
    }
    return out.toString();
  }

  private static void line(StringBuilder out, Line line) {
    if (line instanceof Line.Prose prose) {
      paragraph(out, "  ", prose.text());
    } else if (line instanceof Line.Outcome outcome) {
      fact(out, new Line.Fact("Verdict", outcome.verdict().name()));
    } else if (line instanceof Line.Fact fact) {
      fact(out, fact);
    } else if (line instanceof Line.Step step) {
      paragraph(out, String.format(Locale.ROOT, "%4d. ", step.number()), step.text());
      paragraph(out, "      ", "[" + step.answers() + "]");
    } else if (line instanceof Line.Rule rule) {
      out.append('\n');
      paragraph(out, "  ", rule.severity() + " " + rule.id() + " " + rule.title());
    } else if (line instanceof Line.Place place) {
      paragraph(out, "  - ", place.where());
      paragraph(out, "      found     ", place.found());
      paragraph(out, "      required  ", place.required());
    } else if (line instanceof Line.Room room) {
      out.append("  ").append(room.name()).append(":\n\n");
    }
  }

  private static void fact(StringBuilder out, Line.Fact fact) {
    String name = "  " + fact.name();
    boolean wide = NAME_COLUMNS + fact.value().length() > WIDTH && fact.value().indexOf(' ') < 0;
    if (wide || name.length() >= NAME_COLUMNS) {
      out.append(name).append('\n');
      paragraph(out, "    ", fact.value());
    } else {
      paragraph(out, name + " ".repeat(NAME_COLUMNS - name.length()), fact.value());
    }
  }

  private static void paragraph(StringBuilder out, String lead, String text) {
    TextLayout.indented(out, lead, text, WIDTH);
  }
}
