package ridgeproof.ledger.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
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

/** Entries drawn at random, with every part filled. */
public final class SampleEntries {

  public static final KeyedHash HASH = new KeyedHash(new byte[KeyedHash.KEY_BYTES]);
  static final String VERIFIER = HASH.verifier();
  private static final LocalDate FIRST = LocalDate.of(2025, 1, 1);

  private final Random random;

  public SampleEntries(long seed) {
    this.random = new Random(seed);
  }

  /** The submission of a control number. */
  public Entry submission(int number, LocalDate day, int prints) {
    List<EntryPrint> images = new ArrayList<>();
    for (int record = 1; record <= prints; record++) {
      images.add(print(record + 2));
    }
    Verdict verdict = Verdict.values()[random.nextInt(3)];
    return entry(
        number,
        day,
        Optional.of(HASH.control("PILOT-" + number)),
        verdict,
        verdict == Verdict.READY ? List.of() : List.of(finding(), finding()),
        images,
        Optional.empty());
  }

  /** The response to that submission. */
  Entry response(int number, LocalDate day) {
    boolean rejected = random.nextInt(5) == 0;
    return entry(
        number,
        day,
        Optional.of(HASH.control("BUREAU-" + number)),
        Verdict.READY,
        List.of(),
        List.of(),
        Optional.of(
            new Response(
                HASH.control("PILOT-" + number),
                rejected ? ResponseOutcome.REJECTED : ResponseOutcome.ACCEPTED,
                rejected
                    ? List.of(new ResponseMessage("L0008", OptionalInt.of(1 + random.nextInt(10))))
                    : List.of())));
  }

  Entry any(int number) {
    return number % 2 == 0
        ? submission(number / 2, FIRST.plusDays(number / 2 % 365), 3)
        : response(number / 2, FIRST.plusDays(number / 2 % 365 + 2));
  }

  private Entry entry(
      int number,
      LocalDate day,
      Optional<String> control,
      Verdict verdict,
      List<EntryFinding> findings,
      List<EntryPrint> prints,
      Optional<Response> response) {
    Instant examined =
        day.atStartOfDay(ZoneOffset.UTC).toInstant().plusMillis(random.nextInt(8_0000_000));
    return new Entry(
        random.nextLong() & Long.MAX_VALUE,
        examined,
        day,
        String.format(java.util.Locale.ROOT, "%064x", random.nextLong() & Long.MAX_VALUE),
        control,
        Optional.empty(),
        response.isPresent() ? "SRE" : "FAUF",
        new Station("TIDEWATER", "LS-1", "00" + (1 + number % 3)),
        Optional.of(HASH.operator("OPERATOR " + number % 6)),
        verdict,
        Depth.RIDGES,
        "0.1.0",
        "0123456789ab",
        findings,
        prints,
        response);
  }

  private EntryFinding finding() {
    return new EntryFinding(
        "RP-RDG-0" + (10 + random.nextInt(8)),
        Severity.BLOCKING,
        OptionalInt.of(1 + random.nextInt(10)),
        random.nextBoolean() ? "14.013" : "");
  }

  private EntryPrint print(int record) {
    Map<PrintMeasure, Double> measures = new EnumMap<>(PrintMeasure.class);
    for (PrintMeasure measure : PrintMeasure.values()) {
      if (random.nextInt(10) > 0) {
        measures.put(measure, random.nextInt(1000) / 8.0);
      }
    }
    return new EntryPrint(
        record,
        1 + random.nextInt(15),
        random.nextBoolean(),
        HASH.control("image " + random.nextInt()),
        "WSQ, encoder number 0",
        Map.of(2, random.nextInt(101), 3, random.nextInt(101)),
        measures,
        Optional.of(
            new PlatenNote(
                100,
                62,
                List.of(new CellBox(3, 4, 20, 40), new CellBox(30, 4, 50, 40)),
                List.of(random.nextInt(6200)),
                List.of(),
                List.of(17))));
  }
}
