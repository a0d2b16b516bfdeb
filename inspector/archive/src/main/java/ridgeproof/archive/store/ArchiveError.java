package ridgeproof.archive.store;

/** An archive that cannot be used, in words for the user. */
public final class ArchiveError extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public ArchiveError(String message) {
    super(message);
  }
}
