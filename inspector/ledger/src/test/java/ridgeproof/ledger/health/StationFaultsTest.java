package ridgeproof.ledger.health;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ridgeproof.corpus.year.OfficeYear;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.bookkeeping.Bookkeeper;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/**
 * From images to findings: a year without any story, and the same year in which one station has one
 * fault from a day on.
 */
@Tag("slow")
class StationFaultsTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final KeyedHash HASH = new KeyedHash(new byte[KeyedHash.KEY_BYTES]);
  private static final Bookkeeper BOOKKEEPER =
      new Bookkeeper(HASH, TABLES, "test", false, List.of());
  private static final Examiner EXAMINER = new Examiner(TABLES, ParseLimits.standard());
  private static final ExaminationOptions OPTIONS =
      ExaminationOptions.standard().withDepth(Depth.IMAGES).withPlaten(true);
  private static final Instant NOW = Instant.parse("2026-01-15T00:00:00Z");
  private static final LocalDate SINCE = LocalDate.of(2025, 4, 15);
  private static final String SERIAL = "TW-002";

  private static final Map<String, byte[]> CONCERNED = new TreeMap<>();
  private static final Map<String, Entry> CLEAN = new TreeMap<>();

  @TempDir Path folder;

  @BeforeAll
  static void examineTheCleanYear() throws IOException, InterruptedException {
    new OfficeYear(5, 200, false, false)
        .forEach(
            (name, bytes) -> {
              if (!name.contains("response")) {
                CLEAN.put(name, entry(name, bytes));
                if (AlteredStation.concerns(bytes, SERIAL, SINCE)) {
                  CONCERNED.put(name, bytes);
                }
              }
            },
            2);
  }

  private static Entry entry(String name, byte[] bytes) {
    return BOOKKEEPER.entry(
        HexFormat.of().toHexDigits(name.hashCode()),
        EXAMINER.examine(ByteSource.of(bytes), OPTIONS),
        NOW);
  }

  private List<HealthFinding> findings(Map<String, Entry> entries) {
    try (LedgerStore store =
        LedgerStore.open("jdbc:sqlite:" + folder.resolve("ledger.db"), HASH.verifier())) {
      store.addAll(new ArrayList<>(entries.values()));
      return StationHealth.of(store.queries(), LocalDate.of(2026, 1, 15)).findings();
    }
  }

  @Test
  void aYearWithoutAFaultHasNoFinding() {
    assertTrue(CONCERNED.size() >= 30, CONCERNED.size() + " files would be altered");
    assertEquals(List.of(), findings(CLEAN));
  }

  @ParameterizedTest
  @EnumSource
  void aFaultOfOneStationIsFoundWithItsStationAndDateAndNothingElse(AlteredStation altered) {
    Map<String, Entry> entries = new TreeMap<>(CLEAN);
    CONCERNED.forEach((name, bytes) -> entries.put(name, entry(name, altered.file(bytes))));
    List<HealthFinding> found = findings(entries);
    assertEquals(
        List.of(altered.fault()),
        found.stream().map(HealthFinding::fault).toList(),
        () -> "" + found);
    HealthFinding finding = found.get(0);
    assertEquals("TIDEWATER LS-1 TW-002", finding.station());
    // This station has a visitor every five days.
    long days = finding.since().orElseThrow().toEpochDay() - SINCE.toEpochDay();
    assertTrue(Math.abs(days) <= 14, finding.since() + " instead of " + SINCE);
    boolean onThePlaten =
        finding.fault() == StationFault.SPOT || finding.fault() == StationFault.DEAD_LINE;
    assertEquals(onThePlaten ? PlatenMap.class : LevelSeries.class, finding.evidence().getClass());
    assertTrue(finding.probability() <= StationHealth.ERROR_RATE, "" + finding.probability());
  }
}
