package ridgeproof.examination.comparison;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.ExaminedImage;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.ImageExtraction;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.transaction.LogicalRecord;
import ridgeproof.transaction.Transaction;

/**
 * What a second transaction has otherwise than a first. Whether two images show the same finger is
 * not looked at.
 *
 * @param sameBytes whether the files are the same byte for byte
 * @param removed records that only the first has
 * @param added records that only the second has
 * @param gained findings that only the second has
 * @param lost findings that only the first has
 * @param secondRefersToFirst whether 1.010 of the second names 1.009 of the first
 * @param firstRefersToSecond whether 1.010 of the first names 1.009 of the second
 */
public record TransactionComparison(
    FindingsReport first,
    FindingsReport second,
    boolean sameBytes,
    List<RecordPair> pairs,
    List<LogicalRecord> removed,
    List<LogicalRecord> added,
    List<Finding> gained,
    List<Finding> lost,
    boolean secondRefersToFirst,
    boolean firstRefersToSecond) {

  private static final int CONTROL_NUMBER = 9;
  private static final int CONTROL_REFERENCE = 10;

  /** What makes a finding the same in both: all but its byte offsets and its record's ordinal. */
  private record Essence(String rule, String place, String observed, String required) {

    static Essence of(Finding finding) {
      Location at = finding.location();
      return new Essence(
          finding.ruleId(),
          List.of(at.recordType(), at.idc(), at.field(), at.subfield(), at.item(), at.position())
              .toString(),
          finding.observed().text(),
          finding.required());
    }
  }

  /** Compares two examined transactions. */
  public static TransactionComparison of(
      FindingsReport first,
      FindingsReport second,
      ImageExtraction extraction,
      IgnoredFields ignored) {
    RecordPairing pairing = new RecordPairing(first, second);
    Set<Integer> moved = pairing.moved();
    ImageComparison images = new ImageComparison(extraction);
    Map<Integer, ExaminedImage> firstImages = first.imagesByRecord();
    Map<Integer, ExaminedImage> secondImages = second.imagesByRecord();
    List<RecordPair> pairs = new ArrayList<>();
    for (RecordPairing.Pair pair : pairing.pairs()) {
      Optional<ExaminedImage> left = Optional.ofNullable(firstImages.get(pair.first().ordinal()));
      Optional<ExaminedImage> right =
          Optional.ofNullable(secondImages.get(pair.second().ordinal()));
      pairs.add(
          new RecordPair(
              pair.first(),
              pair.second(),
              moved.contains(pair.first().ordinal()),
              FieldComparison.of(pair.first(), pair.second(), ignored),
              left.flatMap(image -> right.flatMap(other -> images.of(image, other)))));
    }
    return new TransactionComparison(
        first,
        second,
        first.transaction().source().asBuffer().equals(second.transaction().source().asBuffer()),
        List.copyOf(pairs),
        pairing.removed(),
        pairing.added(),
        without(second.findings(), first.findings()),
        without(first.findings(), second.findings()),
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
    Map<Essence, Integer> known = new HashMap<>();
    others.forEach(finding -> known.merge(Essence.of(finding), 1, Integer::sum));
    List<Finding> without = new ArrayList<>();
    for (Finding finding : findings) {
      Essence essence = Essence.of(finding);
      if (known.getOrDefault(essence, 0) > 0) {
        known.merge(essence, -1, Integer::sum);
      } else {
        without.add(finding);
      }
    }
    return List.copyOf(without);
  }

  private static boolean refers(Transaction later, Transaction earlier) {
    Optional<String> named = later.header().flatMap(header -> header.text(CONTROL_REFERENCE));
    return named.isPresent()
        && named.equals(earlier.header().flatMap(header -> header.text(CONTROL_NUMBER)));
  }
}
