package ridgeproof.report.text;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.RecommendedAction;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.finding.Finding;
import ridgeproof.report.AnsiStyle;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ObservedText;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.RidgePhrases;
import ridgeproof.report.TextLayout;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.prints.PrintScores;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.agency.RelaxedRule;
import ridgeproof.spec.table.Source;
import ridgeproof.transaction.record.LogicalRecord;

/** The report for a terminal: the verdict first, then what to do, then each record. */
public final class TextReport {

  private final FileFacts file;
  private final FindingsReport report;
  private final RenderOptions options;
  private final ReportPhrases wording;
  private final ObservedText observed;
  private final AnsiStyle ink;
  private final RidgePhrases ridges;
  private final PrintScores scores;
  private final StringBuilder out = new StringBuilder();
  private final Set<String> explained = new HashSet<>();

  private TextReport(FileFacts file, FindingsReport report, RenderOptions options) {
    this.file = file;
    this.report = report;
    this.options = options;
    this.wording = new ReportPhrases(report.tables());
    this.observed = new ObservedText(report, options.showPersonal());
    this.ridges = new RidgePhrases(wording);
    this.scores = new PrintScores(report);
    this.ink = new AnsiStyle(options.colour());
  }

  public static String render(FileFacts file, FindingsReport report, RenderOptions options) {
    return new TextReport(file, report, options).render();
  }

  private String render() {
    heading();
    relaxed();
    actions();
    sequence();
    records();
    sources();
    out.append('\n');
    ReportPhrases.CAUTIONS.forEach(caution -> paragraph("", caution));
    return out.toString();
  }

  private void heading() {
    Verdict verdict = report.verdict();
    out.append(ink.verdict(verdict))
        .append("  ")
        .append(TextSanitizer.of(file.name()))
        .append("\n\n");
    paragraph("  ", ReportPhrases.of(verdict));
    paragraph("  ", ReportPhrases.counts(report));
    paragraph("  ", facts());
    paragraph("  ", "Dates checked as of " + report.asOf() + ".");
    out.append("  SHA-256 ").append(file.sha256()).append('\n');
  }

  private String facts() {
    StringBuilder line = new StringBuilder();
    line.append(Counted.of(file.bytes(), "byte"));
    int records = report.transaction().records().size();
    if (records > 0) {
      line.append(", version ").append(ReportPhrases.version(report));
      report
          .transaction()
          .typeOfTransaction()
          .ifPresent(type -> line.append(", type of transaction ").append(TextSanitizer.of(type)));
      line.append(", ").append(Counted.of(records, "record"));
      line.append(", ").append(Counted.of(report.images().size(), "image"));
      line.append(". Checked as: ").append(TextSanitizer.of(ReportPhrases.heldTo(report)));
      ReportPhrases.completenessGap(report).ifPresent(gap -> line.append(". ").append(gap));
    }
    return line + ".";
  }

  /** Rules that a profile made laxer are listed always, whether the file breaks them or not. */
  private void relaxed() {
    if (report.relaxed().isEmpty()) {
      return;
    }
    out.append('\n')
        .append(ink.strong("Relaxed by the profile, compared with the published rules"))
        .append('\n');
    for (RelaxedRule rule : report.relaxed()) {
      paragraph("  ", TextSanitizer.of(wording.relaxed(rule)));
    }
  }

  private void actions() {
    if (report.actions().isEmpty()) {
      return;
    }
    out.append('\n').append(ink.strong("What to do")).append("\n\n");
    int number = 0;
    for (RecommendedAction action : report.actions()) {
      String lead = String.format(Locale.US, " %2d. ", ++number);
      paragraph(lead, TextSanitizer.of(action.remedy()) + observed.aboutMasked(action));
      paragraph("     ", "[" + action.severity() + "] " + ReportPhrases.ids(action.findings()));
    }
  }

  private void sequence() {
    report
        .sequence()
        .ifPresent(
            sequence -> {
              out.append('\n').append(ink.strong("Finger position check")).append('\n');
              paragraph("  ", ridges.sequence(sequence));
            });
  }

  private void records() {
    Map<Integer, List<Finding>> findings = report.findingsByRecord();
    Map<Integer, ExaminedImage> images = report.imagesByRecord();
    List<Finding> whole = findings.getOrDefault(0, List.of());
    if (!whole.isEmpty()) {
      out.append('\n').append(ink.strong("The file as a whole")).append('\n');
      whole.forEach(this::finding);
    }
    for (LogicalRecord record : report.transaction().records()) {
      out.append('\n').append(ink.strong(wording.recordTitle(record))).append('\n');
      paragraph("  ", ReportPhrases.extent(record));
      if (images.containsKey(record.ordinal())) {
        image(images.get(record.ordinal()));
      }
      findings.getOrDefault(record.ordinal(), List.of()).forEach(this::finding);
    }
  }

  private void image(ExaminedImage image) {
    String positions = wording.positions(image);
    String impression = wording.impression(image.impression());
    if (!positions.isEmpty()) {
      String codes = String.join(", ", image.positions().stream().map(String::valueOf).toList());
      paragraph(
          "  ",
          (image.positions().size() == 1 ? "position " + codes + ", " : "positions " + codes + ": ")
              + positions
              + (impression.isEmpty() ? "" : "; " + impression));
    }
    String measures = wording.measures(image);
    if (!measures.isEmpty()) {
      paragraph("  ", measures);
    }
    ridges.lines(image, scores).forEach(line -> paragraph("  ", line));
  }

  private void finding(Finding finding) {
    out.append("  ").append(ink.severity(finding.severity())).append(' ');
    out.append(finding.ruleId()).append(' ').append(finding.rule().title()).append('\n');
    String place = wording.placeWithFinger(finding.location());
    if (!place.isEmpty()) {
      paragraph("      ", place);
    }
    if (finding.count() > 1) {
      paragraph("      places    ", wording.places(finding));
    }
    ReportPhrases.explains(finding).ifPresent(text -> paragraph("      explains  ", text));
    paragraph("      found     ", observed.of(finding));
    paragraph("      required  ", TextSanitizer.of(finding.required()));
    for (String measure : ReportPhrases.measured(finding)) {
      paragraph("      measured  ", measure);
    }
    // A card repeats the same finding up to fourteen times; once is enough to say why.
    if (explained.add(finding.ruleId() + finding.explanation())) {
      paragraph("      why       ", TextSanitizer.of(finding.explanation()));
      paragraph("      source    ", source(finding.source()));
    }
  }

  private static String source(Source source) {
    return source.document()
        + (source.place().isEmpty() ? "" : " " + source.place())
        + ", "
        + source.known().label();
  }

  private void sources() {
    List<String> documents =
        report.findings().stream().map(f -> f.source().document()).distinct().sorted().toList();
    if (documents.isEmpty()) {
      return;
    }
    out.append('\n').append(ink.strong("Sources")).append('\n');
    documents.forEach(
        key -> paragraph(String.format(Locale.US, "  %-9s ", key), wording.title(key)));
  }

  private void paragraph(String lead, String text) {
    TextLayout.indented(out, lead, text, options.width());
  }
}
