package ridgeproof.cli.ledger;

import java.io.Closeable;
import ridgeproof.cli.io.InputFile;
import ridgeproof.examination.FindingsReport;

/** Records examinations. */
public interface LedgerRecording extends Closeable {

  /** Where no ledger is wanted, none of it is loaded. */
  LedgerRecording NONE =
      new LedgerRecording() {
        @Override
        public void add(InputFile file, FindingsReport report) {}

        @Override
        public void close() {}
      };

  /** Records one examination; it is on the disk when this returns. */
  void add(InputFile file, FindingsReport report);

  @Override
  void close();
}
