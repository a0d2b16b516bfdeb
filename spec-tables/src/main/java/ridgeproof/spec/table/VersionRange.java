package ridgeproof.spec.table;

/**
 * Versions of the standard for which a row holds, by the number of field 1.002: 200 to 502.
 *
 * @param since first version, 0 for no bound
 * @param until last version, {@link Integer#MAX_VALUE} for no bound
 */
public record VersionRange(int since, int until) {

  /** Every version. */
  public static final VersionRange ALL = new VersionRange(0, Integer.MAX_VALUE);

  public VersionRange {
    if (since > until) {
      throw new IllegalArgumentException("since " + since + " is after until " + until);
    }
  }

  public boolean contains(int version) {
    return version >= since && version <= until;
  }

  public boolean overlaps(VersionRange other) {
    return since <= other.until && other.since <= until;
  }
}
