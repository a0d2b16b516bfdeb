package ridgeproof.cli.ledger;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The ledger that a command reads. */
final class LedgerInput {

  @Parameters(
      index = "0",
      paramLabel = "LEDGER",
      description = "the file of the ledger, or its jdbc:postgresql: address")
  String ledger;

  @Mixin LedgerKeyOption key;

  LedgerPlace place() {
    return key.of(ledger);
  }
}
