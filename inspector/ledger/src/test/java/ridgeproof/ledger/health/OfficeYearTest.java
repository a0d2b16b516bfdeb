package ridgeproof.ledger.health;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.corpus.year.OfficeYear;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.bookkeeping.Bookkeeper;
import ridgeproof.ledger.report.LedgerReport;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.record.ByteSource;

/** A small year; {@code docs/ledger.md} has the results of whole years. */
@Tag("slow")
class OfficeYearTest {

  private static final SpecTables TABLES = SpecTables.open();
  private static final KeyedHash HASH = new KeyedHash(new byte[KeyedHash.KEY_BYTES]);
  private static final LocalDate END = LocalDate.of(2026, 1, 15);

  @TempDir Path folder;

  private LedgerReport report(OfficeYear year) throws IOException, InterruptedException {
    Examiner examiner = new Examiner(TABLES, ParseLimits.standard());
    ExaminationOptions options =
        ExaminationOptions.standard().withDepth(Depth.IMAGES).withPlaten(true);
    Bookkeeper bookkeeper =
        new Bookkeeper(HASH, TABLES, "test", false, List.of(FieldNumber.parse("2.3001")));
    try (LedgerStore store =
        LedgerStore.open("jdbc:sqlite:" + folder.resolve("ledger.db"), HASH.verifier())) {
      int[] number = new int[1];
      year.forEach(
          (name, bytes) ->
              store.add(
                  bookkeeper.entry(
                      HexFormat.of().toHexDigits(++number[0]),
                      examiner.examine(ByteSource.of(bytes), options),
                      Instant.parse("2026-01-15T00:00:00Z"))),
          2);
      Map<String, String> names = new HashMap<>();
      OfficeYear.operators().forEach(name -> names.put(HASH.operator(name), name));
      return LedgerReport.of(store, TABLES, names, END);
    }
  }

  private static HealthFinding only(LedgerReport report, StationFault fault) {
    List<HealthFinding> found =
        report.health().findings().stream().filter(f -> f.fault() == fault).toList();
    assertEquals(1, found.size(), fault + ": " + found);
    return found.get(0);
  }

  private static void assertSince(LocalDate expected, HealthFinding finding) {
    long days = finding.since().orElseThrow().toEpochDay() - expected.toEpochDay();
    // A station has a visitor every third day here, so that the first day can be seen late.
    assertTrue(Math.abs(days) <= 14, finding.since() + " instead of " + expected);
  }

  @Test
  void theThreeStoriesOfTheYearAreFoundAndNoFourth() throws Exception {
    LedgerReport report = report(new OfficeYear(1, 240, true, true));
    Set<StationFault> faults =
        report.health().findings().stream().map(HealthFinding::fault).collect(Collectors.toSet());
    assertEquals(
        Set.of(StationFault.SPOT, StationFault.ENCODER, StationFault.NARROW_ROLLS), faults);
    HealthFinding spot = only(report, StationFault.SPOT);
    assertEquals("TIDEWATER LS-1 TW-002", spot.station());
    assertSince(LocalDate.of(2025, 3, 11), spot);
    HealthFinding encoder = only(report, StationFault.ENCODER);
    assertEquals("TIDEWATER LS-1 TW-003", encoder.station());
    assertSince(LocalDate.of(2025, 6, 17), encoder);
    HealthFinding narrow = only(report, StationFault.NARROW_ROLLS);
    assertEquals("OPERATOR-4", report.names().operator(narrow.operator().orElseThrow()));
    assertEquals(240, report.answered());
    assertEquals(0, report.unmatched());
  }
}
