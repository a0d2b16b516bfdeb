package ridgeproof.cli.reporting;

import java.io.IOException;
import java.io.Writer;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.FileAccount;
import ridgeproof.report.FileFacts;

/** A sample: a line with name and verdict for each file. */
final class SampleForm {

  private final Writer out;

  SampleForm(Writer out) {
    this.out = out;
  }

  void add(FileFacts file, FindingsReport report) throws IOException {
    out.write(file.name() + " is " + report.verdict() + "\n");
  }

  void end(FileAccount account) throws IOException {
    out.write(account.examined() + " in all\n");
  }
}
