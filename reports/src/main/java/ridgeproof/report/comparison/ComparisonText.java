package ridgeproof.report.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.FindingChanges;
import ridgeproof.examination.comparison.FingerChange;
import ridgeproof.examination.comparison.FingerComparison;
import ridgeproof.examination.comparison.ImageDifference;
import ridgeproof.examination.comparison.ImageLevel;
import ridgeproof.examination.comparison.PrintComparison;
import ridgeproof.examination.comparison.PrintComparison.Answer;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.finding.Finding;
import ridgeproof.report.AnsiStyle;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ObservedText;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.ReportPhrases;
import ridgeproof.report.TextLayout;
import ridgeproof.report.TextSanitizer;
import ridgeproof.report.TruncatedText;
import ridgeproof.report.words.Counted;

/** Comparison of two transactions, for a terminal. */
public final class ComparisonText {

  /** Finger, both scores, the trend and which capture to send. */
  private static final String FINGER = "  %-28s %10s %10s  %-14s %s";

  private final TransactionComparison comparison;
  private final RenderOptions options;
  private final ComparisonPhrases words;
  private final OutcomeWording outcome;
  private final ReportPhrases wording;
  private final AnsiStyle ink;
  private final StringBuilder out = new StringBuilder();

  private ComparisonText(TransactionComparison comparison, RenderOptions options) {
    this.comparison = comparison;
    this.options = options;
    this.words = new ComparisonPhrases(comparison, options.showPersonal());
    this.outcome = new OutcomeWording(comparison);
    this.wording = new ReportPhrases(comparison.first().tables());
    this.ink = new AnsiStyle(options.colour());
  }

  public static String render(
      FileFacts first, FileFacts second, TransactionComparison comparison, RenderOptions options) {
    return new ComparisonText(comparison, options).render(first, second);
  }

  private String render(FileFacts first, FileFacts second) {
    out.append(ink.strong(outcome.stamp())).append('\n');
    paragraph("  ", outcome.lead());
    paragraph("  ", outcome.next());
    out.append('\n');
    file("  first   ", first, comparison.first());
    file("  second  ", second, comparison.second());
    warning();
    findings("Resolved", comparison.changes().resolved(), comparison.first());
    findings("Still present", comparison.changes().present(), comparison.second());
    findings("New", comparison.changes().added(), comparison.second());
    fingers();
    remarks();
    onlyOnce();
    comparison.pairs().stream().filter(RecordPair::differs).forEach(this::pair);
    ignored();
    out.append('\n');
    words.cautions().forEach(caution -> paragraph("", caution));
    return out.toString();
  }

  private void file(String lead, FileFacts file, FindingsReport report) {
    paragraph(
        lead,
        TextSanitizer.of(file.name())
            + String.format(
                Locale.ROOT,
                ", %s, %s, %s",
                Counted.of(file.bytes(), "byte"),
                Counted.of(report.transaction().records().size(), "record"),
                report.verdict()));
    paragraph(" ".repeat(lead.length()), "SHA-256 " + file.sha256());
  }

  private void warning() {
    outcome
        .personDoubt()
        .ifPresent(
            lines -> {
              out.append('\n').append(ink.strong("Warning")).append('\n');
              lines.forEach(line -> paragraph("  ", line));
            });
  }

  private void fingers() {
    if (comparison.fingers().isEmpty()) {
      return;
    }
    out.append('\n').append(ink.strong("Fingers")).append('\n');
    out.append(String.format(Locale.ROOT, FINGER + "%n", "", "first", "second", "", "send"));
    for (FingerChange change : comparison.fingers()) {
      FingerRow row = FingerRow.of(change, wording);
      String line =
          String.format(
              Locale.ROOT,
              FINGER,
              row.finger(),
              row.first(),
              row.second(),
              row.trend(),
              row.send());
      out.append(line.stripTrailing()).append('\n');
      row.why().forEach(why -> paragraph("      ", why));
    }
    paragraph("  ", "Scores run from 0 to 100.");
  }

  private void remarks() {
    out.append('\n').append(ink.strong("Differences")).append('\n');
    words.references().forEach(line -> paragraph("  ", line));
    words.summary().forEach(line -> paragraph("  ", line));
    paragraph("  ", words.ignored());
  }

  private void onlyOnce() {
    if (comparison.removed().isEmpty() && comparison.added().isEmpty()) {
      return;
    }
    out.append('\n').append(ink.strong("Records in one file only")).append('\n');
    comparison
        .removed()
        .forEach(r -> paragraph("  removed  ", words.record(r, comparison.first())));
    comparison.added().forEach(r -> paragraph("  added    ", words.record(r, comparison.second())));
  }

  private void pair(RecordPair pair) {
    out.append('\n');
    TextLayout.wrap(words.record(pair.first(), comparison.first()), options.width())
        .forEach(line -> out.append(ink.strong(line)).append('\n'));
    words.remarks(pair).forEach(remark -> paragraph("  ", remark));
    pair.differences().stream()
        .filter(difference -> !difference.ignored())
        .forEach(difference -> paragraph("  ", line(difference)));
    pair.level().ifPresent(level -> image(pair, level, pair.image().orElseThrow()));
  }

  private void image(RecordPair pair, ImageLevel level, ImageDifference difference) {
    paragraph("  image: ", ComparisonPhrases.level(pair, level));
    String figures = ComparisonPhrases.words(difference);
    if (!figures.isEmpty()) {
      paragraph("    ", figures);
    }
    prints(pair.fingers().map(FingerComparison::prints).orElse(List.of()));
  }

  /** Fingers beside each other of which the same is said are told in one line. */
  private void prints(List<PrintComparison> prints) {
    int from = 0;
    while (from < prints.size()) {
      int to = from + 1;
      while (to < prints.size() && ComparisonPhrases.alike(prints.get(from), prints.get(to))) {
        to++;
      }
      told(prints.subList(from, to));
      from = to;
    }
  }

  private void told(List<PrintComparison> alike) {
    PrintComparison print = alike.get(0);
    paragraph(
        "    ",
        joined(alike, words::finger)
            + ": "
            + ComparisonPhrases.answer(print)
            + ", similarity "
            + joined(alike, ComparisonPhrases::similarity)
            + (print.answer() == Answer.SAME_FINGER ? "" : "; " + words.reason(print)));
  }

  private static String joined(
      List<PrintComparison> prints, Function<PrintComparison, String> words) {
    return prints.stream().map(words).collect(Collectors.joining(", "));
  }

  private String line(ValueDifference difference) {
    return words.place(difference) + ": " + words.change(difference);
  }

  private void findings(String title, List<Finding> findings, FindingsReport report) {
    if (findings.isEmpty()) {
      return;
    }
    out.append('\n').append(ink.strong(title)).append('\n');
    ObservedText observed = new ObservedText(report, options.showPersonal());
    List<Finding> problems = FindingChanges.problems(findings);
    for (Finding finding : problems) {
      paragraph(
          "  ",
          finding.severity()
              + " "
              + finding.ruleId()
              + " "
              + finding.rule().title()
              + ", "
              + wording.whereabouts(finding.location())
              + ": found "
              + TruncatedText.of(observed.of(finding)));
    }
    String notes = outcome.notes(findings);
    if (!notes.isEmpty()) {
      paragraph("  ", problems.isEmpty() ? notes : "and " + notes);
    }
  }

  /** Lengths follow from the rest and are only counted. */
  private void ignored() {
    List<String> lines = new ArrayList<>();
    int lengths = 0;
    for (RecordPair pair : comparison.pairs()) {
      for (ValueDifference difference : pair.differences()) {
        if (difference.ignored() && ComparisonPhrases.isLength(difference)) {
          lengths++;
        } else if (difference.ignored()) {
          lines.add("Record " + pair.first().ordinal() + ", " + line(difference));
        }
      }
    }
    if (lengths > 0) {
      lines.add(ComparisonPhrases.lengths(lengths));
    }
    if (!lines.isEmpty()) {
      out.append('\n').append(ink.strong("Ignored differences")).append('\n');
      lines.forEach(line -> paragraph("  ", line));
    }
  }

  private void paragraph(String lead, String text) {
    TextLayout.indented(out, lead, text, options.width());
  }
}
