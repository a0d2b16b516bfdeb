package ridgeproof.report;

import java.util.List;

/** What the template of a comparison is filled with; every text is inert already. */
record ComparisonPage(
    PageHead head,
    boolean same,
    String lead,
    List<String> summary,
    List<String> references,
    String ignored,
    boolean personalShown,
    boolean imagesShown,
    List<FileRow> files,
    List<FindingLine> lost,
    List<FindingLine> gained,
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
  record FileRow(String name, String first, String second, boolean verbatim) {}

  /** A finding that only one of the files has. */
  record FindingLine(String severity, String rule, String title, String place, String found) {}

  /**
   * Two images, their level and what was measured.
   *
   * @param state {@code same}, {@code other} or {@code untold}
   * @param mark the same as one character
   */
  record ImagePart(
      String anchor,
      String title,
      String state,
      String mark,
      String level,
      String figures,
      PicturePair pictures,
      List<PrintRow> prints) {}

  /** What is said of one finger; state and mark as those of the image. */
  record PrintRow(
      String finger, String state, String mark, String answer, String similarity, String reason) {}

  /** Two records that answer to each other and differ. */
  record PairPart(
      String anchor,
      String title,
      String image,
      List<String> remarks,
      List<ValueRow> values,
      int furtherValues) {}

  /** A field, subfield or item, and what either file has there. */
  record ValueRow(String place, String name, String change, String first, String second) {}
}
