package ridgeproof.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.ledger.store.LedgerError;
import ridgeproof.ledger.store.LedgerStore;

/** The ledger that a command reads. */
final class LedgerInput {

  @Parameters(
      index = "0",
      paramLabel = "LEDGER",
      description = "the file of the ledger, or its jdbc:postgresql: address")
  String ledger;

  @Option(
      names = "--ledger-key",
      paramLabel = "FILE",
      description =
          "the key file (default: beside the ledger, with .key added to its name; required for an"
              + " address)")
  Path key;

  /** Reading or changing a ledger. */
  interface Work<T> {
    T with(LedgerStore store);
  }

  LedgerPlace place() {
    return LedgerPlace.of(ledger, key);
  }

  <T> T use(Work<T> work) {
    try (LedgerStore store = place().openExisting()) {
      return work.with(store);
    } catch (LedgerError e) {
      throw CommandFailure.inputOutput(e.getMessage());
    }
  }
}
