package ridgeproof.ledger.store;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqliteLedgerTest extends LedgerSuite {

  @TempDir Path folder;
  private int count;

  @Override
  String newAddress() {
    count++;
    return "jdbc:sqlite:" + folder.resolve("ledger-" + count + ".db");
  }
}
