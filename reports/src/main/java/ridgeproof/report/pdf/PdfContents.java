package ridgeproof.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.imagery.GrayImage;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.TruncatedText;
import ridgeproof.report.page.ReportModel;
import ridgeproof.report.page.ReportModel.PositionRow;
import ridgeproof.report.page.ReportModelBuilder;
import ridgeproof.report.pdf.PdfPage.Group;
import ridgeproof.report.pdf.PdfPage.Row;
import ridgeproof.report.pdf.PdfPage.Shot;
import ridgeproof.report.pdf.PdfPage.SmallPicture;
import ridgeproof.report.picture.Thumbnail;
import ridgeproof.report.prints.MarkedPng;

/**
 * What the PDF says: the same as the page, the findings together, and no more than can be filed.
 */
final class PdfContents {

  private static final String STYLE = "/ridgeproof/report/pdf.css";
  private static final int MAX_FINDINGS = 300;
  private static final int MAX_RECORDS = 100;
  private static final int SHORT_HASH = 16;
  private static final int LAST_OF_CARD = 14;
  private static final List<Integer> RIGHT = List.of(1, 2, 3, 4, 5);
  private static final List<Integer> LEFT = List.of(6, 7, 8, 9, 10);
  private static final List<Integer> PLAIN = List.of(14, 12, 11, 13);

  private final FileFacts file;
  private final PdfOptions pdf;
  private final ReportModel page;

  PdfContents(FileFacts file, FindingsReport report, RenderOptions options, PdfOptions pdf) {
    this.file = file;
    this.pdf = pdf;
    this.page = new ReportModelBuilder(file, report, options, pdf.pixels()).page();
  }

  PdfPage page() {
    List<PositionRow> positions = page.positions();
    List<Group> groups = groups();
    int findings = groups.stream().mapToInt(group -> group.notes().size()).sum();
    return new PdfPage(
        page,
        "@page { size: " + pdf.paper().size() + "; }\n" + readStyle(),
        Thumbnail.of(GrayImage.owning(1, 1, new byte[] {-1})),
        TruncatedText.ofName(page.fileName()) + ", SHA-256 " + shortHash(),
        pdf.generatedAt().map(time -> time.truncatedTo(ChronoUnit.SECONDS).toString()),
        positions.isEmpty()
            ? List.of()
            : List.of(
                new Row("Right hand", cells(positions, RIGHT)),
                new Row("Left hand", cells(positions, LEFT))),
        positions.isEmpty() ? List.of() : cells(positions, PLAIN),
        positions.stream()
            .flatMap(row -> Stream.concat(Stream.of(row), row.noted().stream()))
            .filter(row -> row.code() > LAST_OF_CARD || !row.note().isEmpty())
            .toList(),
        page.pictures().stream().map(SmallPicture::of).toList(),
        page.steps().stream().map(PdfContents::shots).toList(),
        firstOf(groups),
        Math.max(0, findings - MAX_FINDINGS),
        page.unfolded() ? page.records().stream().limit(MAX_RECORDS).toList() : List.of(),
        page.unfolded() ? Math.max(0, page.records().size() - MAX_RECORDS) : 0);
  }

  private static List<Shot> shots(ReportModel.Step step) {
    return step.pictures().stream()
        .map(
            picture ->
                new Shot(
                    MarkedPng.of(picture.print()),
                    picture.print().inWords(),
                    picture.print().name(),
                    String.join(" ", picture.print().notes()),
                    picture.print().view().width() >= picture.print().view().height()))
        .toList();
  }

  private String shortHash() {
    return file.sha256().substring(0, Math.min(SHORT_HASH, file.sha256().length()));
  }

  private static List<PositionRow> cells(List<PositionRow> rows, List<Integer> codes) {
    return codes.stream().flatMap(code -> rows.stream().filter(row -> row.code() == code)).toList();
  }

  private List<Group> groups() {
    Stream<Group> records =
        page.records().stream()
            .map(
                record ->
                    new Group(
                        record.title(), page.unfolded() ? record.findings() : record.asking()));
    return Stream.concat(
            Stream.of(
                new Group(
                    "The file as a whole", page.unfolded() ? page.wholeFile() : page.asking())),
            records)
        .filter(group -> !group.notes().isEmpty())
        .toList();
  }

  private static List<Group> firstOf(List<Group> groups) {
    List<Group> kept = new ArrayList<>();
    int room = MAX_FINDINGS;
    for (Group group : groups) {
      if (room > 0) {
        kept.add(new Group(group.title(), group.notes().stream().limit(room).toList()));
        room -= group.notes().size();
      }
    }
    return kept;
  }

  private static String readStyle() {
    try (InputStream in = PdfContents.class.getResourceAsStream(STYLE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
