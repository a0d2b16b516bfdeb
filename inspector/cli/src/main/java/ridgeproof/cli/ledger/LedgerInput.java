package ridgeproof.cli.ledger;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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

  LedgerPlace place() {
    return LedgerPlace.of(ledger, key);
  }
}
