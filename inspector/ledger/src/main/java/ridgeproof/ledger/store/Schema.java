package ridgeproof.ledger.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import ridgeproof.ledger.PrintMeasure;

/**
 * The tables of a ledger, version by version: each version is a list of steps from the one before.
 */
final class Schema {

  /** The newest version. */
  static final int VERSION = 2;

  private final Database database;

  Schema(Database database) {
    this.database = database;
  }

  /**
   * Makes the tables or brings them to a version, in the transaction of the connection.
   *
   * @param verifier of the key that a new ledger gets
   * @throws LedgerError if they are of a later version
   */
  void bringUp(Connection connection, int wanted, String verifier) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(database.schemaLock());
    }
    int version = version(connection).orElse(0);
    if (version > VERSION) {
      throw new LedgerError(
          "the ledger was written by a later version of Ridgeproof (schema "
              + version
              + ", this one knows up to "
              + VERSION
              + ")");
    }
    try (Statement statement = connection.createStatement()) {
      for (int next = version + 1; next <= wanted; next++) {
        for (String step : steps(next)) {
          statement.execute(step);
        }
        statement.execute("UPDATE ledger_version SET version = " + next);
      }
    }
    if (version == 0) {
      try (PreparedStatement insert =
          connection.prepareStatement("INSERT INTO ledger_key VALUES (?)")) {
        insert.setString(1, verifier);
        insert.executeUpdate();
      }
    }
  }

  /** The version of the tables; empty where there are none. */
  static OptionalInt version(Connection connection) throws SQLException {
    try (ResultSet tables =
        connection.getMetaData().getTables(null, null, "ledger_version", null)) {
      if (!tables.next()) {
        return OptionalInt.empty();
      }
    }
    try (PreparedStatement query =
            connection.prepareStatement("SELECT version FROM ledger_version");
        ResultSet rows = query.executeQuery()) {
      return rows.next() ? OptionalInt.of(rows.getInt(1)) : OptionalInt.empty();
    }
  }

  private List<String> steps(int version) {
    return switch (version) {
      case 1 ->
          List.of(
              "CREATE TABLE ledger_version (version INTEGER NOT NULL)",
              "INSERT INTO ledger_version VALUES (0)",
              "CREATE TABLE ledger_key (verifier VARCHAR(32) NOT NULL)",
              "CREATE TABLE station (id BIGINT PRIMARY KEY, make VARCHAR(64) NOT NULL,"
                  + " model VARCHAR(64) NOT NULL, serial VARCHAR(64) NOT NULL)",
              "CREATE TABLE entry (id BIGINT PRIMARY KEY, examined BIGINT NOT NULL,"
                  + " day BIGINT NOT NULL, file_hash VARCHAR(64) NOT NULL, control VARCHAR(32),"
                  + " control_number VARCHAR(200), type VARCHAR(16) NOT NULL,"
                  + " station BIGINT NOT NULL, operator VARCHAR(32),"
                  + " verdict VARCHAR(16) NOT NULL, depth VARCHAR(16) NOT NULL,"
                  + " program VARCHAR(64) NOT NULL, tables VARCHAR(64) NOT NULL,"
                  + " findings INTEGER NOT NULL, prints INTEGER NOT NULL)",
              "CREATE INDEX entry_day ON entry (day)",
              "CREATE INDEX entry_station ON entry (station, day)",
              "CREATE INDEX entry_control ON entry (control)",
              "CREATE TABLE finding (entry BIGINT NOT NULL, number INTEGER NOT NULL,"
                  + " rule VARCHAR(16) NOT NULL, severity VARCHAR(16) NOT NULL, finger INTEGER,"
                  + " field VARCHAR(16) NOT NULL, PRIMARY KEY (entry, number))",
              "CREATE TABLE print (entry BIGINT NOT NULL, record INTEGER NOT NULL,"
                  + " position INTEGER NOT NULL, rolled INTEGER NOT NULL,"
                  + " image VARCHAR(32) NOT NULL, encoder VARCHAR(200) NOT NULL, platen TEXT, "
                  + measures()
                  + ", PRIMARY KEY (entry, record))",
              "CREATE TABLE score (entry BIGINT NOT NULL, record INTEGER NOT NULL,"
                  + " finger INTEGER NOT NULL, score INTEGER NOT NULL,"
                  + " PRIMARY KEY (entry, record, finger))");
      case 2 ->
          List.of(
              "ALTER TABLE entry ADD COLUMN refers VARCHAR(32)",
              "ALTER TABLE entry ADD COLUMN outcome VARCHAR(16)",
              "CREATE INDEX entry_refers ON entry (refers)",
              "CREATE TABLE message (entry BIGINT NOT NULL, number INTEGER NOT NULL,"
                  + " reason VARCHAR(100) NOT NULL, finger INTEGER, PRIMARY KEY (entry, number))");
      default -> throw new IllegalArgumentException("schema version " + version);
    };
  }

  private String measures() {
    return Arrays.stream(PrintMeasure.values())
        .map(measure -> measure.column() + " " + database.real())
        .collect(Collectors.joining(", "));
  }
}
