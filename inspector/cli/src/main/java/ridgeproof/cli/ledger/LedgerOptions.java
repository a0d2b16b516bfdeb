package ridgeproof.cli.ledger;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;

/** Whether and where examinations are recorded. */
public final class LedgerOptions {

  @Option(
      names = "--ledger",
      paramLabel = "FILE|ADDRESS",
      defaultValue = "${env:RIDGEPROOF_LEDGER}",
      description =
          "record each examination in this ledger: a file, which is made if need be, or "
              + "the jdbc:postgresql: address of a database; no biographic data and no image is "
              + "kept (default: the environment variable RIDGEPROOF_LEDGER, else no ledger)")
  String ledger;

  @Option(
      names = "--ledger-key",
      paramLabel = "FILE",
      description =
          "the secret by which control numbers and operators are hashed; made if need be "
              + "(default: beside the ledger, with .key added to its name; required for an "
              + "address)")
  Path key;

  @Option(
      names = "--ledger-control-numbers",
      description = "keep control numbers in the ledger in clear, beside their hash")
  boolean controlNumbers;

  /** Whether a ledger was named. */
  public boolean isWanted() {
    return ledger != null && !ledger.isBlank();
  }

  /** What records examinations; it begins to open the ledger now. */
  public LedgerRecording recording(SpecTables tables, List<FieldNumber> operatorFields) {
    if (!isWanted()) {
      return LedgerRecording.NONE;
    }
    return OpenLedgerRecording.begin(
        LedgerPlace.of(ledger, key), tables, controlNumbers, operatorFields);
  }
}
