package ridgeproof.ledger.health;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.facts.Depth;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryFinding;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.Station;
import ridgeproof.ledger.store.LedgerQueries;

/**
 * The last people at each station.
 *
 * @param byStation in order of time
 */
record Visits(Map<Long, Station> stations, Map<Long, List<Visit>> byStation) {

  /** People of each station that are looked at. */
  static final int MAX_PEOPLE = 1000;

  private static final int MEASURES_FROM = 7;
  private static final String TOO_DRY = "RP-RDG-004";

  /** Of one entry, before its prints are known. */
  private record Head(
      long id, long day, long examined, long station, String operator, boolean ridges) {}

  /**
   * The visits of entries that are in no ledger.
   *
   * @param byStation by what to call the station, in order of time
   */
  static Visits of(Map<String, List<Entry>> byStation) {
    Map<Long, Station> stations = new HashMap<>();
    Map<Long, List<Visit>> visits = new TreeMap<>();
    long next = 0;
    for (Map.Entry<String, List<Entry>> station : new TreeMap<>(byStation).entrySet()) {
      long id = next++;
      Map<String, Visit> latest = new LinkedHashMap<>();
      for (Entry entry : station.getValue()) {
        if (entry.response().isEmpty() && !entry.prints().isEmpty()) {
          String person = entry.control().orElse(entry.fileHash());
          latest.remove(person);
          latest.put(person, visit(id, entry));
        }
      }
      if (!latest.isEmpty()) {
        stations.put(id, new Station(station.getKey(), "", ""));
        List<Visit> all = List.copyOf(latest.values());
        visits.put(id, all.subList(Math.max(0, all.size() - MAX_PEOPLE), all.size()));
      }
    }
    return new Visits(stations, visits);
  }

  private static Visit visit(long station, Entry entry) {
    return new Visit(
        entry.day().toEpochDay(),
        station,
        entry.operator().orElse(""),
        entry.depth() == Depth.RIDGES,
        (int)
            entry.findings().stream()
                .filter(finding -> finding.rule().equals(TOO_DRY))
                .map(EntryFinding::finger)
                .distinct()
                .count(),
        entry.prints().stream()
            .map(
                print ->
                    new Shot(
                        print.position(),
                        print.rolled(),
                        print.encoder(),
                        print.measures(),
                        print.platen()))
            .toList());
  }

  /** All visits up to and with a day. */
  static Visits load(LedgerQueries queries, long lastDay) {
    Map<Long, Station> stations = new HashMap<>();
    queries.forEach(
        "SELECT id, make, model, serial FROM station",
        row ->
            stations.put(
                row.getLong(1), new Station(row.getString(2), row.getString(3), row.getString(4))));
    Map<Long, List<Visit>> visits = new TreeMap<>();
    for (long station : stations.keySet()) {
      List<Head> heads = heads(queries, station, lastDay);
      if (!heads.isEmpty()) {
        visits.put(station, load(queries, station, heads));
      }
    }
    return new Visits(stations, visits);
  }

  /** One for each control number: whoever is captured again is no other person. */
  private static List<Head> heads(LedgerQueries queries, long station, long lastDay) {
    Map<String, Head> latest = new LinkedHashMap<>();
    queries.forEach(
        "SELECT id, day, examined, station, operator, depth, control, file_hash FROM entry"
            + " WHERE station = ? AND day <= ? AND outcome IS NULL AND prints > 0"
            + " ORDER BY day DESC, examined DESC, id DESC LIMIT "
            + MAX_PEOPLE,
        row -> {
          String operator = row.getString(5);
          String control = row.getString(7);
          latest.putIfAbsent(
              control == null ? row.getString(8) : control,
              new Head(
                  row.getLong(1),
                  row.getLong(2),
                  row.getLong(3),
                  row.getLong(4),
                  operator == null ? "" : operator,
                  "RIDGES".equals(row.getString(6))));
        },
        station,
        lastDay);
    List<Head> heads = new ArrayList<>(latest.values());
    Collections.reverse(heads);
    return heads;
  }

  private static List<Visit> load(LedgerQueries queries, long station, List<Head> heads) {
    Map<Long, List<Shot>> shots = new HashMap<>();
    heads.forEach(head -> shots.put(head.id(), new ArrayList<>()));
    String columns =
        Stream.of(PrintMeasure.values())
            .map(measure -> "p." + measure.column())
            .collect(Collectors.joining(", "));
    long first = heads.get(0).day();
    queries.forEach(
        "SELECT p.entry, p.record, p.position, p.rolled, p.encoder, p.platen, "
            + columns
            + " FROM print p JOIN entry e ON e.id = p.entry WHERE e.station = ? AND e.day >= ?",
        row -> {
          List<Shot> list = shots.get(row.getLong(1));
          if (list != null) {
            Map<PrintMeasure, Double> measures = new EnumMap<>(PrintMeasure.class);
            for (PrintMeasure measure : PrintMeasure.values()) {
              double value = row.getDouble(MEASURES_FROM + measure.ordinal());
              if (!row.wasNull()) {
                measures.put(measure, value);
              }
            }
            list.add(
                new Shot(
                    row.getInt(3),
                    row.getInt(4) != 0,
                    row.getString(5),
                    measures,
                    Optional.ofNullable(row.getString(6)).map(PlatenNote::parse)));
          }
        },
        station,
        first);
    Map<Long, Integer> dry = new HashMap<>();
    queries.forEach(
        "SELECT f.entry, COUNT(DISTINCT f.finger) FROM finding f JOIN entry e ON e.id = f.entry"
            + " WHERE f.rule = '"
            + TOO_DRY
            + "' AND e.station = ? AND e.day >= ? GROUP BY f.entry",
        row -> dry.put(row.getLong(1), row.getInt(2)),
        station,
        first);
    return heads.stream()
        .map(
            head ->
                new Visit(
                    head.day(),
                    station,
                    head.operator(),
                    head.ridges(),
                    dry.getOrDefault(head.id(), 0),
                    shots.get(head.id())))
        .toList();
  }

  String nameOf(long station) {
    return stations.getOrDefault(station, new Station("", "", "")).name();
  }
}
