package ridgeproof.examination.comparison;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.cause.Repetitions;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.LogicalRecord;

/**
 * What a second transaction has otherwise than a first.
 *
 * @param depth how deep both were looked at
 * @param ignored the fields whose differences do not count
 * @param sameBytes whether the files are the same byte for byte
 * @param pairs in the order of the first
 * @param removed records that only the first has
 * @param added records that only the second has
 * @param gained findings that only the second has
 * @param lost findings that only the first has
 * @param kept how many findings both have
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
    List<Finding> gained,
    List<Finding> lost,
    int kept,
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
    List<Finding> lost = without(first.unexplained(), second.unexplained());
    return new TransactionComparison(
        first,
        second,
        depth,
        ignored,
        first.transaction().source().asBuffer().equals(second.transaction().source().asBuffer()),
        new PairComparison(first, second, extraction, ignored, depth).of(pairing),
        pairing.removed(),
        pairing.added(),
        Repetitions.gathered(without(second.unexplained(), first.unexplained())),
        Repetitions.gathered(lost),
        Repetitions.gathered(without(first.unexplained(), lost)).size(),
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

  /** The findings that others do not have, each of them counted. */
  private static List<Finding> without(List<Finding> findings, List<Finding> others) {
    Map<FindingEssence, Integer> known = new HashMap<>();
    others.forEach(finding -> known.merge(FindingEssence.of(finding), 1, Integer::sum));
    return findings.stream()
        .filter(finding -> known.merge(FindingEssence.of(finding), -1, Integer::sum) < 0)
        .toList();
  }

  private static boolean refers(Transaction later, Transaction earlier) {
    Optional<String> named = later.header().flatMap(header -> header.text(CONTROL_REFERENCE));
    return named.isPresent()
        && named.equals(earlier.header().flatMap(header -> header.text(CONTROL_NUMBER)));
  }
}
