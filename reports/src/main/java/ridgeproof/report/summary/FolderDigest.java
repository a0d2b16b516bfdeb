package ridgeproof.report.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.Verdict;
import ridgeproof.finding.Finding;
import ridgeproof.report.FileAccount;
import ridgeproof.report.FileFacts;
import ridgeproof.report.TextSanitizer;
import ridgeproof.spec.rule.Severity;

/** What the text reports on several files come to, in a few lines at their end. */
public final class FolderDigest {

  private static final int MAX_RULES = 5;
  private static final int MAX_FILES = 10;

  /** A file that is not READY. */
  private record Row(String name, Verdict verdict, Severity worst, long count, String first) {}

  private final Tally tally = new Tally();
  private final List<Row> rows = new ArrayList<>();

  /** Counts a file; the report is not kept. */
  public void add(FileFacts file, FindingsReport report) {
    tally.add(report);
    if (report.verdict() != Verdict.READY) {
      report.findings().stream()
          .min(Comparator.comparing(Finding::severity))
          .ifPresent(worst -> rows.add(row(file, report, worst)));
    }
  }

  private static Row row(FileFacts file, FindingsReport report, Finding worst) {
    long count = report.findings().stream().filter(f -> f.severity() == worst.severity()).count();
    return new Row(
        TextSanitizer.of(file.name()),
        report.verdict(),
        worst.severity(),
        count,
        worst.ruleId() + " " + worst.rule().title());
  }

  /** The summary, worst files first. */
  public String text(FileAccount account) {
    StringBuilder out = new StringBuilder("SUMMARY\n\n").append(account.text());
    out.append(
        Stream.of(Verdict.values())
            .filter(verdict -> tally.files(verdict) > 0)
            .map(verdict -> tally.files(verdict) + " " + verdict)
            .collect(Collectors.joining(", ", "Verdicts: ", ".\n")));
    List<Tally.RuleCount> rules = tally.commonest();
    if (!rules.isEmpty()) {
      out.append("\nMost frequent findings\n");
      rules.stream()
          .limit(MAX_RULES)
          .forEach(
              rule ->
                  out.append(
                      String.format(
                          Locale.ROOT,
                          "  %5d %-5s  %s %s%n",
                          rule.files(),
                          rule.files() == 1 ? "file" : "files",
                          rule.rule().id(),
                          rule.rule().title())));
    }
    if (!rows.isEmpty()) {
      out.append("\nWorst files\n");
      rows.stream()
          .sorted(
              Comparator.comparing(Row::verdict)
                  .reversed()
                  .thenComparing(Row::worst)
                  .thenComparing(row -> -row.count())
                  .thenComparing(Row::name))
          .limit(MAX_FILES)
          .forEach(
              row ->
                  out.append(
                      String.format(
                          Locale.ROOT,
                          "  %-10s  %s: %d %s, first %s%n",
                          row.verdict(),
                          row.name(),
                          row.count(),
                          row.worst(),
                          row.first())));
      if (rows.size() > MAX_FILES) {
        out.append("  and ").append(rows.size() - MAX_FILES).append(" more\n");
      }
    }
    return out.toString();
  }
}
