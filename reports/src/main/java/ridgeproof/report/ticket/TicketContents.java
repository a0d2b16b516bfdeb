package ridgeproof.report.ticket;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.report.Excerpt;
import ridgeproof.report.FieldValues;
import ridgeproof.report.FileFacts;
import ridgeproof.report.RidgeWording;
import ridgeproof.report.SafeText;
import ridgeproof.report.ToolFacts;
import ridgeproof.report.Wording;
import ridgeproof.report.ticket.Ticket.Line;
import ridgeproof.report.ticket.Ticket.Section;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.table.Source;
import ridgeproof.transaction.record.LogicalRecord;

/** What a ticket says. */
final class TicketContents {

  private static final int CONTROL_NUMBER = 9;
  private static final int MOST_PLACES = 12;

  private final FileFacts file;
  private final FindingsReport report;
  private final ToolFacts tool;
  private final Optional<Instant> generatedAt;
  private final Optional<AttachedCopy> copy;
  private final Wording wording;
  private final FieldValues values;

  TicketContents(
      FileFacts file,
      FindingsReport report,
      ToolFacts tool,
      Optional<Instant> generatedAt,
      Optional<AttachedCopy> copy) {
    this.file = file;
    this.report = report;
    this.tool = tool;
    this.generatedAt = generatedAt;
    this.copy = copy;
    this.wording = new Wording(report.tables());
    this.values = new FieldValues(report.tables(), report.transaction().version(), false);
  }

  List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    sections.add(new Section("Verdict", verdict()));
    sections.add(new Section("What to try", steps()));
    sections.add(new Section("What was examined", examined()));
    sections.add(new Section("Findings by rule", findings()));
    copy.ifPresent(attached -> sections.add(attached.section()));
    sections.add(new Section("Environment", environment()));
    sections.add(new Section("Please note", notes()));
    return List.copyOf(sections);
  }

  private List<Line> examined() {
    List<Line> lines = new ArrayList<>();
    fact(lines, "SHA-256", file.sha256());
    fact(lines, "Size", String.format(Locale.ROOT, "%,d bytes", file.bytes()));
    Optional<LogicalRecord> header = report.transaction().header();
    if (header.isPresent()) {
      fact(lines, "Version", Wording.version(report));
      fact(
          lines,
          "Type of transaction",
          report.transaction().typeOfTransaction().orElse("not stated"));
      fact(lines, "Control number", header.get().text(CONTROL_NUMBER).orElse("not stated"));
      fact(lines, "Records", records());
      fact(lines, "Checked as", Wording.heldTo(report));
      Wording.completenessGap(report).ifPresent(gap -> fact(lines, "Completeness", gap));
      report
          .relaxed()
          .forEach(rule -> fact(lines, "Relaxed by the profile", wording.relaxed(rule)));
    }
    fact(
        lines,
        "Depth",
        switch (report.depth()) {
          case STRUCTURE -> "structure; images were not checked";
          case IMAGES -> "structure and images; ridges were not checked";
          case RIDGES -> "structure, images, and ridges";
        });
    fact(lines, "Dates checked as of", report.asOf().toString());
    report
        .sequence()
        .ifPresent(
            sequence ->
                fact(lines, "Finger position check", new RidgeWording(wording).sequence(sequence)));
    return lines;
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
        new Line.Prose(Wording.of(report.verdict())),
        new Line.Prose(Wording.counts(report)));
  }

  private List<Line> steps() {
    List<Line> lines = new ArrayList<>();
    int number = 0;
    for (RecommendedAction action : report.actions()) {
      lines.add(
          new Line.Step(
              ++number,
              SafeText.of(action.remedy()),
              action.severity() + ", " + Wording.ids(action.findings())));
    }
    if (lines.isEmpty()) {
      lines.add(new Line.Prose("Nothing: no finding calls for action."));
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
    group.stream().limit(MOST_PLACES).forEach(finding -> lines.add(place(finding)));
    group.stream()
        .flatMap(finding -> Wording.explains(finding).stream())
        .forEach(text -> lines.add(new Line.Prose(text)));
    if (group.size() > MOST_PLACES) {
      lines.add(
          new Line.Prose("and " + Counted.of(group.size() - MOST_PLACES, "more place") + "."));
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
        Excerpt.of(found(finding)),
        Excerpt.of(SafeText.of(finding.required())));
  }

  /** Stricter than other reports: nothing found in a personal field is repeated. */
  private String found(Finding finding) {
    Location place = finding.location();
    boolean personal =
        finding.observed().personal()
            || place.field().isPresent()
                && values.isPrivate(place.field().get(), place.item().orElse(1));
    return personal ? SafeText.MASKED : SafeText.of(finding.observed().text());
  }

  private List<Line> environment() {
    List<Line> lines = new ArrayList<>();
    fact(lines, "Ridgeproof", tool.version());
    fact(lines, "Java", tool.java());
    fact(lines, "System", tool.system());
    fact(lines, "Number of rules", String.valueOf(report.tables().catalogue().rules().size()));
    generatedAt.ifPresent(time -> fact(lines, "Created at", time.toString()));
    return lines;
  }

  private List<Line> notes() {
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line.Prose(
            "This ticket omits personal data and the name of the file, which is identified by its"
                + " SHA-256. Do not attach the file itself unless the help desk may keep"
                + " fingerprints."
                + (copy.isPresent() ? " You may send the safe copy with this ticket." : "")));
    Wording.CAUTIONS.forEach(caution -> lines.add(new Line.Prose(caution)));
    return lines;
  }

  private static void fact(List<Line> lines, String name, String value) {
    lines.add(new Line.Fact(name, Excerpt.of(SafeText.of(value))));
  }
}
