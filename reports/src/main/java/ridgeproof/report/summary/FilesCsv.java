package ridgeproof.report.summary;

import java.io.IOException;
import java.io.Writer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.finding.Finding;
import ridgeproof.report.CsvRow;
import ridgeproof.report.FileFacts;
import ridgeproof.report.NotExamined;
import ridgeproof.spec.rule.Severity;

/** One row for each file (RFC 4180, with line feeds), written when it is added. */
public final class FilesCsv {

  private static final List<String> COLUMNS =
      List.of(
          "file",
          "sha256",
          "bytes",
          "verdict",
          "blocking",
          "likely",
          "advice",
          "note",
          "captured",
          "transaction_type",
          "records",
          "images",
          "worst_rule",
          "worst_title",
          "worst_remedy");

  private final Writer out;
  private boolean begun;

  /**
   * @param out left open
   */
  public FilesCsv(Writer out) {
    this.out = out;
  }

  /** Appends a file. */
  public void add(FileFacts file, FindingsReport report) throws IOException {
    List<String> cells = new ArrayList<>();
    cells.addAll(
        List.of(file.name(), file.sha256(), String.valueOf(file.bytes()), report.verdict().name()));
    for (Severity severity : Severity.values()) {
      cells.add(
          String.valueOf(report.findings().stream().filter(f -> f.severity() == severity).count()));
    }
    cells.add(CaptureDay.of(report).map(LocalDate::toString).orElse(""));
    cells.add(report.transaction().typeOfTransaction().orElse(""));
    cells.add(String.valueOf(report.transaction().records().size()));
    cells.add(String.valueOf(report.images().size()));
    Optional<Finding> worst =
        report.findings().stream()
            .filter(finding -> finding.severity() != Severity.NOTE)
            .min(Comparator.comparing(Finding::severity));
    cells.add(worst.map(Finding::ruleId).orElse(""));
    cells.add(worst.map(finding -> finding.rule().title()).orElse(""));
    cells.add(worst.map(Finding::remedy).orElse(""));
    row(cells);
  }

  /** Appends files that have no report. */
  public void add(List<NotExamined> others) throws IOException {
    for (NotExamined file : others) {
      List<String> cells = new ArrayList<>(List.of(file.name(), "", "", "NOT EXAMINED"));
      Stream.generate(() -> "").limit(COLUMNS.size() - cells.size() - 1).forEach(cells::add);
      cells.set(COLUMNS.indexOf("worst_title"), file.reason());
      cells.add("");
      row(cells);
    }
  }

  private void row(List<String> cells) throws IOException {
    if (!begun) {
      begun = true;
      out.write(CsvRow.joined(COLUMNS) + "\n");
    }
    out.write(CsvRow.joined(cells) + "\n");
  }
}
