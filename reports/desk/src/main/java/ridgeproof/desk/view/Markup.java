package ridgeproof.desk.view;

import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.function.Consumer;
import ridgeproof.gate.GatePassage;
import ridgeproof.gate.HeldFile;

/** Fills the templates, which escape every text for the place where it stands. */
public final class Markup {

  private Markup() {}

  /**
   * The list.
   *
   * @param since number of the latest change in it
   * @param watched whether a folder is watched
   * @param most bytes of one file
   */
  public static String desk(
      DeskFrame frame, List<Row> rows, long since, boolean watched, long most) {
    return filled(
        output -> JtedeskGenerated.render(output, null, frame, rows, since, watched, most));
  }

  /** One row, in one line. */
  public static String row(DeskFrame frame, Row row) {
    return filled(output -> JterowGenerated.render(output, null, frame, row)).replace('\n', ' ');
  }

  public static String file(DeskFrame frame, FilePage file) {
    return filled(output -> JtefileGenerated.render(output, null, frame, file));
  }

  public static String suggestions(DeskFrame frame, List<PairOfFiles> pairs) {
    return filled(output -> JtesuggestionsGenerated.render(output, null, frame, pairs));
  }

  public static String compare(DeskFrame frame, String first, String second) {
    return filled(output -> JtecompareGenerated.render(output, null, frame, first, second));
  }

  public static String ticket(DeskFrame frame, TicketPage ticket) {
    return filled(output -> JteticketGenerated.render(output, null, frame, ticket));
  }

  public static String ticketText(DeskFrame frame, String text) {
    return filled(output -> JtetickettextGenerated.render(output, null, frame, text));
  }

  public static String rejected(DeskFrame frame, RejectionPage.Beginning begin) {
    return filled(output -> JterejectedGenerated.render(output, null, frame, begin));
  }

  public static String explained(DeskFrame frame, List<RejectionPage.Answer> answers) {
    return filled(output -> JteexplainedGenerated.render(output, null, frame, answers));
  }

  public static String gate(DeskFrame frame, List<String> reasons) {
    return filled(output -> JtegateGenerated.render(output, null, frame, reasons));
  }

  public static String gateList(
      DeskFrame frame,
      List<HeldFile> held,
      List<String> reasons,
      List<GatePassage> latest,
      String said) {
    return filled(
        output -> JtegatelistGenerated.render(output, null, frame, held, reasons, latest, said));
  }

  public static String shift(DeskFrame frame, ShiftPage page) {
    return filled(output -> JteshiftGenerated.render(output, null, frame, page));
  }

  public static String help(DeskFrame frame) {
    return filled(output -> JtehelpGenerated.render(output, null, frame));
  }

  public static String enter(DeskFrame frame) {
    return filled(output -> JteenterGenerated.render(output, null, frame));
  }

  /** A page with nothing but a message, for a browser that is not let in. */
  public static String message(DeskFrame frame, String message) {
    return filled(output -> JtemessageGenerated.render(output, null, frame, message));
  }

  private static String filled(Consumer<HtmlTemplateOutput> template) {
    StringOutput text = new StringOutput();
    template.accept(new OwaspHtmlTemplateOutput(text));
    return text.toString();
  }
}
