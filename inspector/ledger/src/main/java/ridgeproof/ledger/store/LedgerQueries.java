package ridgeproof.ledger.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Collectors;

/** Gives the rows that reports are made of, as they stand in the database. */
public final class LedgerQueries {

  private static final int FETCHED_ROWS = 5000;
  private static final int MAX_ENTRIES = 500;

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

  /**
   * Gives each row that belongs to some entries.
   *
   * @param query ends in a condition on entries, to which {@code IN (...)} is added
   */
  public void forEachOf(String query, List<Long> entries, RowAction action) {
    for (int from = 0; from < entries.size(); from += MAX_ENTRIES) {
      String ids =
          entries.subList(from, Math.min(entries.size(), from + MAX_ENTRIES)).stream()
              .map(String::valueOf)
              .collect(Collectors.joining(", ", " IN (", ")"));
      forEach(query + ids, action);
    }
  }
}
