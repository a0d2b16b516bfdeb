package ridgeproof.cli.ledger;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The key of a ledger that a command only reads. */
final class LedgerKeyOption {

  @Option(
      names = "--ledger-key",
      paramLabel = "FILE",
      description =
          "the key file (default: beside the ledger, with .key added to its name; required for an"
              + " address)")
  Path key;

  /** The ledger of this name, with the key. */
  LedgerPlace of(String ledger) {
    return LedgerPlace.of(ledger, key);
  }
}
