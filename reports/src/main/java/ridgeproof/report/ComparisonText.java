package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.comparison.FingerComparison;
import ridgeproof.examination.comparison.ImageDifference;
import ridgeproof.examination.comparison.ImageLevel;
import ridgeproof.examination.comparison.PrintComparison;
import ridgeproof.examination.comparison.PrintComparison.Answer;
import ridgeproof.examination.comparison.RecordPair;
import ridgeproof.examination.comparison.TransactionComparison;
import ridgeproof.examination.comparison.ValueDifference;
import ridgeproof.finding.Finding;

/** Two transactions compared, for a terminal. */
public final class ComparisonText {

  private final TransactionComparison comparison;
  private final RenderOptions options;
  private final ComparisonWording words;
  private final Wording wording;
  private final Ink ink;
  private final StringBuilder out = new StringBuilder();

  private ComparisonText(TransactionComparison comparison, RenderOptions options) {
    this.comparison = comparison;
    this.options = options;
    this.words = new ComparisonWording(comparison, options.showPersonal());
    this.wording = new Wording(comparison.first().tables());
    this.ink = new Ink(options.colour());
  }

  public static String render(
      FileFacts first, FileFacts second, TransactionComparison comparison, RenderOptions options) {
    return new ComparisonText(comparison, options).render(first, second);
  }

  private String render(FileFacts first, FileFacts second) {
    out.append(ink.strong(comparison.same() ? "SAME" : "DIFFERENT")).append("\n\n");
    file("  first   ", first, comparison.first());
    file("  second  ", second, comparison.second());
    remarks();
    onlyOnce();
    comparison.pairs().stream().filter(RecordPair::differs).forEach(this::pair);
    out.append('\n');
    paragraph("", "Findings: " + words.findings());
    findings("Mended or gone in the second", comparison.lost(), comparison.first());
    findings("New in the second", comparison.gained(), comparison.second());
    ignored();
    out.append('\n');
    words.cautions().forEach(caution -> paragraph("", caution));
    return out.toString();
  }

  private void file(String lead, FileFacts file, FindingsReport report) {
    paragraph(
        lead,
        SafeText.of(file.name())
            + String.format(
                Locale.ROOT,
                ", %,d bytes, %d records, %s",
                file.bytes(),
                report.transaction().records().size(),
                report.verdict()));
    paragraph(" ".repeat(lead.length()), "SHA-256 " + file.sha256());
  }

  private void remarks() {
    if (comparison.sameBytes()) {
      paragraph("  ", "The files are the same byte for byte.");
    } else if (comparison.same()) {
      paragraph("  ", "The bytes of the files differ in nothing that counts.");
    }
    words.references().forEach(line -> paragraph("  ", line));
    paragraph("  ", words.ignored());
  }

  private void onlyOnce() {
    if (comparison.removed().isEmpty() && comparison.added().isEmpty()) {
      return;
    }
    out.append('\n').append(ink.strong("Records that only one of them has")).append('\n');
    comparison
        .removed()
        .forEach(r -> paragraph("  removed  ", words.record(r, comparison.first())));
    comparison.added().forEach(r -> paragraph("  added    ", words.record(r, comparison.second())));
  }

  private void pair(RecordPair pair) {
    out.append('\n');
    TextLayout.wrap(words.record(pair.first(), comparison.first()), options.width())
        .forEach(line -> out.append(ink.strong(line)).append('\n'));
    if (pair.moved()) {
      paragraph("  ", "moved: record " + pair.second().ordinal() + " of the second");
    }
    pair.differences().stream()
        .filter(difference -> !difference.ignored())
        .forEach(difference -> paragraph("  ", line(difference)));
    if (pair.otherUnread()) {
      paragraph("  ", ComparisonWording.OTHER_UNREAD);
    }
    pair.level().ifPresent(level -> image(pair, level, pair.image().orElseThrow()));
  }

  private void image(RecordPair pair, ImageLevel level, ImageDifference difference) {
    paragraph("  image: ", ComparisonWording.level(pair, level));
    String figures = ComparisonWording.words(difference);
    if (!figures.isEmpty()) {
      paragraph("    ", figures);
    }
    pair.fingers().map(FingerComparison::prints).orElse(List.of()).forEach(this::print);
  }

  private void print(PrintComparison print) {
    paragraph(
        "    ",
        words.finger(print)
            + ": "
            + ComparisonWording.answer(print)
            + ", similarity "
            + ComparisonWording.similarity(print)
            + (print.answer() == Answer.SAME_FINGER ? "" : "; " + words.reason(print)));
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
    for (Finding finding : findings) {
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
              + observed.of(finding));
    }
  }

  private void ignored() {
    List<String> lines = new ArrayList<>();
    for (RecordPair pair : comparison.pairs()) {
      pair.differences().stream()
          .filter(ValueDifference::ignored)
          .forEach(d -> lines.add("record " + pair.first().ordinal() + ", " + line(d)));
    }
    if (!lines.isEmpty()) {
      out.append('\n').append(ink.strong("Noted, not counted")).append('\n');
      lines.forEach(line -> paragraph("  ", line));
    }
  }

  private void paragraph(String lead, String text) {
    TextLayout.indented(out, lead, text, options.width());
  }
}
