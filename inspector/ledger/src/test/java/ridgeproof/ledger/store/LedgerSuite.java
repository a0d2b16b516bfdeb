package ridgeproof.ledger.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.ResponseOutcome;
import ridgeproof.ledger.report.LedgerReport;
import ridgeproof.ledger.report.LedgerText;
import ridgeproof.spec.SpecTables;

/** What a ledger does on every database; each database is a subclass. */
abstract class LedgerSuite {

  /** The address of a ledger that does not exist yet, always another one. */
  abstract String newAddress() throws Exception;

  private static LedgerStore open(String address) {
    return LedgerStore.open(address, SampleEntries.VERIFIER);
  }

  private static List<Entry> all(LedgerStore ledger) {
    List<Entry> entries = new ArrayList<>();
    ledger.forEach(entries::add);
    return entries;
  }

  private static List<Entry> sample(int count) {
    SampleEntries sample = new SampleEntries(1);
    return IntStream.range(0, count)
        .mapToObj(sample::any)
        .sorted(
            Comparator.comparing(Entry::day)
                .thenComparing(Entry::examined)
                .thenComparing(Entry::id))
        .toList();
  }

  private static void run(String address, String statement) throws SQLException {
    try (Connection connection = Database.of(address).connect(address);
        Statement change = connection.createStatement()) {
      change.executeUpdate(statement);
    }
  }

  @Test
  void anEntryComesBackAsItWentIn() throws Exception {
    String address = newAddress();
    List<Entry> entries = sample(40);
    try (LedgerStore ledger = open(address)) {
      entries.forEach(ledger::add);
    }
    try (LedgerStore ledger = open(address)) {
      assertEquals(entries, all(ledger));
      assertEquals(40, ledger.count());
      assertEquals(List.of(), ledger.check());
    }
  }

  /** What reports ask of a database, every one understands; the figures are the same on each. */
  @Test
  void aReportCanBeMadeOfIt() throws Exception {
    try (LedgerStore ledger = open(newAddress())) {
      List<Entry> entries = sample(400);
      ledger.addAll(entries);
      long accepted =
          entries.stream()
              .flatMap(entry -> entry.response().stream())
              .filter(response -> response.outcome() == ResponseOutcome.ACCEPTED)
              .count();
      LedgerReport report =
          LedgerReport.of(ledger, SpecTables.open(), Map.of(), LocalDate.of(2026, 1, 1));
      String text = LedgerText.render(report);
      assertTrue(text.contains("400 entries; 200 submissions, 200 of them answered."), text);
      assertEquals(
          Map.of("TIDEWATER LS-1 001", 67, "TIDEWATER LS-1 002", 67, "TIDEWATER LS-1 003", 66),
          report.health().people());
      assertEquals(accepted, report.acceptance().all().of(), text);
      assertEquals(
          200 - accepted,
          report.agreement().rejections().get("L0008").values().stream()
              .mapToLong(Long::longValue)
              .sum());
    }
  }

  @Test
  void anotherKeyIsRefused() throws Exception {
    String address = newAddress();
    open(address).close();
    byte[] other = new byte[KeyedHash.KEY_BYTES];
    other[0] = 1;
    LedgerError error =
        assertThrows(
            LedgerError.class,
            () -> LedgerStore.open(address, new KeyedHash(other).verifier()).close());
    assertTrue(error.getMessage().startsWith("the key does not belong to this ledger"));
  }

  @Test
  void aLedgerOfAnEarlierVersionIsBroughtUpAndKeepsItsEntries() throws Exception {
    String address = newAddress();
    LedgerStore.open(address, SampleEntries.VERIFIER, 1).close();
    run(
        address,
        "INSERT INTO entry (id, examined, day, file_hash, type, station, verdict, depth, program,"
            + " tables, findings, prints) VALUES (7, 0, 20000, 'a', 'FAUF', 9, 'READY', 'IMAGES',"
            + " '0', '0', 0, 0)");
    run(address, "INSERT INTO station (id, make, model, serial) VALUES (9, 'A', 'B', 'C')");
    Entry added = sample(2).get(0);
    try (LedgerStore ledger = open(address)) {
      ledger.add(added);
      assertEquals(
          Set.of(7L, added.id()), Set.copyOf(all(ledger).stream().map(Entry::id).toList()));
      assertEquals(List.of(), ledger.check());
    }
  }

  @Test
  void aLedgerOfALaterVersionIsRefused() throws Exception {
    String address = newAddress();
    open(address).close();
    run(address, "UPDATE ledger_version SET version = " + (Schema.VERSION + 1));
    LedgerError error = assertThrows(LedgerError.class, () -> open(address).close());
    assertTrue(error.getMessage().contains("later version of Ridgeproof"), error.getMessage());
  }

  @Test
  void whatIsForgottenIsGoneAndTheRestStays() throws Exception {
    String address = newAddress();
    LocalDate day = LocalDate.of(2025, 1, 12);
    try (LedgerStore ledger = open(address)) {
      List<Entry> entries = sample(40);
      ledger.addAll(entries);
      List<Entry> kept = entries.stream().filter(entry -> !entry.day().isBefore(day)).toList();
      assertEquals(entries.size() - kept.size(), ledger.forgetBefore(day));
      assertEquals(kept, all(ledger));
      assertEquals(List.of(), ledger.check());
      assertEquals(0, ledger.forgetBefore(day));
    }
  }

  @Test
  void aCheckTellsOfPartsThatAreMissing() throws Exception {
    String address = newAddress();
    try (LedgerStore ledger = open(address)) {
      ledger.addAll(sample(10));
    }
    run(address, "DELETE FROM print WHERE record = 3");
    run(address, "UPDATE score SET entry = -entry WHERE record = 4 AND finger = 2");
    try (LedgerStore ledger = open(address)) {
      assertEquals(
          List.of(
              "5 score rows belong to no entry.", "5 entries do not have all of their print rows."),
          ledger.check());
    }
  }

  @Test
  void anEntryIsWrittenOnceHoweverOftenItIsTried() throws Exception {
    try (LedgerStore ledger = open(newAddress())) {
      Entry entry = sample(1).get(0);
      ledger.add(entry);
      assertThrows(LedgerError.class, () -> ledger.add(entry));
      assertEquals(List.of(entry), all(ledger));
    }
  }

  @Test
  void twoWritersAtOnceLoseNothing() throws Exception {
    String address = newAddress();
    int each = 60;
    ExecutorService writers = Executors.newFixedThreadPool(2);
    try {
      List<Future<List<Long>>> written = new ArrayList<>();
      for (int writer = 0; writer < 2; writer++) {
        SampleEntries sample = new SampleEntries(100 + writer);
        Callable<List<Long>> work =
            () -> {
              List<Long> ids = new ArrayList<>();
              try (LedgerStore ledger = open(address)) {
                for (int i = 0; i < each; i++) {
                  Entry entry = sample.any(i);
                  ledger.add(entry);
                  ids.add(entry.id());
                }
              }
              return ids;
            };
        written.add(writers.submit(work));
      }
      Set<Long> ids = new TreeSet<>();
      for (Future<List<Long>> one : written) {
        ids.addAll(one.get());
      }
      try (LedgerStore ledger = open(address)) {
        assertEquals(ids, new TreeSet<>(all(ledger).stream().map(Entry::id).toList()));
        assertEquals(2 * each, ledger.count());
        assertEquals(List.of(), ledger.check());
      }
    } finally {
      writers.shutdownNow();
    }
  }

  @Test
  void aWriterThatIsKilledLosesNothingThatWasAcknowledged() throws Exception {
    KilledWriters.Outcome outcome = KilledWriters.run(newAddress());
    assertEquals(List.of(), outcome.problems());
    assertTrue(outcome.acknowledged() > 0, "no entry was written before a kill");
    System.out.println(outcome.words());
  }
}
