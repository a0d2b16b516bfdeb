package ridgeproof.ledger.health;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryFinding;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.Station;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.spec.rule.Severity;

/** Stations, operators and seasons against each other, on a year of entries with usual measures. */
class StationComparisonsTest {

  private static final KeyedHash HASH = new KeyedHash(new byte[KeyedHash.KEY_BYTES]);
  private static final LocalDate FIRST = LocalDate.of(2025, 3, 1);
  private static final LocalDate CHANGE = LocalDate.of(2025, 8, 18);
  private static final int PEOPLE = 720;
  private static final int STATIONS = 3;
  private static final String NAME = "TIDEWATER LS-1 TW-002";
  private static final double WINTER_DRYNESS = 0.5;

  @TempDir Path folder;

  /** A person of the year, to whom something may happen. */
  private static final class Person {
    final int number;
    final LocalDate day;
    final boolean concerned;
    final Map<PrintMeasure, Double> measures = new EnumMap<>(PrintMeasure.class);
    String encoder = "WSQ, encoder number 0, software number 4100";
    boolean dry;

    Person(int number, Random random) {
      this.number = number;
      this.day = FIRST.plusDays(number / 2);
      this.concerned = number % STATIONS == 1;
      measures.put(PrintMeasure.GROUND, 240 + 2 * random.nextGaussian());
      measures.put(PrintMeasure.CONTRAST, 150 + 12 * random.nextGaussian());
      measures.put(PrintMeasure.RIDGE_PERIOD, 0.48 + 0.03 * random.nextGaussian());
      measures.put(PrintMeasure.WIDTH, 29 + 2 * random.nextGaussian());
      measures.put(PrintMeasure.UNEVENNESS, Math.abs(4 + 2 * random.nextGaussian()));
      measures.put(PrintMeasure.GHOST, Math.abs(0.01 * random.nextGaussian()));
      measures.put(PrintMeasure.COMPRESSION, 12 + random.nextGaussian());
    }

    boolean isConcernedFrom(LocalDate since) {
      return concerned && !day.isBefore(since);
    }

    boolean isWinter() {
      return List.of(Month.DECEMBER, Month.JANUARY, Month.FEBRUARY).contains(day.getMonth());
    }

    void times(PrintMeasure measure, double factor) {
      measures.computeIfPresent(measure, (key, value) -> factor * value);
    }

    Entry entry() {
      return new Entry(
          number + 1,
          Instant.parse("2026-03-01T00:00:00Z"),
          day,
          String.format(Locale.ROOT, "%064x", number),
          Optional.of(HASH.control("PILOT-" + number)),
          Optional.empty(),
          "FIS",
          new Station("TIDEWATER", "LS-1", "TW-00" + (1 + number % STATIONS)),
          Optional.of(HASH.operator("OPERATOR-" + number % 6)),
          Verdict.READY,
          Depth.RIDGES,
          "test",
          "test",
          dry
              ? List.of(
                  new EntryFinding("RP-RDG-004", Severity.ADVICE, OptionalInt.of(2), ""),
                  new EntryFinding("RP-RDG-004", Severity.ADVICE, OptionalInt.of(7), ""))
              : List.of(),
          List.of(
              new EntryPrint(3, 2, true, "", encoder, Map.of(), measures, Optional.empty()),
              new EntryPrint(4, 7, true, "", encoder, Map.of(), measures, Optional.empty())),
          Optional.empty());
    }
  }

  /** What happens to each person of the year. */
  private interface Happening {
    void to(Person person, Random random);
  }

  private StationHealth health(Happening happening) {
    Random random = new Random(20);
    List<Entry> entries = new ArrayList<>();
    for (int number = 0; number < PEOPLE; number++) {
      Person person = new Person(number, random);
      happening.to(person, random);
      entries.add(person.entry());
    }
    try (LedgerStore store =
        LedgerStore.open("jdbc:sqlite:" + folder.resolve("ledger.db"), HASH.verifier())) {
      store.addAll(entries);
      return StationHealth.of(store.queries(), FIRST.plusYears(1));
    }
  }

  private HealthFinding only(StationFault fault, Happening happening) {
    List<HealthFinding> found = health(happening).findings();
    assertEquals(List.of(fault), found.stream().map(HealthFinding::fault).toList());
    return found.get(0);
  }

  private static void assertSince(HealthFinding finding) {
    long days = finding.since().orElseThrow().toEpochDay() - CHANGE.toEpochDay();
    assertTrue(Math.abs(days) <= 7, finding.since() + " instead of " + CHANGE);
  }

  @Test
  void aUsualYearHasNoFinding() {
    assertEquals(List.of(), health((person, random) -> {}).findings());
  }

  @Test
  void anotherSoftwareIsFoundWithItsDate() {
    HealthFinding finding =
        only(
            StationFault.ENCODER,
            (person, random) -> {
              if (person.isConcernedFrom(CHANGE)) {
                person.encoder = person.encoder.replace("4100", "5200");
              }
            });
    assertEquals(NAME, finding.station());
    assertSince(finding);
    assertTrue(finding.observed().contains("software number 5200"), finding.observed());
  }

  @Test
  void aSoftwareThatOnlyOneFileNamesIsNoChange() {
    assertEquals(
        List.of(),
        health(
                (person, random) -> {
                  if (person.number == PEOPLE - 2) {
                    person.encoder = "JPEG2000";
                  }
                })
            .findings());
  }

  @Test
  void strongerCompressionIsFoundWithItsDate() {
    HealthFinding finding =
        only(
            StationFault.COMPRESSION,
            (person, random) -> {
              if (person.isConcernedFrom(CHANGE)) {
                person.times(PrintMeasure.COMPRESSION, 1.4);
              }
            });
    assertEquals(NAME, finding.station());
    assertSince(finding);
  }

  @Test
  void aStationWhoseImagesWereAlwaysTooLargeIsFoundWithoutADate() {
    HealthFinding finding =
        only(
            StationFault.RESOLUTION,
            (person, random) -> {
              if (person.concerned) {
                person.times(PrintMeasure.RIDGE_PERIOD, 1.08);
              }
            });
    assertEquals(NAME, finding.station());
    assertEquals(Optional.empty(), finding.since());
    GroupLevels levels = (GroupLevels) finding.evidence();
    assertEquals(NAME, levels.groups().get(0).key());
    assertEquals(List.of(240, 240, 240), levels.groups().stream().map(g -> g.people()).toList());
    assertEquals(1.08, middle(levels, 0) / middle(levels, 1), 0.02);
    assertEquals(1, middle(levels, 2) / middle(levels, 1), 0.02);
    GroupLevels.Group own = levels.groups().get(0);
    // Of a normal distribution, 5 % lie above 1.645 and 25 % above 0.674 standard deviations.
    double deviation = 1.08 * 0.03;
    assertEquals(1.645 * deviation, own.high() - own.middle(), 0.4 * deviation);
    assertEquals(0.674 * deviation, own.middle() - own.quarter(), 0.3 * deviation);
  }

  private static double middle(GroupLevels levels, int group) {
    return levels.groups().get(group).middle();
  }

  @Test
  void anOperatorWhoRollsTooNarrowlyIsFoundByHash() {
    HealthFinding finding =
        only(
            StationFault.NARROW_ROLLS,
            (person, random) -> {
              if (person.number % 6 == 4) {
                person.times(PrintMeasure.WIDTH, 0.75);
              }
            });
    assertEquals(Optional.of(HASH.operator("OPERATOR-4")), finding.operator());
    assertEquals("", finding.station());
    GroupLevels levels = (GroupLevels) finding.evidence();
    assertEquals(HASH.operator("OPERATOR-4"), levels.groups().get(0).key());
    assertEquals(6, levels.groups().size());
    for (int other = 1; other < 6; other++) {
      assertEquals(0.75, middle(levels, 0) / middle(levels, other), 0.03);
    }
  }

  @Test
  void moreDryPrintsThanElsewhereInTheSameSeasonAreFoundWithTheSeason() {
    HealthFinding finding =
        only(
            StationFault.DRY_PRINTS,
            (person, random) ->
                person.dry =
                    person.isWinter()
                        && random.nextDouble() < (person.concerned ? WINTER_DRYNESS : 0.05));
    assertEquals(NAME, finding.station());
    assertTrue(finding.observed().startsWith("2026 Dec to Feb: dry prints"), finding.observed());
    // Two people a day from December 1 to February 23, in turn at three stations.
    SeasonShares shares = (SeasonShares) finding.evidence();
    assertEquals(57, shares.own().people());
    assertEquals(113, shares.others().people());
    assertTrue(shares.own().dry() > 20 && shares.others().dry() < 15, shares.toString());
  }

  @Test
  void aDryWinterIsNoFaultOfAStation() {
    StationHealth health =
        health(
            (person, random) ->
                person.dry = person.isWinter() && random.nextDouble() < WINTER_DRYNESS);
    assertEquals(List.of(), health.findings());
    DrySeason winter =
        health.seasons().stream()
            .filter(season -> season.station().equals(NAME))
            .filter(season -> season.season().equals("2026 Dec to Feb"))
            .findFirst()
            .orElseThrow();
    assertTrue(winter.dry() > 15 && winter.dry() < winter.people(), "" + winter);
  }

  @Test
  void paleWinterPrintsAtAllStationsAreNoFaultOfOne() {
    assertEquals(
        List.of(),
        health(
                (person, random) -> {
                  if (person.isWinter()) {
                    person.times(PrintMeasure.CONTRAST, 0.7);
                    person.times(PrintMeasure.GROUND, 0.97);
                  }
                })
            .findings());
  }
}
