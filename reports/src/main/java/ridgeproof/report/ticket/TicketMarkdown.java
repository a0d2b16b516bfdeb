package ridgeproof.report.ticket;

import java.util.List;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;

/** A ticket as CommonMark. */
final class TicketMarkdown {

  /** Every character that CommonMark or a tracker's dialect of it could take for a command. */
  private static final String ACTIVE = "\\`*_{}[]<>#|~&@:!$^=";

  private TicketMarkdown() {}

  static String render(List<Section> sections) {
    StringBuilder out = new StringBuilder("# ").append(Ticket.TITLE).append('\n');
    for (Section section : sections) {
      out.append("\n## ").append(plain(section.title())).append("\n\n");
      section.lines().forEach(line -> line(out, line));
    }
    return out.toString();
  }

  private static void line(StringBuilder out, Line line) {
    if (line instanceof Line.Prose prose) {
      out.append('\n').append(plain(prose.text())).append('\n');
    } else if (line instanceof Line.Outcome outcome) {
      line(out, new Line.Fact("Verdict", outcome.verdict().name()));
    } else if (line instanceof Line.Fact fact) {
      out.append("- ").append(plain(fact.name())).append(": ").append(code(fact.value()));
      out.append('\n');
    } else if (line instanceof Line.Step step) {
      out.append(step.number()).append(". ").append(plain(step.text()));
      out.append(" (").append(plain(step.answers())).append(")\n");
    } else if (line instanceof Line.Rule rule) {
      out.append("\n### ").append(plain(rule.severity())).append(' ').append(plain(rule.id()));
      out.append(' ').append(plain(rule.title())).append("\n\n");
    } else if (line instanceof Line.Place place) {
      out.append("- ").append(plain(place.where())).append("; found ").append(code(place.found()));
      out.append(", required ").append(code(place.required())).append('\n');
    } else if (line instanceof Line.Room room) {
      out.append("- ").append(plain(room.name())).append(":\n");
    }
  }

  /** Our own words, in which nothing is to be read as a command. */
  private static String plain(String text) {
    StringBuilder escaped = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (ACTIVE.indexOf(c) >= 0) {
        escaped.append('\\');
      }
      escaped.append(c);
    }
    return escaped.toString();
  }

  /** A value between more backticks than it has in a row itself. */
  private static String code(String value) {
    int longest = 0;
    int run = 0;
    for (int i = 0; i < value.length(); i++) {
      run = value.charAt(i) == '`' ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    String fence = "`".repeat(longest + 1);
    // Blanks keep a value's own backticks off the fence; CommonMark takes one off each side.
    boolean padded = value.isBlank() || value.startsWith("`") || value.endsWith("`");
    String blank = padded || value.startsWith(" ") || value.endsWith(" ") ? " " : "";
    return fence + blank + value + blank + fence;
  }
}
