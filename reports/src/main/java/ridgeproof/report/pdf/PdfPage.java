package ridgeproof.report.pdf;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import ridgeproof.report.page.ReportModel;
import ridgeproof.report.page.ReportModel.FindingNote;
import ridgeproof.report.page.ReportModel.PositionRow;
import ridgeproof.report.page.ReportModel.RecordPart;
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
 * @param pictures of all images, small
 * @param shots the prints beside each step
 * @param records with their fields, where they were asked for
 */
public record PdfPage(
    ReportModel page,
    String style,
    String blank,
    String foot,
    Optional<String> time,
    List<Row> rolled,
    List<PositionRow> plain,
    List<PositionRow> noted,
    List<SmallPicture> pictures,
    List<List<Shot>> shots,
    List<Group> findings,
    int furtherFindings,
    List<RecordPart> records,
    int furtherRecords) {

  private static final int IN_A_ROW = 4;

  /**
   * A print with its marks.
   *
   * @param source as a data address
   * @param wide whether it is rather wide than high
   */
  public record Shot(String source, String inWords, String name, String notes, boolean wide) {}

  /**
   * An image as small as four of them are beside each other.
   *
   * @param width drawn, in millimetres
   * @param height drawn, in millimetres
   */
  public record SmallPicture(Picture picture, double width, double height) {

    private static final double WIDEST_MM = 39;
    private static final double MAX_MM = 34;

    public static SmallPicture of(Picture picture) {
      double factor = Math.min(1, Math.min(WIDEST_MM / picture.width(), MAX_MM / picture.height()));
      return new SmallPicture(picture, picture.width() * factor, picture.height() * factor);
    }
  }

  /** The images in rows of four. */
  public List<List<SmallPicture>> sheet() {
    return IntStream.range(0, (pictures.size() + IN_A_ROW - 1) / IN_A_ROW)
        .mapToObj(
            row ->
                pictures.subList(row * IN_A_ROW, Math.min(pictures.size(), (row + 1) * IN_A_ROW)))
        .toList();
  }

  /** The rules of the findings that are told. */
  public List<ReportModel.RuleNote> rules() {
    return page.rules().stream()
        .filter(rule -> page.unfolded() || !rule.severity().equals("NOTE"))
        .toList();
  }

  /** A row of a card. */
  public record Row(String name, List<PositionRow> cells) {}

  /** The findings about one record, or about the file as a whole. */
  public record Group(String title, List<FindingNote> notes) {}
}
