package ridgeproof.report.summary;

import java.util.List;
import java.util.Locale;
import ridgeproof.report.NotExamined;
import ridgeproof.report.page.HtmlHead;

/** What the template of the summary is filled with; every text is inert already. */
public record SummaryPage(
    HtmlHead head,
    String share,
    String lead,
    String account,
    List<NotExamined> others,
    List<VerdictRow> verdicts,
    List<RuleRow> rules,
    int furtherRules,
    List<PositionRow> positions,
    boolean personalShown,
    List<OriginTable> origins,
    Trend trend,
    List<Filter> filters,
    List<FileTable> files,
    List<String> cautions) {

  /**
   * A share of all files, in figures and as the length of a bar.
   *
   * @param percent 0 to 100
   */
  public record Share(String files, String words, double percent) {

    /** The length of the bar where the whole is 100 long. */
    public String length() {
      return String.format(Locale.ROOT, "%.1f", percent);
    }
  }

  public record VerdictRow(String verdict, String style, String meaning, Share share) {}

  public record RuleRow(
      String id,
      String severity,
      String style,
      String title,
      String remedy,
      Share share,
      List<Link> files,
      int furtherFiles) {}

  /** A file and its page. */
  public record Link(String name, String page) {}

  /** A choice above the list of files. */
  public record Filter(String id, String label, List<Option> options) {}

  /**
   * @param value a class of the rows that it leaves
   */
  public record Option(String value, String label) {}

  /**
   * All files in one order.
   *
   * @param key for names of classes
   */
  public record FileTable(String key, String order, List<FileRow> rows) {}

  public record PositionRow(int code, String name, Share doubtful, Share missing) {}

  /** The files of each agency, station or operator. */
  public record OriginTable(
      String anchor, String title, String caption, String heading, List<OriginRow> rows) {}

  public record OriginRow(
      String name, boolean verbatim, Share ready, String others, List<String> findings) {}

  /**
   * A file.
   *
   * @param classes what it can be picked by
   */
  public record FileRow(
      String name,
      String page,
      String verdict,
      String style,
      String findings,
      String day,
      String station,
      String classes) {}
}
