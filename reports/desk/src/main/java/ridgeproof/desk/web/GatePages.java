package ridgeproof.desk.web;

import io.javalin.http.Context;
import java.util.Optional;
import ridgeproof.desk.view.Markup;
import ridgeproof.gate.GateFailure;
import ridgeproof.gate.HeldFiles;
import ridgeproof.report.TextSanitizer;

/** What the gate holds, and letting it go. */
final class GatePages {

  private final HeldFiles held;
  private final GateLog log;
  private final Frames frames;

  GatePages(HeldFiles held, GateLog log, Frames frames) {
    this.held = held;
    this.log = log;
    this.frames = frames;
  }

  void page(Context request) {
    request.html(Markup.gate(frames.titled("gate", "gate.title"), held.reasons()));
  }

  void list(Context request) {
    list(request, "");
  }

  private void list(Context request, String said) {
    request.html(
        Markup.gateList(
            frames.titled("gate", "gate.title"), held.list(), held.reasons(), log.latest(), said));
  }

  void report(Context request) {
    String entry = Optional.ofNullable(request.queryParam("entry")).orElse("");
    String report = held.report(entry).orElseThrow(Refused::notFound);
    Headers.report(request);
    request.html(report);
  }

  void release(Context request) {
    String entry = Optional.ofNullable(request.formParam("entry")).orElse("");
    String reason = Optional.ofNullable(request.formParam("reason")).orElse("");
    String by = Optional.ofNullable(request.formParam("by")).orElse("");
    String said;
    try {
      String as = held.release(entry, reason, by);
      said = frames.texts().of("gate.released", TextSanitizer.of(entry), TextSanitizer.of(as));
    } catch (GateFailure failure) {
      said = frames.texts().of("gate.failed", TextSanitizer.of(failure.getMessage()));
    }
    list(request, said);
  }
}
