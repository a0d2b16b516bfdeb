package ridgeproof.ledger.store;

import java.sql.Connection;
import java.sql.Driver;
import java.sql.SQLException;
import java.util.List;
import java.util.Properties;

/** What the two databases do each in its own way; a driver is loaded when it is asked for. */
enum Database {
  SQLITE("jdbc:sqlite:", "REAL") {
    @Override
    Driver driver() {
      return new org.sqlite.JDBC();
    }

    @Override
    Properties properties() {
      Properties properties = new Properties();
      properties.setProperty("journal_mode", "WAL");
      // Each commit reaches the disk: an entry that is acknowledged outlives a power failure.
      properties.setProperty("synchronous", "FULL");
      properties.setProperty("busy_timeout", "30000");
      properties.setProperty("temp_store", "MEMORY");
      properties.setProperty("secure_delete", "on");
      return properties;
    }

    /** A write comes first, so that two processes wait for each other and never fail halfway. */
    @Override
    String schemaLock() {
      return "PRAGMA application_id = " + APPLICATION;
    }

    @Override
    List<String> afterForgetting() {
      return List.of("VACUUM", "PRAGMA wal_checkpoint(TRUNCATE)");
    }

    @Override
    String soundness() {
      return "PRAGMA integrity_check";
    }
  },
  POSTGRESQL("jdbc:postgresql:", "DOUBLE PRECISION") {
    @Override
    Driver driver() {
      return new org.postgresql.Driver();
    }

    @Override
    Properties properties() {
      Properties properties = new Properties();
      properties.setProperty("ApplicationName", "ridgeproof");
      properties.setProperty("reWriteBatchedInserts", "true");
      return properties;
    }

    @Override
    String schemaLock() {
      return "SELECT pg_advisory_xact_lock(" + APPLICATION + ")";
    }

    @Override
    List<String> afterForgetting() {
      return List.of("VACUUM");
    }

    @Override
    String soundness() {
      return "SELECT 'ok'";
    }
  };

  /** Of this program, and of nothing else in the same database. */
  private static final int APPLICATION = 0x52504C47;

  private static final int SQLITE_BUSY = 5;

  private final String prefix;
  private final String real;

  Database(String prefix, String real) {
    this.prefix = prefix;
    this.real = real;
  }

  abstract Driver driver();

  abstract Properties properties();

  /** What makes sure that forgotten entries leave no trace in files. */
  abstract List<String> afterForgetting();

  /** A query whose first row says ok. */
  abstract String soundness();

  /** Waits until no other process changes the schema, to the end of the transaction. */
  abstract String schemaLock();

  /** The type of a column of numbers with fractions. */
  String real() {
    return real;
  }

  /**
   * The database of an address.
   *
   * @throws LedgerError if there is none
   */
  static Database of(String address) {
    for (Database database : values()) {
      if (address.startsWith(database.prefix)) {
        return database;
      }
    }
    throw new LedgerError("no ledger address: it begins with jdbc:sqlite: or jdbc:postgresql:");
  }

  /** Whether another process held the file for a moment. */
  boolean isBusy(SQLException failure) {
    return this == SQLITE && (failure.getErrorCode() & 0xFF) == SQLITE_BUSY;
  }

  Connection connect(String address) throws SQLException {
    return driver().connect(address, properties());
  }
}
