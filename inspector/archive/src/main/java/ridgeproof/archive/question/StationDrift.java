package ridgeproof.archive.question;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.apache.spark.sql.Row;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryFinding;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.Station;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.spec.rule.Severity;

/**
 * Asks the last people of each station what a ledger asks them: they are put into a ledger that is
 * removed afterward, so that both judge a station alike.
 */
public final class StationDrift {

  private static final int ENTRIES_AT_ONCE = 500;
  private static final String DRY = "RP-RDG-004";

  private StationDrift() {}

  /**
   * The health of the stations.
   *
   * @param people rows of {@link Question#LAST_PEOPLE}
   */
  public static StationHealth of(Iterator<Row> people, LocalDate lastDay) {
    try {
      Path folder = Files.createTempDirectory("ridgeproof-drift");
      Path file = folder.resolve("ledger.db");
      try (LedgerStore ledger = LedgerStore.open("jdbc:sqlite:" + file, "drift")) {
        List<Entry> entries = new ArrayList<>();
        long id = 0;
        while (people.hasNext()) {
          entries.add(entry(++id, people.next()));
          if (entries.size() == ENTRIES_AT_ONCE || !people.hasNext()) {
            ledger.addAll(entries);
            entries.clear();
          }
        }
        return StationHealth.of(ledger.queries(), lastDay);
      } finally {
        for (String left : List.of("", "-wal", "-shm", "-journal")) {
          Files.deleteIfExists(folder.resolve("ledger.db" + left));
        }
        Files.delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Entry entry(long id, Row row) {
    return new Entry(
        id,
        row.getAs("examined"),
        row.getAs("day"),
        row.getAs("file_hash"),
        Optional.ofNullable(row.getAs("control")),
        Optional.empty(),
        "",
        new Station(row.getAs("make"), row.getAs("model"), row.getAs("serial")),
        Optional.ofNullable(row.getAs("operator")),
        Verdict.valueOf(row.getAs("verdict")),
        Depth.valueOf(row.<String>getAs("depth").toUpperCase(Locale.ROOT)),
        row.getAs("program"),
        row.getAs("tables"),
        dry(row),
        prints(row),
        Optional.empty());
  }

  private static List<EntryFinding> dry(Row row) {
    int column = row.fieldIndex("dry");
    return row.isNullAt(column)
        ? List.of()
        : row.<Integer>getList(column).stream()
            .map(finger -> new EntryFinding(DRY, Severity.ADVICE, OptionalInt.of(finger), ""))
            .toList();
  }

  /** A row is a finger, an entry of the ledger has one print for all fingers of an image. */
  private static List<EntryPrint> prints(Row row) {
    int column = row.fieldIndex("prints");
    Map<Integer, List<Row>> images = new LinkedHashMap<>();
    if (!row.isNullAt(column)) {
      row.<Row>getList(column)
          .forEach(
              finger ->
                  images
                      .computeIfAbsent(finger.getAs("record"), record -> new ArrayList<>())
                      .add(finger));
    }
    return images.values().stream().map(StationDrift::print).toList();
  }

  private static EntryPrint print(List<Row> fingers) {
    Row first = fingers.get(0);
    Map<Integer, Integer> scores = new TreeMap<>();
    for (Row finger : fingers) {
      if (finger.getAs("score") != null) {
        scores.put(finger.getAs("finger"), finger.getAs("score"));
      }
    }
    Map<PrintMeasure, Double> measures = new EnumMap<>(PrintMeasure.class);
    for (PrintMeasure measure : PrintMeasure.values()) {
      Double value = first.getAs(measure.column());
      if (value != null) {
        measures.put(measure, value);
      }
    }
    String image = first.getAs("image_hash");
    String platen = first.getAs("platen");
    return new EntryPrint(
        first.getAs("record"),
        first.getAs("position"),
        first.getAs("rolled"),
        image == null ? "" : image,
        first.getAs("encoder"),
        scores,
        measures,
        Optional.ofNullable(platen).map(PlatenNote::parse));
  }
}
