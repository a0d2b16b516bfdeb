package ridgeproof.cli.reporting;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.ReportTarget;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.FileAccount;
import ridgeproof.report.NotExamined;

/** All reports in one text. */
public final class JoinedReports implements ReportSink {

  /** Makes the form that the reports are joined in. */
  public interface Form {
    ReportWriter on(ReportTarget target) throws IOException;
  }

  private final ReportTarget target;
  private final ReportWriter assembly;
  private final List<NotExamined> others = new ArrayList<>();
  private int examined;

  public JoinedReports(ReportTarget target, Form form) {
    this.target = target;
    try {
      this.assembly = form.on(target);
    } catch (IOException e) {
      throw target.failure(e);
    }
  }

  @Override
  public void add(InputFile file, FindingsReport report) {
    examined++;
    try {
      assembly.add(file.facts(), report);
      target.flush();
    } catch (IOException e) {
      throw target.failure(e);
    }
  }

  @Override
  public void add(NotExamined file) {
    others.add(file);
  }

  /** Ends the text; of no report there is none. */
  @Override
  public void end() {
    if (examined == 0) {
      return;
    }
    try {
      assembly.end(new FileAccount(examined, others));
      target.commit();
    } catch (IOException e) {
      throw target.failure(e);
    }
  }

  @Override
  public void close() {
    target.close();
  }
}
