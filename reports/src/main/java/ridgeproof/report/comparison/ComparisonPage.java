package ridgeproof.report.comparison;

import java.util.List;
import ridgeproof.report.page.HtmlHead;
import ridgeproof.report.picture.PicturePair;

/** What the template of a comparison is filled with; every text is inert already. */
public record ComparisonPage(
    HtmlHead head,
    String stamp,
    String style,
    String lead,
    String next,
    List<String> warning,
    List<String> summary,
    List<String> references,
    String ignored,
    boolean personalShown,
    boolean imagesShown,
    List<FileRow> files,
    List<Change> changes,
    List<FingerRow> fingers,
    List<ImagePart> images,
    int furtherImages,
    List<PairPart> pairs,
    List<String> removed,
    List<String> added,
    List<ValueRow> noted,
    String lengths,
    List<String> cautions) {

  /**
   * What both files have of something.
   *
   * @param verbatim whether the values are to be read letter by letter
   */
  public record FileRow(String name, String first, String second, boolean verbatim) {}

  /**
   * Findings that are resolved, still present or new.
   *
   * @param style a class of the style sheet
   * @param notes how many facts there are beside them; empty for none
   */
  public record Change(String title, String style, List<FindingLine> lines, String notes) {}

  /** A finding of one of the files or of both. */
  public record FindingLine(
      String severity, String rule, String title, String place, String found) {}

  /**
   * Two images, their level and what was measured.
   *
   * @param state {@code same}, {@code other} or {@code untold}
   * @param mark the same as one character
   */
  public record ImagePart(
      String anchor,
      String title,
      String state,
      String mark,
      String level,
      String figures,
      List<PicturePair> pictures,
      List<PrintRow> prints) {}

  /** What is said of one finger; state and mark as those of the image. */
  public record PrintRow(
      String finger, String state, String mark, String answer, String similarity, String reason) {}

  /** Two records that answer to each other and differ. */
  public record PairPart(
      String anchor,
      String title,
      String image,
      List<String> remarks,
      List<ValueRow> values,
      int furtherValues) {}

  /** A field, subfield or item, and what either file has there. */
  public record ValueRow(String place, String name, String change, String first, String second) {}
}
