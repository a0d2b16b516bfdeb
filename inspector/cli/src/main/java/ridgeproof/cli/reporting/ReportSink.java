package ridgeproof.cli.reporting;

import java.io.Closeable;
import ridgeproof.cli.io.InputFile;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.NotExamined;

/**
 * Takes the reports on files in the order in which the files were named, writes each at once and
 * keeps none.
 */
public interface ReportSink extends Closeable {

  void add(InputFile file, FindingsReport report);

  /** A file without a report. */
  void add(NotExamined file);

  /** Ends what was written; without this call nothing half-written stays. */
  void end();

  @Override
  void close();
}
