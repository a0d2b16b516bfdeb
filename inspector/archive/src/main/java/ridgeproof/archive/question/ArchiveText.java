package ridgeproof.archive.question;

import java.util.List;
import org.apache.spark.sql.Row;
import ridgeproof.ledger.health.HealthFinding;
import ridgeproof.ledger.report.LedgerPage;
import ridgeproof.ledger.report.LedgerPage.FaultNote;
import ridgeproof.ledger.report.LedgerReport;
import ridgeproof.report.TextSanitizer;

/** The answers as text, each a table with a tab between columns. */
public final class ArchiveText {

  private ArchiveText() {}

  /** Writes all answers. */
  public static String render(ArchiveAnswers answers, LedgerReport.Names names) {
    StringBuilder text = new StringBuilder();
    answers
        .answers()
        .forEach(
            (question, rows) -> {
              text.append(question.title()).append('\n');
              append(rows, text);
              text.append('\n');
            });
    text.append("Health of the stations\n");
    text.append("  ").append(LedgerPage.healthLead(answers.health())).append('\n');
    for (HealthFinding finding : answers.health().findings()) {
      FaultNote note = LedgerPage.fault(finding, names);
      for (String line : List.of(note.title(), note.observed(), note.also(), note.remedy())) {
        text.append(line.isEmpty() ? "" : "  " + line + "\n");
      }
    }
    return text.toString();
  }

  private static void append(List<Row> rows, StringBuilder text) {
    if (rows.isEmpty()) {
      text.append("  none\n");
      return;
    }
    text.append("  ").append(String.join("\t", rows.get(0).schema().fieldNames())).append('\n');
    for (Row row : rows) {
      text.append("  ");
      for (int i = 0; i < row.size(); i++) {
        text.append(i == 0 ? "" : "\t").append(TextSanitizer.of(String.valueOf(row.get(i))));
      }
      text.append('\n');
    }
  }
}
