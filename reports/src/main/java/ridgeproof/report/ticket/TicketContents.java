package ridgeproof.report.ticket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.message.BureauMessages;
import ridgeproof.examination.message.Explanation;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.FieldValues;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.RidgePhrases;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.ToolFacts;
import ridgeproof.report.TruncatedText;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;
import ridgeproof.transaction.record.LogicalRecord;

/** What a ticket says. */
final class TicketContents {

  private static final int CONTROL_NUMBER = 9;
  private static final int CONTROL_REFERENCE = 10;
  private static final int MAX_PLACES = 12;
  private static final int MAX_MEANINGS = 3;

  private final FileFacts file;
  private final FindingsReport report;
  private final ToolFacts tool;
  private final TicketRequest request;
  private final ReportPhrases wording;
  private final FieldValues values;

  TicketContents(FileFacts file, FindingsReport report, ToolFacts tool, TicketRequest request) {
    this.file = file;
    this.report = report;
    this.tool = tool;
    this.request = request;
    this.wording = new ReportPhrases(report.tables());
    this.values = new FieldValues(report.tables(), report.transaction().version(), false);
  }

  List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    sections.add(new Section("Verdict", verdict()));
    request.message().ifPresent(text -> sections.add(new Section("Bureau message", message(text))));
    sections.add(new Section("What the vendor can check", checks()));
    sections.add(new Section("What the operator was asked to do", steps()));
    sections.add(new Section("File", examined()));
    TicketFacts facts = new TicketFacts(report);
    sections.add(new Section("Station", facts.station()));
    sections.add(new Section("Encoder", facts.encoder()));
    sections.add(new Section("Findings by rule", findings()));
    request.copy().ifPresent(attached -> sections.add(attached.section()));
    sections.add(new Section("Environment", environment()));
    sections.add(new Section("Answer", answer()));
    sections.add(new Section("Notes", notes()));
    return List.copyOf(sections);
  }

  private List<Line> message(String text) {
    List<Line> lines = new ArrayList<>();
    fact(lines, "Message", text);
    Explanation explanation = new BureauMessages(report.tables()).explain(text);
    explanation
        .messages()
        .limit(MAX_MEANINGS)
        .forEach(
            m ->
                lines.add(
                    new Line.Prose(
                        m.title() + ". " + m.meaning() + " (" + m.source().known().label() + ")")));
    if (!explanation.isKnown()) {
      lines.add(new Line.Prose("No explanation is known for this message."));
      return lines;
    }
    List<String> met =
        report.findings().stream()
            .map(Finding::ruleId)
            .filter(explanation.rules()::contains)
            .distinct()
            .toList();
    lines.add(
        new Line.Prose(
            met.isEmpty()
                ? "No finding in this file explains the message."
                : "Findings in this file that can explain the message: "
                    + String.join(", ", met)
                    + "."));
    return lines;
  }

  /** One check for each rule that was met, in the order of the worst finding. */
  private List<Line> checks() {
    Map<String, List<String>> byCheck = new LinkedHashMap<>();
    report.findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .sorted(Comparator.comparing(Finding::severity))
        .map(Finding::ruleId)
        .distinct()
        .forEach(
            id ->
                report.tables().answers().vendorChecks().stream()
                    .filter(check -> check.rules().contains(id))
                    .findFirst()
                    .ifPresent(
                        check ->
                            byCheck
                                .computeIfAbsent(check.check(), key -> new ArrayList<>())
                                .add(id)));
    List<Line> lines = new ArrayList<>();
    byCheck.forEach(
        (check, ids) -> lines.add(new Line.Step(lines.size() + 1, check, String.join(", ", ids))));
    if (lines.isEmpty()) {
      lines.add(new Line.Prose("Nothing: no finding points to the station."));
    }
    return lines;
  }

  private static List<Line> answer() {
    return List.of(
        new Line.Room("Cause"),
        new Line.Room("Corrected in version"),
        new Line.Room("Workaround until then"),
        new Line.Room("Answered by, date"));
  }

  private List<Line> examined() {
    List<Line> lines = new ArrayList<>();
    fact(lines, "SHA-256", file.sha256());
    fact(lines, "Size", Counted.of(file.bytes(), "byte"));
    Optional<LogicalRecord> header = report.transaction().header();
    if (header.isPresent()) {
      fact(lines, "Version", ReportPhrases.version(report));
      fact(
          lines,
          "Type of transaction",
          report.transaction().typeOfTransaction().orElse("not stated"));
      fact(lines, "Control number", controlNumber(header.get()));
      fact(lines, "Records", records());
      fact(lines, "Checked as", ReportPhrases.heldTo(report));
      ReportPhrases.completeness(report).ifPresent(how -> fact(lines, "Completeness", how));
      report
          .relaxed()
          .forEach(rule -> fact(lines, "Relaxed by the profile", wording.relaxed(rule)));
    }
    fact(
        lines,
        "Depth",
        switch (report.depth()) {
          case STRUCTURE -> "structure; images were not opened";
          case IMAGES -> "structure and images; ridges were not examined";
          case RIDGES -> "structure, images and ridges";
        });
    fact(lines, "Dates checked as of", report.asOf().toString());
    report
        .sequence()
        .ifPresent(
            sequence ->
                fact(lines, "Finger position check", new RidgePhrases(wording).sequence(sequence)));
    return lines;
  }

  /** The control number, and that of the transaction that it answers. */
  private boolean isMaskedNumber(FieldNumber field) {
    return !request.controlNumber()
        && field.recordType() == 1
        && (field.field() == CONTROL_NUMBER || field.field() == CONTROL_REFERENCE);
  }

  private String controlNumber(LogicalRecord header) {
    return header
        .text(CONTROL_NUMBER)
        .map(text -> request.controlNumber() ? text : TextSanitizer.MASKED)
        .orElse("not stated");
  }

  private String records() {
    TreeMap<Integer, Long> counts =
        report.transaction().records().stream()
            .collect(
                Collectors.groupingBy(LogicalRecord::type, TreeMap::new, Collectors.counting()));
    return report.transaction().records().size()
        + ": "
        + counts.entrySet().stream()
            .map(count -> count.getValue() + " Type-" + count.getKey())
            .collect(Collectors.joining(", "));
  }

  private List<Line> verdict() {
    return List.of(
        new Line.Outcome(report.verdict()),
        new Line.Prose(ReportPhrases.of(report.verdict())),
        new Line.Prose(ReportPhrases.counts(report)));
  }

  private List<Line> steps() {
    List<Line> lines = new ArrayList<>();
    int number = 0;
    for (RecommendedAction action : report.actions()) {
      lines.add(
          new Line.Step(
              ++number,
              TextSanitizer.of(action.remedy()),
              action.severity() + ", " + ReportPhrases.ids(action.findings())));
    }
    if (lines.isEmpty()) {
      lines.add(new Line.Prose("No action is needed."));
    }
    return lines;
  }

  private List<Line> findings() {
    Map<String, List<Finding>> byRule =
        report.findings().stream()
            .sorted(Comparator.comparing(Finding::severity).thenComparing(Finding::ruleId))
            .collect(
                Collectors.groupingBy(Finding::ruleId, LinkedHashMap::new, Collectors.toList()));
    List<Line> lines = new ArrayList<>();
    byRule.values().forEach(group -> rule(group, lines));
    if (lines.isEmpty()) {
      lines.add(new Line.Prose("None."));
    }
    return lines;
  }

  private void rule(List<Finding> group, List<Line> lines) {
    Finding first = group.get(0);
    lines.add(new Line.Rule(first.severity().name(), first.ruleId(), first.rule().title()));
    group.stream().limit(MAX_PLACES).forEach(finding -> lines.add(place(finding)));
    group.stream()
        .flatMap(finding -> ReportPhrases.explains(finding).stream())
        .forEach(text -> lines.add(new Line.Prose(text)));
    if (group.size() > MAX_PLACES) {
      lines.add(new Line.Prose("and " + Counted.of(group.size() - MAX_PLACES, "more place") + "."));
    }
    Source source = first.source();
    lines.add(
        new Line.Prose(
            "Source: "
                + wording.title(source.document())
                + (source.place().isEmpty() ? "" : ", " + source.place())
                + " ("
                + source.known().label()
                + ")."));
  }

  private Line place(Finding finding) {
    return new Line.Place(
        wording.whereabouts(finding.location()) + wording.furtherPlaces(finding),
        TruncatedText.of(found(finding)),
        TruncatedText.of(TextSanitizer.of(finding.required())));
  }

  /** Stricter than other reports: nothing found in a personal field is repeated. */
  private String found(Finding finding) {
    Location place = finding.location();
    boolean personal =
        finding.observed().personal()
            || place.field().filter(this::isMaskedNumber).isPresent()
            || place.field().isPresent()
                && values.isPrivate(place.field().get(), place.item().orElse(1));
    return personal ? TextSanitizer.MASKED : TextSanitizer.of(finding.observed().text());
  }

  private List<Line> environment() {
    List<Line> lines = new ArrayList<>();
    fact(lines, "Ridgeproof", tool.version());
    fact(lines, "Java", tool.java());
    fact(lines, "System", tool.system());
    fact(lines, "Rules", String.valueOf(report.tables().catalogue().rules().size()));
    request.commandLine().ifPresent(line -> fact(lines, "Command line", line));
    request.generatedAt().ifPresent(time -> fact(lines, "Created at", time.toString()));
    return lines;
  }

  private List<Line> notes() {
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line.Prose(
            "Personal values and the file name are left out. The file is identified by its SHA-256."
                + " Do not attach the file itself unless the receiver may keep fingerprints."
                + (request.copy().isPresent()
                    ? " The safe copy may be sent with the ticket."
                    : "")));
    if (request.message().isPresent()) {
      lines.add(
          new Line.Prose(
              "The bureau's message is shown as received. It may contain personal data: review it"
                  + " before you send the ticket."));
    }
    lines.add(
        new Line.Prose(
            request.controlNumber()
                ? "The control number is shown: it ties this ticket to the applicant's transaction"
                    + " and to other rejections of the same applicant."
                : "The control number is masked. If the bureau or the vendor needs it to find the"
                    + " transaction, make the ticket again with --with-control-number. It ties two"
                    + " rejections of one applicant together."));
    ReportPhrases.CAUTIONS.forEach(caution -> lines.add(new Line.Prose(caution)));
    return lines;
  }

  private static void fact(List<Line> lines, String name, String value) {
    lines.add(new Line.Fact(name, TruncatedText.of(TextSanitizer.of(value))));
  }
}
