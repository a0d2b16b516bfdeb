package ridgeproof.ledger.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.Station;

/**
 * An open ledger. One thread at a time uses it; several processes may have the same ledger open.
 *
 * <p>When {@link #add} returns, the entry is on the disk; when it does not, the ledger has the
 * whole entry or nothing of it.
 */
public final class LedgerStore implements AutoCloseable {

  private static final List<String> PARTS = List.of("finding", "print", "score", "message");

  private static final int MAX_ATTEMPTS = 100;
  private static final long PAUSE_MS = 50;

  private final Database database;
  private final Connection connection;

  private LedgerStore(Database database, Connection connection) {
    this.database = database;
    this.connection = connection;
  }

  /**
   * Opens a ledger, and makes or renews its tables where need be.
   *
   * @param address {@code jdbc:sqlite:} and a path, or a {@code jdbc:postgresql:} address
   * @param verifier that tells the key of this ledger from another
   * @throws LedgerError if it cannot be opened, has another key, or is of a later version
   */
  public static LedgerStore open(String address, String verifier) {
    return open(address, verifier, Schema.VERSION);
  }

  static LedgerStore open(String address, String verifier, int version) {
    Database database = Database.of(address);
    try {
      Connection connection = connect(database, address);
      try {
        connection.setAutoCommit(false);
        if (Schema.version(connection).orElse(0) != version) {
          connection.rollback();
          new Schema(database).bringUp(connection, version, verifier);
        }
        LedgerStore store = new LedgerStore(database, connection);
        if (!store.text("SELECT verifier FROM ledger_key").equals(verifier)) {
          throw new LedgerError(
              "the key does not belong to this ledger; use the key file it was started with");
        }
        return store;
      } catch (SQLException | RuntimeException e) {
        connection.close();
        throw e;
      }
    } catch (SQLException e) {
      throw LedgerError.of("the ledger cannot be opened", e);
    }
  }

  /** Two processes that make the same new file at once disturb each other for a moment. */
  private static Connection connect(Database database, String address) throws SQLException {
    for (int attempt = 1; ; attempt++) {
      try {
        return database.connect(address);
      } catch (SQLException e) {
        if (attempt == MAX_ATTEMPTS || !database.isBusy(e)) {
          throw e;
        }
        try {
          Thread.sleep(PAUSE_MS);
        } catch (InterruptedException interrupted) {
          Thread.currentThread().interrupt();
          throw e;
        }
      }
    }
  }

  /** Writes one entry; on the disk when this returns. */
  public void add(Entry entry) {
    addAll(List.of(entry));
  }

  /** Writes entries in one transaction: all of them or none. */
  public void addAll(List<Entry> entries) {
    changing(
        "the entry cannot be written",
        () -> {
          try (EntryWriter writer = new EntryWriter(connection)) {
            for (Entry entry : entries) {
              writer.add(entry);
            }
            writer.flush();
          }
        });
  }

  /** Gives every entry, the oldest first. */
  public void forEach(Consumer<Entry> action) {
    reading(() -> new EntryReader(connection).forEach(action));
  }

  /** A reader of what reports need, on this connection. */
  public LedgerQueries queries() {
    return new LedgerQueries(this, connection);
  }

  /** How many entries there are. */
  public long count() {
    return number("SELECT COUNT(*) FROM entry");
  }

  /**
   * Removes the entries of the days before a day, with everything that belongs to them.
   *
   * @return how many
   */
  public long forgetBefore(LocalDate day) {
    long[] forgotten = new long[1];
    changing(
        "entries cannot be removed",
        () -> {
          String old = " (SELECT id FROM entry WHERE day < " + day.toEpochDay() + ")";
          try (Statement statement = connection.createStatement()) {
            for (String part : PARTS) {
              statement.executeUpdate("DELETE FROM " + part + " WHERE entry IN" + old);
            }
            forgotten[0] =
                statement.executeUpdate("DELETE FROM entry WHERE day < " + day.toEpochDay());
            statement.executeUpdate(
                "DELETE FROM station WHERE id NOT IN (SELECT station FROM entry)");
          }
        });
    try {
      connection.setAutoCommit(true);
      try (Statement statement = connection.createStatement()) {
        for (String step : database.afterForgetting()) {
          statement.execute(step);
        }
      }
      connection.setAutoCommit(false);
    } catch (SQLException e) {
      throw LedgerError.of("entries were removed, but their space was not freed", e);
    }
    return forgotten[0];
  }

  /** What is wrong with the ledger, in words; empty if nothing is. */
  public List<String> check() {
    return new LedgerCheck(this, PARTS).problems(database.soundness());
  }

  long number(String query) {
    long[] number = new long[1];
    reading(
        () -> {
          try (Statement statement = connection.createStatement();
              ResultSet rows = statement.executeQuery(query)) {
            rows.next();
            number[0] = rows.getLong(1);
          }
        });
    return number[0];
  }

  String text(String query) {
    String[] text = new String[1];
    reading(
        () -> {
          try (Statement statement = connection.createStatement();
              ResultSet rows = statement.executeQuery(query)) {
            rows.next();
            text[0] = rows.getString(1);
          }
        });
    return text[0];
  }

  /** Work on the database. */
  interface Work {
    void run() throws SQLException;
  }

  void reading(Work work) {
    changing("the ledger cannot be read", work);
  }

  private void changing(String failure, Work work) {
    try {
      try {
        work.run();
        connection.commit();
      } catch (SQLException | RuntimeException e) {
        connection.rollback();
        throw e;
      }
    } catch (SQLException e) {
      throw LedgerError.of(failure, e);
    }
  }

  /** A number that every writer gives the same station. */
  static long idOf(Station station) {
    try {
      String parts = String.join("\u001f", station.make(), station.model(), station.serial());
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(parts.getBytes(StandardCharsets.UTF_8));
      return ByteBuffer.wrap(digest).getLong() & Long.MAX_VALUE;
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  @Override
  public void close() {
    try {
      connection.close();
    } catch (SQLException e) {
      throw LedgerError.of("the ledger cannot be closed", e);
    }
  }
}
