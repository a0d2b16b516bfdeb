package ridgeproof.desk;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.imagery.platen.CellBox;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.Station;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.ledger.store.LedgerStore;

/**
 * A ledger of two stations, one of which has a spot on its platen since June; the images of the
 * other are too large.
 */
final class LedgerYear {

  private static final KeyedHash HASH = new KeyedHash(new byte[KeyedHash.KEY_BYTES]);
  private static final LocalDate FIRST = LocalDate.of(2025, 1, 6);
  private static final LocalDate SPOT = LocalDate.of(2025, 6, 2);
  private static final int PEOPLE = 300;

  private LedgerYear() {}

  /** The ridges of people lie 0.45 to 0.51 mm apart. */
  private static EntryPrint print(int number, PlatenNote platen) {
    double apart = (0.45 + number % 7 * 0.01) * (number % 2 == 0 ? 1.08 : 1);
    Map<PrintMeasure, Double> measures = Map.of(PrintMeasure.RIDGE_PERIOD, apart);
    return new EntryPrint(3, 2, true, "", "", Map.of(), measures, Optional.of(platen));
  }

  static StationHealth withTwoFaults(Path folder) {
    List<Entry> entries = new ArrayList<>();
    for (int number = 0; number < PEOPLE; number++) {
      LocalDate day = FIRST.plusDays(number);
      boolean spot = number % 2 == 1 && !day.isBefore(SPOT);
      PlatenNote platen =
          new PlatenNote(
              40,
              38,
              List.of(new CellBox(8, 6, 30, 34)),
              spot ? List.of(836, 837) : List.of(number % 200),
              List.of(),
              List.of());
      entries.add(
          new Entry(
              number + 1,
              Instant.parse("2026-01-10T00:00:00Z"),
              day,
              String.format(Locale.ROOT, "%064x", number),
              Optional.of(HASH.control("PILOT-" + number)),
              Optional.empty(),
              "FIS",
              new Station("TIDEWATER", "LS-1", "TW-00" + (1 + number % 2)),
              Optional.empty(),
              Verdict.READY,
              Depth.IMAGES,
              "test",
              "test",
              List.of(),
              List.of(print(number, platen)),
              Optional.empty()));
    }
    try (LedgerStore store =
        LedgerStore.open("jdbc:sqlite:" + folder.resolve("ledger.db"), HASH.verifier())) {
      store.addAll(entries);
      return StationHealth.of(store.queries(), FIRST.plusYears(1));
    }
  }
}
