package ridgeproof.report;

import java.util.List;
import java.util.Locale;

/** What the template of the summary is filled with; every text is inert already. */
record SummaryPage(
    PageHead head,
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
  record Share(String files, String words, double percent) {

    /** The length of the bar where the whole is 100 long. */
    String length() {
      return String.format(Locale.ROOT, "%.1f", percent);
    }
  }

  record VerdictRow(String verdict, String style, String meaning, Share share) {}

  record RuleRow(
      String id,
      String severity,
      String style,
      String title,
      String remedy,
      Share share,
      List<Link> files,
      int furtherFiles) {}

  /** A file and its page. */
  record Link(String name, String page) {}

  /** A choice above the list of files. */
  record Filter(String id, String label, List<Option> options) {}

  /**
   * @param value a class of the rows that it leaves
   */
  record Option(String value, String label) {}

  /**
   * All files in one order.
   *
   * @param key for names of classes
   */
  record FileTable(String key, String order, List<FileRow> rows) {}

  record PositionRow(int code, String name, Share doubtful, Share missing) {}

  /** The files of each agency, station or operator. */
  record OriginTable(
      String anchor, String title, String caption, String heading, List<OriginRow> rows) {}

  record OriginRow(
      String name, boolean verbatim, Share ready, String others, List<String> findings) {}

  /**
   * A file.
   *
   * @param classes what it can be picked by
   */
  record FileRow(
      String name,
      String page,
      String verdict,
      String style,
      String findings,
      String day,
      String station,
      String classes) {}
}
