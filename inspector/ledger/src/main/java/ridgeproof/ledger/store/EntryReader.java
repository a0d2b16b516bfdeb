package ridgeproof.ledger.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Consumer;
import ridgeproof.examination.Verdict;
import ridgeproof.examination.facts.Depth;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryFinding;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.Response;
import ridgeproof.ledger.ResponseMessage;
import ridgeproof.ledger.ResponseOutcome;
import ridgeproof.ledger.Station;
import ridgeproof.spec.rule.Severity;

/** Reads whole entries, as an export needs them. */
final class EntryReader {

  private final Connection connection;

  EntryReader(Connection connection) {
    this.connection = connection;
  }

  void forEach(Consumer<Entry> action) throws SQLException {
    List<Long> ids = new ArrayList<>();
    try (PreparedStatement query =
            connection.prepareStatement("SELECT id FROM entry ORDER BY day, examined, id");
        ResultSet rows = query.executeQuery()) {
      while (rows.next()) {
        ids.add(rows.getLong(1));
      }
    }
    for (long id : ids) {
      action.accept(entry(id));
    }
  }

  private Entry entry(long id) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement(
            "SELECT e.*, s.make, s.model, s.serial FROM entry e JOIN station s ON s.id = e.station"
                + " WHERE e.id = ?")) {
      query.setLong(1, id);
      try (ResultSet row = query.executeQuery()) {
        row.next();
        Optional<Response> response = response(id, row);
        return new Entry(
            id,
            Instant.ofEpochMilli(row.getLong("examined")),
            LocalDate.ofEpochDay(row.getLong("day")),
            row.getString("file_hash"),
            Optional.ofNullable(row.getString("control")),
            Optional.ofNullable(row.getString("control_number")),
            row.getString("type"),
            new Station(row.getString("make"), row.getString("model"), row.getString("serial")),
            Optional.ofNullable(row.getString("operator")),
            Verdict.valueOf(row.getString("verdict")),
            Depth.valueOf(row.getString("depth")),
            row.getString("program"),
            row.getString("tables"),
            findings(id),
            prints(id),
            response);
      }
    }
  }

  private Optional<Response> response(long id, ResultSet row) throws SQLException {
    String outcome = row.getString("outcome");
    return outcome == null
        ? Optional.empty()
        : Optional.of(
            new Response(row.getString("refers"), ResponseOutcome.valueOf(outcome), messages(id)));
  }

  /** Makes one part of a row. */
  private interface Part<T> {
    T of(ResultSet row) throws SQLException;
  }

  private <T> List<T> parts(String query, long id, Part<T> part) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(query)) {
      statement.setLong(1, id);
      try (ResultSet rows = statement.executeQuery()) {
        List<T> parts = new ArrayList<>();
        while (rows.next()) {
          parts.add(part.of(rows));
        }
        return parts;
      }
    }
  }

  private List<EntryFinding> findings(long id) throws SQLException {
    return parts(
        "SELECT rule, severity, finger, field FROM finding WHERE entry = ? ORDER BY number",
        id,
        row ->
            new EntryFinding(
                row.getString(1),
                Severity.valueOf(row.getString(2)),
                number(row, 3),
                row.getString(4)));
  }

  private List<ResponseMessage> messages(long id) throws SQLException {
    return parts(
        "SELECT reason, finger FROM message WHERE entry = ? ORDER BY number",
        id,
        row -> new ResponseMessage(row.getString(1), number(row, 2)));
  }

  private static OptionalInt number(ResultSet row, int column) throws SQLException {
    int number = row.getInt(column);
    return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
  }

  private List<EntryPrint> prints(long id) throws SQLException {
    Map<Integer, Map<Integer, Integer>> scores = new TreeMap<>();
    parts(
        "SELECT record, finger, score FROM score WHERE entry = ?",
        id,
        row ->
            scores
                .computeIfAbsent(row.getInt(1), record -> new TreeMap<>())
                .put(row.getInt(2), row.getInt(3)));
    return parts(
        "SELECT * FROM print WHERE entry = ? ORDER BY record",
        id,
        row ->
            new EntryPrint(
                row.getInt("record"),
                row.getInt("position"),
                row.getInt("rolled") != 0,
                row.getString("image"),
                row.getString("encoder"),
                scores.getOrDefault(row.getInt("record"), Map.of()),
                measures(row),
                Optional.ofNullable(row.getString("platen")).map(PlatenNote::parse)));
  }

  private static Map<PrintMeasure, Double> measures(ResultSet row) throws SQLException {
    Map<PrintMeasure, Double> measures = new EnumMap<>(PrintMeasure.class);
    for (PrintMeasure measure : PrintMeasure.values()) {
      double value = row.getDouble(measure.column());
      if (!row.wasNull()) {
        measures.put(measure, value);
      }
    }
    return measures;
  }
}
