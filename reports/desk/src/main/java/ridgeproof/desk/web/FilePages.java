package ridgeproof.desk.web;

import io.javalin.http.Context;
import java.util.Optional;
import ridgeproof.desk.view.FilePage;
import ridgeproof.desk.view.Markup;
import ridgeproof.desk.work.DeskFile;
import ridgeproof.desk.work.DeskFile.State;
import ridgeproof.desk.work.Examined;
import ridgeproof.desk.work.Worklist;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.codec.PngWriter;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.report.picture.RidgePicture;

/** One file: its page, the report in it, and its images. */
final class FilePages {

  private static final int WIDTH = 80;
  private static final int SMALL = 240;

  private final Worklist worklist;
  private final ImageExtraction extraction;
  private final Frames frames;
  private final OpenImages open;

  FilePages(Worklist worklist, ImageExtraction extraction, Frames frames, OpenImages open) {
    this.worklist = worklist;
    this.extraction = extraction;
    this.frames = frames;
    this.open = open;
  }

  /** A file whose report is there, by the id in the address. */
  Examined examined(Context request) {
    return examined(request.pathParam("id"));
  }

  Examined examined(String id) {
    return worklist
        .use(id)
        .filter(file -> file.state() == State.EXAMINED)
        .flatMap(DeskFile::examined)
        .orElseThrow(Refused::notFound);
  }

  void page(Context request) {
    Examined examined = examined(request);
    boolean response = BureauResponses.isResponse(examined.report());
    FilePage page = FilePage.of(request.pathParam("id"), examined, response, frames.texts());
    request.html(Markup.file(frames.of("files", page.name()), page));
  }

  void report(Context request) throws InterruptedException {
    Examined examined = examined(request);
    boolean personal = "shown".equals(request.queryParam("personal"));
    RenderOptions options = new RenderOptions(personal, false, WIDTH);
    Headers.report(request);
    request.html(
        open.use(
            () ->
                HtmlReport.render(
                    examined.file(),
                    examined.report(),
                    options,
                    image -> extraction.decode(image).pixels())));
  }

  void image(Context request) throws InterruptedException {
    ExaminedImage image = image(examined(request), request.pathParam("record"));
    boolean overlay = "yes".equals(request.queryParam("overlay")) && image.ridges().isPresent();
    boolean small = "yes".equals(request.queryParam("small"));
    byte[] png = open.use(() -> png(image, overlay, small));
    request.contentType("image/png").result(png);
  }

  private byte[] png(ExaminedImage image, boolean overlay, boolean small) {
    GrayImage pixels = extraction.decode(image).pixels().orElseThrow(Refused::notFound);
    return overlay
        ? RidgePicture.png(pixels, image.ridges().orElseThrow())
        : PngWriter.encode(small ? smaller(pixels) : pixels, Optional.empty());
  }

  private static ExaminedImage image(Examined examined, String record) {
    return examined.report().images().stream()
        .filter(image -> Integer.toString(image.record().ordinal()).equals(record))
        .filter(image -> image.pixels().isPresent())
        .findFirst()
        .orElseThrow(Refused::notFound);
  }

  /** Every so many pixels, at most about 240 across: enough to know a print by. */
  private static GrayImage smaller(GrayImage image) {
    int step = Math.max(1, Math.max(image.width(), image.height()) / SMALL);
    int width = (image.width() + step - 1) / step;
    int height = (image.height() + step - 1) / step;
    byte[] pixels = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int right = Math.min(image.width() - 1, x * step + step / 2);
        int below = Math.min(image.height() - 1, y * step + step / 2);
        pixels[y * width + x] =
            (byte) ((image.grayAt(x * step, y * step) + image.grayAt(right, below)) / 2);
      }
    }
    return GrayImage.owning(width, height, pixels);
  }

  void drop(Context request) {
    worklist.drop(request.pathParam("id"));
    request.status(204);
  }
}
