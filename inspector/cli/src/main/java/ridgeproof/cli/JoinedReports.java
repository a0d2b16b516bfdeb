package ridgeproof.cli;

import java.io.IOException;
import java.nio.file.Path;
import ridgeproof.examination.FindingsReport;

/** All reports in one text. */
final class JoinedReports implements ReportSink {

  /** Makes the form that the reports are joined in. */
  interface Form {
    ReportAssembly on(ReportTarget target) throws IOException;
  }

  private final ReportTarget target;
  private final ReportAssembly assembly;
  private boolean anything;

  JoinedReports(ReportTarget target, Form form) {
    this.target = target;
    try {
      this.assembly = form.on(target);
    } catch (IOException e) {
      throw target.failure(e);
    }
  }

  @Override
  public void add(InputFile file, FindingsReport report) {
    anything = true;
    try {
      assembly.add(file.facts(), report);
      target.flush();
    } catch (IOException e) {
      throw target.failure(e);
    }
  }

  @Override
  public void unopened(Path path) {
    // Standard error tells it; a report is of a file that was read.
  }

  /** Ends the text; of no report there is none. */
  @Override
  public void end() {
    if (!anything) {
      return;
    }
    try {
      assembly.end();
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
