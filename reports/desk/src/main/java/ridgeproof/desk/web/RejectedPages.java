package ridgeproof.desk.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.desk.view.Markup;
import ridgeproof.desk.view.RejectionPage;
import ridgeproof.desk.view.Rows;
import ridgeproof.desk.view.Texts;
import ridgeproof.desk.work.DeskFile;
import ridgeproof.desk.work.DeskFile.State;
import ridgeproof.desk.work.Examined;
import ridgeproof.desk.work.Worklist;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.message.BureauMessages;
import ridgeproof.examination.message.Explanation;
import ridgeproof.finding.Finding;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.SpecTables;

/** What a bureau's message means, and whether it was to be foreseen. */
final class RejectedPages {

  private static final int MAX_TEXT = 10_000;
  private static final int MAX_MATCHES = 8;

  private final Worklist worklist;
  private final FilePages files;
  private final Frames frames;
  private final BureauMessages messages;

  RejectedPages(Worklist worklist, FilePages files, Frames frames, SpecTables tables) {
    this.worklist = worklist;
    this.files = files;
    this.frames = frames;
    this.messages = new BureauMessages(tables);
  }

  void page(Context request) {
    String id = request.queryParam("response");
    Optional<FindingsReport> response =
        id == null ? Optional.empty() : Optional.of(files.examined(id).report());
    Optional<String> referred = response.flatMap(BureauResponses::reference);
    List<DeskFile> examined =
        worklist.files().stream().filter(file -> file.state() == State.EXAMINED).toList();
    Optional<DeskFile> submission =
        referred.flatMap(number -> examined.stream().filter(has(number)).reduce((a, b) -> b));
    List<RejectionPage.Choice> choices =
        examined.stream()
            .map(
                file ->
                    new RejectionPage.Choice(
                        file.id(),
                        TextSanitizer.of(file.name()),
                        submission.filter(one -> one.id().equals(file.id())).isPresent()))
            .toList();
    String text = response.map(BureauResponses::messages).map(RejectedPages::lines).orElse("");
    String note = response.map(found -> note(found, submission)).orElse("");
    request.html(
        Markup.rejected(
            frames.titled("rejected", "rejected.title"),
            new RejectionPage.Beginning(choices, TextSanitizer.of(text), note)));
  }

  private static String lines(List<String> messages) {
    return String.join("\n", messages);
  }

  private static Predicate<DeskFile> has(String number) {
    return file ->
        file.examined()
            .flatMap(examined -> Rows.controlNumber(examined.report()))
            .filter(number::equals)
            .isPresent();
  }

  private String note(FindingsReport response, Optional<DeskFile> submission) {
    Texts texts = frames.texts();
    String refers =
        submission
            .map(file -> texts.of("rejected.refers", TextSanitizer.of(file.name())))
            .orElseGet(() -> texts.of("rejected.refers.unknown"));
    return BureauResponses.isAcceptance(response)
        ? texts.of("rejected.accepted") + " " + refers
        : refers;
  }

  /** Explains the pasted text, as a part of the page. */
  void explain(Context request) {
    String typed = Optional.ofNullable(request.formParam("message")).orElse("").strip();
    String text = typed.length() <= MAX_TEXT ? typed : typed.substring(0, MAX_TEXT);
    String id = Optional.ofNullable(request.formParam("file")).orElse("");
    Optional<Examined> examined =
        id.isEmpty() ? Optional.empty() : worklist.use(id).flatMap(DeskFile::examined);
    List<RejectionPage.Answer> answers = new ArrayList<>();
    text.lines()
        .filter(line -> !line.isBlank())
        .forEach(line -> answers.add(answer(line.strip(), examined)));
    request.html(Markup.explained(frames.titled("rejected", "rejected.title"), answers));
  }

  private RejectionPage.Answer answer(String line, Optional<Examined> examined) {
    Explanation explanation = messages.explain(line);
    List<RejectionPage.Meaning> meanings =
        explanation
            .messages()
            .map(
                message ->
                    new RejectionPage.Meaning(message.title(), message.meaning(), message.remedy()))
            .toList();
    List<Finding> matches =
        examined.map(file -> matches(explanation, file.report())).orElse(List.of());
    return new RejectionPage.Answer(
        TextSanitizer.of(line),
        meanings,
        matches.stream().limit(MAX_MATCHES).map(RejectedPages::words).toList(),
        conclusion(explanation, examined, matches));
  }

  private static List<Finding> matches(Explanation explanation, FindingsReport report) {
    List<String> rules = explanation.rules();
    List<Finding> inField =
        report.findings().stream()
            .filter(
                finding ->
                    finding.location().field().filter(explanation.fields()::contains).isPresent())
            .toList();
    return Stream.concat(
            inField.stream(),
            report.findings().stream().filter(finding -> rules.contains(finding.ruleId())))
        .distinct()
        .collect(Collectors.toList());
  }

  private static String words(Finding finding) {
    return finding.severity().name()
        + " "
        + finding.ruleId()
        + " "
        + finding.rule().title()
        + ". "
        + TextSanitizer.of(finding.remedy());
  }

  private String conclusion(
      Explanation explanation, Optional<Examined> examined, List<Finding> matches) {
    Texts texts = frames.texts();
    if (examined.isEmpty()) {
      return texts.of(explanation.isKnown() ? "rejected.nofile" : "rejected.unknown");
    }
    String name = TextSanitizer.of(examined.get().file().name());
    if (!matches.isEmpty()) {
      return texts.of("rejected.found", name);
    }
    return texts.of(explanation.isKnown() ? "rejected.missed" : "rejected.unknown", name);
  }
}
