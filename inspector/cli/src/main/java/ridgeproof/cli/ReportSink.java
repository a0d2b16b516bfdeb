package ridgeproof.cli;

import java.io.Closeable;
import java.nio.file.Path;
import ridgeproof.examination.FindingsReport;

/**
 * Takes the reports on files in the order in which the files were named, writes each at once and
 * keeps none.
 */
interface ReportSink extends Closeable {

  void add(InputFile file, FindingsReport report);

  /** A file that could not be opened. */
  void unopened(Path path);

  /** Ends what was written; without this call nothing half-written stays. */
  void end();

  @Override
  void close();
}
