package ridgeproof.spec.table;

/**
 * A table row that cannot be used. Tables are part of the build, so this is a defect of ours and
 * fails the build.
 */
public final class TableError extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public TableError(String table, long line, String column, String problem) {
    super(table + ", line " + line + ", column " + column + ": " + problem);
  }

  public TableError(String table, String problem) {
    super(table + ": " + problem);
  }
}
