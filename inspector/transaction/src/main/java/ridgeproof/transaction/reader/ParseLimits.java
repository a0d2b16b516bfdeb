package ridgeproof.transaction.reader;

/**
 * How much of a file is read; past a limit there is a finding.
 *
 * @param maxBytes bytes of a file
 * @param maxRecords records of a file
 * @param maxItems information items of a file, since each costs memory
 * @param maxFindings findings kept, since a damaged file could bring millions
 */
public record ParseLimits(int maxBytes, int maxRecords, int maxItems, int maxFindings) {

  /** 512 MiB, 10,000 records, 1,000,000 items, 10,000 findings. */
  public static ParseLimits standard() {
    return new ParseLimits(512 * 1024 * 1024, 10_000, 1_000_000, 10_000);
  }
}
