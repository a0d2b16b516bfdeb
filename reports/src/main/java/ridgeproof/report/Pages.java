package ridgeproof.report;

import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.function.Consumer;

/** Fills the templates, which escape every text for the place where it stands. */
final class Pages {

  private Pages() {}

  static String report(Page page) {
    return filled(output -> JtepageGenerated.render(output, null, page));
  }

  static String ticket(List<Ticket.Section> sections) {
    PageHead head = PageHead.titled(Ticket.TITLE);
    return filled(output -> JteticketGenerated.render(output, null, head, sections));
  }

  static String comparison(ComparisonPage page) {
    return filled(output -> JtecomparisonGenerated.render(output, null, page));
  }

  static String summary(SummaryPage page) {
    return filled(output -> JtesummaryGenerated.render(output, null, page));
  }

  /** The report for paper, as XHTML. */
  static String paper(PdfPage page) {
    return filled(output -> JtepdfGenerated.render(output, null, page));
  }

  private static String filled(Consumer<HtmlTemplateOutput> template) {
    StringOutput text = new StringOutput();
    template.accept(new OwaspHtmlTemplateOutput(text));
    return text.toString();
  }
}
