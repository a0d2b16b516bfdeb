package ridgeproof.examination.comparison;

import java.util.List;
import java.util.Optional;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * How a second transaction differs from a first.
 *
 * @param depth how deep both were looked at
 * @param ignored the fields whose differences do not count
 * @param sameBytes whether the files are the same byte for byte
 * @param pairs in the order of the first
 * @param removed records that only the first has
 * @param added records that only the second has
 * @param changes which findings are resolved, still present and new
 * @param fingers each finger before and after
 * @param personDoubt prints and biographic data that do not go together
 * @param secondRefersToFirst whether 1.010 of the second names 1.009 of the first
 * @param firstRefersToSecond whether 1.010 of the first names 1.009 of the second
 */
public record TransactionComparison(
    FindingsReport first,
    FindingsReport second,
    Depth depth,
    IgnoredFields ignored,
    boolean sameBytes,
    List<RecordPair> pairs,
    List<LogicalRecord> removed,
    List<LogicalRecord> added,
    FindingChanges changes,
    List<FingerChange> fingers,
    Optional<PersonDoubt> personDoubt,
    boolean secondRefersToFirst,
    boolean firstRefersToSecond) {

  private static final int CONTROL_NUMBER = 9;
  private static final int CONTROL_REFERENCE = 10;

  /** Compares two transactions as deep as both were examined. */
  public static TransactionComparison of(
      FindingsReport first,
      FindingsReport second,
      ImageExtraction extraction,
      IgnoredFields ignored) {
    Depth depth = first.depth().compareTo(second.depth()) < 0 ? first.depth() : second.depth();
    RecordPairing pairing = new RecordPairing(first, second);
    List<RecordPair> pairs =
        new PairComparison(first, second, extraction, ignored, depth).of(pairing);
    boolean sameBytes =
        first.transaction().source().asBuffer().equals(second.transaction().source().asBuffer());
    return new TransactionComparison(
        first,
        second,
        depth,
        ignored,
        sameBytes,
        pairs,
        pairing.removed(),
        pairing.added(),
        FindingChanges.of(first, second, pairing),
        FingerChange.of(first, second, pairs),
        sameBytes ? Optional.empty() : PersonDoubt.of(first, second, pairs),
        refers(second.transaction(), first.transaction()),
        refers(first.transaction(), second.transaction()));
  }

  /** Whether nothing that counts differs. */
  public boolean same() {
    return sameBytes
        || removed.isEmpty()
            && added.isEmpty()
            && pairs.stream().noneMatch(RecordPair::differs)
            && !first.transaction().records().isEmpty();
  }

  /** What the second comes to beside the first. */
  public ComparisonOutcome outcome() {
    return ComparisonOutcome.of(same(), first.verdict(), second.verdict(), changes);
  }

  private static boolean refers(Transaction later, Transaction earlier) {
    Optional<String> named = later.header().flatMap(header -> header.text(CONTROL_REFERENCE));
    return named.isPresent()
        && named.equals(earlier.header().flatMap(header -> header.text(CONTROL_NUMBER)));
  }
}
