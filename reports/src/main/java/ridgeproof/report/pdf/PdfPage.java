package ridgeproof.report.pdf;

import java.util.List;
import java.util.Optional;
import ridgeproof.report.page.Page;
import ridgeproof.report.page.Page.FindingNote;
import ridgeproof.report.page.Page.PositionRow;
import ridgeproof.report.page.Page.RecordPart;
import ridgeproof.report.picture.Picture;

/**
 * What the template of the PDF is filled with: the page of the HTML report, arranged for paper.
 *
 * @param style the style sheet
 * @param blank an image without ink, to draw outlines with
 * @param foot what the foot of every sheet says beside the number
 * @param rolled the rows of a card: the right hand, then the left, each from thumb to little finger
 * @param plain the plain impressions in the order of a card
 * @param noted positions that something is to be said of
 * @param pictures in rows: two beside each other where both have room
 */
public record PdfPage(
    Page page,
    String style,
    String blank,
    String foot,
    Optional<String> time,
    List<Row> rolled,
    List<PositionRow> plain,
    List<PositionRow> noted,
    List<List<Picture>> pictures,
    List<Group> findings,
    int furtherFindings,
    List<RecordPart> records,
    int furtherRecords) {

  private static final int HEADING_AND_CAPTION_MM = 48;

  /** What the heading of the images needs below it to stand by the first of them, in mm. */
  public long roomForImages() {
    double first = pictures.get(0).stream().mapToDouble(Picture::wholeHeight).max().orElse(0);
    return HEADING_AND_CAPTION_MM + Math.round(first);
  }

  /** A row of a card. */
  public record Row(String name, List<PositionRow> cells) {}

  /** The findings about one record, or about the file as a whole. */
  public record Group(String title, List<FindingNote> notes) {}
}
