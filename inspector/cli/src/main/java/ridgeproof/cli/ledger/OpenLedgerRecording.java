package ridgeproof.cli.ledger;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.Version;
import ridgeproof.examination.FindingsReport;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.bookkeeping.Bookkeeper;
import ridgeproof.ledger.store.LedgerError;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;

/** Records examinations in a ledger that is opened while the first file is examined. */
final class OpenLedgerRecording implements LedgerRecording {

  private record Opened(LedgerStore store, Bookkeeper bookkeeper) {}

  private final CompletableFuture<Opened> opening;
  private boolean told;

  private OpenLedgerRecording(CompletableFuture<Opened> opening) {
    this.opening = opening;
  }

  /** A database driver takes its time to start; the examination need not wait for it. */
  static OpenLedgerRecording begin(
      LedgerPlace place,
      SpecTables tables,
      boolean clearControl,
      List<FieldNumber> operatorFields) {
    return new OpenLedgerRecording(
        CompletableFuture.supplyAsync(
            () -> {
              KeyedHash hash = place.hashToRecord();
              Bookkeeper bookkeeper =
                  new Bookkeeper(hash, tables, Version.number(), clearControl, operatorFields);
              return new Opened(place.open(hash), bookkeeper);
            }));
  }

  private Opened opened() {
    try {
      return opening.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof CommandFailure failure) {
        throw failure;
      }
      if (e.getCause() instanceof LedgerError error) {
        throw CommandFailure.inputOutput(error.getMessage());
      }
      throw e;
    }
  }

  @Override
  public void add(InputFile file, FindingsReport report) {
    Opened ledger;
    try {
      ledger = opened();
    } catch (CommandFailure failure) {
      told = true;
      throw failure;
    }
    Instant now = Instant.now(Clock.systemUTC());
    try {
      ledger.store().add(ledger.bookkeeper().entry(file.facts().sha256(), report, now));
    } catch (LedgerError e) {
      throw CommandFailure.inputOutput(e.getMessage());
    }
  }

  @Override
  public void close() {
    if (!told) {
      opened().store().close();
    }
  }
}
