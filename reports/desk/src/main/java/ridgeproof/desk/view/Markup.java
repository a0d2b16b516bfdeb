package ridgeproof.desk.view;

import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.function.Consumer;

/** Fills the templates, which escape every text for the place where it stands. */
public final class Markup {

  private Markup() {}

  public static String desk(Frame frame, List<Row> rows, long since, boolean watched) {
    return filled(output -> JtedeskGenerated.render(output, null, frame, rows, since, watched));
  }

  /** One row, in one line. */
  public static String row(Frame frame, Row row) {
    return filled(output -> JterowGenerated.render(output, null, frame, row)).replace('\n', ' ');
  }

  public static String file(Frame frame, FilePage file) {
    return filled(output -> JtefileGenerated.render(output, null, frame, file));
  }

  public static String enter(Frame frame) {
    return filled(output -> JteenterGenerated.render(output, null, frame));
  }

  /** A page with nothing but a message, for a browser that is not let in. */
  public static String message(Frame frame, String message) {
    return filled(output -> JtemessageGenerated.render(output, null, frame, message));
  }

  private static String filled(Consumer<HtmlTemplateOutput> template) {
    StringOutput text = new StringOutput();
    template.accept(new OwaspHtmlTemplateOutput(text));
    return text.toString();
  }
}
