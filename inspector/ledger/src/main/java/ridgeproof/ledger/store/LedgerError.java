package ridgeproof.ledger.store;

import java.sql.SQLException;

/** A ledger that cannot be opened, read or written, in words for the user. */
public final class LedgerError extends RuntimeException {

  private static final long serialVersionUID = 1L;

  LedgerError(String message) {
    super(message);
  }

  /** The words of a driver may hold values, its state holds none. */
  static LedgerError of(String what, SQLException cause) {
    return new LedgerError(
        what + " (database error " + cause.getSQLState() + ", " + cause.getErrorCode() + ")");
  }
}
