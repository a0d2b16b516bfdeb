package ridgeproof.ledger.report;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.imagery.platen.CellBox;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryFinding;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.Response;
import ridgeproof.ledger.ResponseMessage;
import ridgeproof.ledger.ResponseOutcome;
import ridgeproof.ledger.Station;
import ridgeproof.spec.rule.Severity;

/** Entries by hand, and a year of them in which everything occurs that a report tells. */
final class SampleYear {

  static final KeyedHash HASH = new KeyedHash(new byte[KeyedHash.KEY_BYTES]);
  static final LocalDate FIRST = LocalDate.of(2025, 1, 6);
  private static final LocalDate SPRING = LocalDate.of(2025, 3, 1);
  private static final LocalDate SPOT = LocalDate.of(2025, 5, 5);
  private static final LocalDate PALE = LocalDate.of(2025, 9, 1);
  private static final int STAINED = 20 * 40 + 36;

  private final Random random = new Random(8);
  private final List<Entry> entries = new ArrayList<>();
  private final String make;

  /**
   * @param make of every station, as files state it
   */
  SampleYear(String make) {
    this.make = make;
  }

  List<Entry> entries() {
    return entries;
  }

  /** So many submissions, a few of them with a second attempt, all answered. */
  SampleYear with(int submissions) {
    for (int number = 0; number < submissions; number++) {
      LocalDate day = FIRST.plusDays(360L * number / Math.max(360, submissions));
      String control = "PILOT-" + number;
      boolean dry = number % 3 == 0 && day.isBefore(SPRING);
      boolean faulty = dry || number % 7 == 3;
      submission(number, control, day, faulty ? List.of(finding(2)) : List.of(), "first");
      if (faulty && number % 2 == 1) {
        submission(
            number,
            control,
            day.plusDays(1),
            number % 3 == 0 ? List.of(finding(2)) : List.of(),
            "second");
      }
      boolean rejected = number % 11 == 5;
      response(
          control,
          day.plusDays(2 + random.nextInt(9)),
          rejected
              ? List.of(new ResponseMessage("L0008", OptionalInt.of(2 + number % 5)))
              : List.of());
    }
    return this;
  }

  static EntryFinding finding(int finger) {
    return new EntryFinding("RP-RDG-004", Severity.LIKELY, OptionalInt.of(finger), "");
  }

  /** A submission of fingers 2 and 7, of which finger 2 is that capture. */
  void submission(
      int number, String control, LocalDate day, List<EntryFinding> findings, String capture) {
    int station = number % 3;
    boolean spot = station == 1 && !day.isBefore(SPOT);
    boolean pale = station == 2 && !day.isBefore(PALE);
    add(
        day,
        Optional.of(HASH.control(control)),
        "FIS",
        number,
        findings.isEmpty() ? Verdict.READY : number % 2 == 0 ? Verdict.HOLD : Verdict.REVIEW,
        findings,
        List.of(
            print(number, 3, 2, HASH.control(control + capture), spot, pale),
            print(number, 4, 7, HASH.control(control + "seven"), spot, pale)),
        Optional.empty());
  }

  void response(String control, LocalDate day, List<ResponseMessage> reasons) {
    add(
        day,
        Optional.of(HASH.control("BUREAU-" + entries.size())),
        "SRE",
        0,
        Verdict.READY,
        List.of(),
        List.of(),
        Optional.of(
            new Response(
                HASH.control(control),
                reasons.isEmpty() ? ResponseOutcome.ACCEPTED : ResponseOutcome.REJECTED,
                reasons)));
  }

  private void add(
      LocalDate day,
      Optional<String> control,
      String type,
      int number,
      Verdict verdict,
      List<EntryFinding> findings,
      List<EntryPrint> prints,
      Optional<Response> response) {
    long id = entries.size() + 1;
    entries.add(
        new Entry(
            id,
            Instant.parse("2026-01-10T00:00:00Z"),
            day,
            String.format(Locale.ROOT, "%016x%048x", id, 0),
            control,
            Optional.empty(),
            type,
            new Station(make, "LS-1", "TW-00" + (1 + number % 3)),
            Optional.of(HASH.operator("OPERATOR-" + number % 6)),
            verdict,
            Depth.RIDGES,
            "test",
            "test",
            findings,
            prints,
            response));
  }

  private EntryPrint print(
      int number, int record, int position, String image, boolean spot, boolean pale) {
    Map<PrintMeasure, Double> measures = new EnumMap<>(PrintMeasure.class);
    measures.put(PrintMeasure.GROUND, 240 + 2 * random.nextGaussian());
    measures.put(PrintMeasure.CONTRAST, (pale ? 115 : 150) + 12 * random.nextGaussian());
    measures.put(PrintMeasure.UNEVENNESS, Math.abs(4 + 2 * random.nextGaussian()));
    double scale = number % 3 == 0 ? 1.08 : 1;
    measures.put(PrintMeasure.RIDGE_PERIOD, scale * (0.48 + 0.03 * random.nextGaussian()));
    double width = number % 6 == 4 ? 0.75 : 1;
    measures.put(PrintMeasure.WIDTH, width * (29 + 2 * random.nextGaussian()));
    return new EntryPrint(
        record,
        position,
        true,
        image,
        "WSQ, encoder number 0",
        Map.of(position, 60 + random.nextInt(40)),
        measures,
        Optional.of(
            new PlatenNote(
                40,
                38,
                List.of(new CellBox(8, 6, 30, 34)),
                spot ? List.of(STAINED, STAINED + 1, STAINED + 40) : List.of(random.nextInt(200)),
                List.of(),
                List.of())));
  }
}
