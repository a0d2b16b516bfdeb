package ridgeproof.ledger.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.Arrays;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryFinding;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.Response;
import ridgeproof.ledger.ResponseMessage;

/** Writes entries with their parts, in the transaction of the connection. */
final class EntryWriter implements AutoCloseable {

  private static final String PRINT_COLUMNS =
      "entry, record, position, rolled, image, encoder, platen";
  private static final int MEASURES_FROM = 8;

  private final PreparedStatement station;
  private final PreparedStatement entry;
  private final PreparedStatement finding;
  private final PreparedStatement print;
  private final PreparedStatement score;
  private final PreparedStatement message;

  EntryWriter(Connection connection) throws SQLException {
    station =
        connection.prepareStatement(
            "INSERT INTO station (id, make, model, serial) VALUES (?, ?, ?, ?)"
                + " ON CONFLICT DO NOTHING");
    entry =
        connection.prepareStatement(
            "INSERT INTO entry (id, examined, day, file_hash, control, control_number, type,"
                + " station, operator, verdict, depth, program, tables, findings, prints, refers,"
                + " outcome) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    finding =
        connection.prepareStatement(
            "INSERT INTO finding (entry, number, rule, severity, finger, field)"
                + " VALUES (?, ?, ?, ?, ?, ?)");
    print = connection.prepareStatement(printInsert());
    score =
        connection.prepareStatement(
            "INSERT INTO score (entry, record, finger, score) VALUES (?, ?, ?, ?)");
    message =
        connection.prepareStatement(
            "INSERT INTO message (entry, number, reason, finger) VALUES (?, ?, ?, ?)");
  }

  private static String printInsert() {
    String columns =
        Arrays.stream(PrintMeasure.values())
            .map(PrintMeasure::column)
            .collect(Collectors.joining(", "));
    return "INSERT INTO print ("
        + PRINT_COLUMNS
        + ", "
        + columns
        + ") VALUES (?, ?, ?, ?, ?, ?, ?"
        + ", ?".repeat(PrintMeasure.values().length)
        + ")";
  }

  void add(Entry e) throws SQLException {
    long stationId = LedgerStore.idOf(e.station());
    station.setLong(1, stationId);
    station.setString(2, e.station().make());
    station.setString(3, e.station().model());
    station.setString(4, e.station().serial());
    station.addBatch();
    addEntry(e, stationId);
    for (int i = 0; i < e.findings().size(); i++) {
      add(e.id(), i, e.findings().get(i));
    }
    for (EntryPrint p : e.prints()) {
      add(e.id(), p);
    }
    if (e.response().isPresent()) {
      Response response = e.response().get();
      for (int i = 0; i < response.messages().size(); i++) {
        add(e.id(), i, response.messages().get(i));
      }
    }
  }

  private void addEntry(Entry e, long stationId) throws SQLException {
    entry.setLong(1, e.id());
    entry.setLong(2, e.examined().toEpochMilli());
    entry.setLong(3, e.day().toEpochDay());
    entry.setString(4, e.fileHash());
    entry.setString(5, e.control().orElse(null));
    entry.setString(6, e.clearControl().orElse(null));
    entry.setString(7, e.type());
    entry.setLong(8, stationId);
    entry.setString(9, e.operator().orElse(null));
    entry.setString(10, e.verdict().name());
    entry.setString(11, e.depth().name());
    entry.setString(12, e.program());
    entry.setString(13, e.tables());
    entry.setInt(14, e.findings().size());
    entry.setInt(15, e.prints().size());
    entry.setString(16, e.response().map(Response::refers).orElse(null));
    entry.setString(17, e.response().map(response -> response.outcome().name()).orElse(null));
    entry.addBatch();
  }

  private void add(long id, int number, EntryFinding f) throws SQLException {
    finding.setLong(1, id);
    finding.setInt(2, number);
    finding.setString(3, f.rule());
    finding.setString(4, f.severity().name());
    set(finding, 5, f.finger());
    finding.setString(6, f.field());
    finding.addBatch();
  }

  private void add(long id, EntryPrint p) throws SQLException {
    print.setLong(1, id);
    print.setInt(2, p.record());
    print.setInt(3, p.position());
    print.setInt(4, p.rolled() ? 1 : 0);
    print.setString(5, p.image());
    print.setString(6, p.encoder());
    print.setString(7, p.platen().map(PlatenNote::text).orElse(null));
    for (PrintMeasure measure : PrintMeasure.values()) {
      Double value = p.measures().get(measure);
      if (value == null) {
        print.setNull(MEASURES_FROM + measure.ordinal(), Types.DOUBLE);
      } else {
        print.setDouble(MEASURES_FROM + measure.ordinal(), value);
      }
    }
    print.addBatch();
    for (Map.Entry<Integer, Integer> finger : p.scores().entrySet()) {
      score.setLong(1, id);
      score.setInt(2, p.record());
      score.setInt(3, finger.getKey());
      score.setInt(4, finger.getValue());
      score.addBatch();
    }
  }

  private void add(long id, int number, ResponseMessage m) throws SQLException {
    message.setLong(1, id);
    message.setInt(2, number);
    message.setString(3, m.reason());
    set(message, 4, m.finger());
    message.addBatch();
  }

  private static void set(PreparedStatement statement, int index, OptionalInt number)
      throws SQLException {
    if (number.isPresent()) {
      statement.setInt(index, number.getAsInt());
    } else {
      statement.setNull(index, Types.INTEGER);
    }
  }

  /** Sends everything to the database. */
  void flush() throws SQLException {
    for (PreparedStatement statement : all()) {
      statement.executeBatch();
    }
  }

  private PreparedStatement[] all() {
    return new PreparedStatement[] {station, entry, finding, print, score, message};
  }

  @Override
  public void close() throws SQLException {
    for (PreparedStatement statement : all()) {
      statement.close();
    }
  }
}
