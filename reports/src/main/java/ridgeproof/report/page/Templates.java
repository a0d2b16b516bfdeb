package ridgeproof.report.page;

import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.function.Consumer;

/** Fills a template, which escapes every text for the place where it stands. */
public final class Templates {

  private Templates() {}

  public static String fill(Consumer<HtmlTemplateOutput> template) {
    StringOutput text = new StringOutput();
    template.accept(new OwaspHtmlTemplateOutput(text));
    return text.toString();
  }
}
