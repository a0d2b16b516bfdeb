package ridgeproof.cli.ledger;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.health.StationHealth;

/** A ledger whose stations a command looks at; nothing is recorded in it. */
public final class LedgerToRead {

  @Option(
      names = "--ledger",
      paramLabel = "FILE|ADDRESS",
      defaultValue = "${env:RIDGEPROOF_LEDGER}",
      description = {
        "also judge the stations by this ledger before a shift; nothing is recorded in it",
        "(default: the environment variable RIDGEPROOF_LEDGER, else no ledger)"
      })
  String ledger;

  @Mixin LedgerKeyOption key;

  /**
   * What gives the health of the stations of the ledger, and nothing where it cannot be read then;
   * empty where no ledger was named.
   *
   * @throws ridgeproof.cli.CommandFailure if there is no such ledger or its key cannot be read
   */
  public Optional<Supplier<Optional<StationHealth>>> health() {
    if (ledger == null || ledger.isBlank()) {
      return Optional.empty();
    }
    LedgerPlace place = key.of(ledger);
    KeyedHash hash = place.hash();
    return Optional.of(
        () -> {
          LocalDate last = LocalDate.now(Clock.systemUTC()).plusDays(1);
          return LedgerWork.health(place, hash, last);
        });
  }
}
