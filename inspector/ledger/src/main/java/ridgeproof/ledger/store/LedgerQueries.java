package ridgeproof.ledger.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/** Gives the rows that reports are made of, as they stand in the database. */
public final class LedgerQueries {

  private static final int FETCHED_ROWS = 5000;

  private final LedgerStore store;
  private final Connection connection;

  LedgerQueries(LedgerStore store, Connection connection) {
    this.store = store;
    this.connection = connection;
  }

  /** Takes one row. */
  public interface RowAction {
    void take(ResultSet row) throws SQLException;
  }

  /**
   * Gives each row of a query.
   *
   * @param numbers for the question marks, in order
   */
  public void forEach(String query, RowAction action, long... numbers) {
    store.reading(
        () -> {
          try (PreparedStatement statement = connection.prepareStatement(query)) {
            statement.setFetchSize(FETCHED_ROWS);
            for (int i = 0; i < numbers.length; i++) {
              statement.setLong(i + 1, numbers[i]);
            }
            try (ResultSet rows = statement.executeQuery()) {
              while (rows.next()) {
                action.take(rows);
              }
            }
          }
        });
  }
}
