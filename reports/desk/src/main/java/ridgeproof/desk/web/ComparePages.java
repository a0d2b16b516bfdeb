package ridgeproof.desk.web;

import io.javalin.http.Context;
import java.util.List;
import ridgeproof.desk.view.Markup;
import ridgeproof.desk.view.PairOfFiles;
import ridgeproof.desk.work.Examined;
import ridgeproof.desk.work.Pairing;
import ridgeproof.desk.work.Worklist;
import ridgeproof.examination.comparison.IgnoredFields;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.comparison.ComparisonHtml;

/** Two files side by side, and which two are worth it. */
final class ComparePages {

  private static final int WIDTH = 80;

  private final Worklist worklist;
  private final FilePages files;
  private final ImageExtraction extraction;
  private final Frames frames;
  private final OpenImages open;
  private final Pairing pairing = new Pairing();

  ComparePages(
      Worklist worklist,
      FilePages files,
      ImageExtraction extraction,
      Frames frames,
      OpenImages open) {
    this.worklist = worklist;
    this.files = files;
    this.extraction = extraction;
    this.frames = frames;
    this.open = open;
  }

  /** The pairs that go together, as a part of the list's page. */
  void suggestions(Context request) {
    List<PairOfFiles> pairs =
        pairing.of(worklist.files()).stream()
            .map(
                pair ->
                    new PairOfFiles(
                        pair.first().id(),
                        pair.second().id(),
                        frames
                            .texts()
                            .of(
                                "compare.names",
                                TextSanitizer.of(pair.first().name()),
                                TextSanitizer.of(pair.second().name())),
                        frames.texts().of("compare.why." + pair.why().name())))
            .toList();
    request.html(Markup.suggestions(frames.titled("files", "desk.title"), pairs));
  }

  void page(Context request) {
    Examined first = examined(request, "first");
    Examined second = examined(request, "second");
    String title =
        frames
            .texts()
            .of(
                "compare.title",
                TextSanitizer.of(first.file().name()),
                TextSanitizer.of(second.file().name()));
    request.html(
        Markup.compare(
            frames.of("files", title), request.queryParam("first"), request.queryParam("second")));
  }

  void report(Context request) throws InterruptedException {
    Examined first = examined(request, "first");
    Examined second = examined(request, "second");
    boolean personal = "shown".equals(request.queryParam("personal"));
    RenderOptions options = new RenderOptions(personal, false, WIDTH);
    Headers.report(request);
    request.html(
        open.use(
            () ->
                ComparisonHtml.render(
                    first.file(),
                    second.file(),
                    TransactionComparison.of(
                        first.report(),
                        second.report(),
                        extraction,
                        IgnoredFields.parse(IgnoredFields.STANDARD)),
                    options,
                    image -> extraction.decode(image).pixels())));
  }

  private Examined examined(Context request, String side) {
    String id = request.queryParam(side);
    if (id == null) {
      throw Refused.notFound();
    }
    return files.examined(id);
  }

  void forget() {
    pairing.forget();
  }
}
