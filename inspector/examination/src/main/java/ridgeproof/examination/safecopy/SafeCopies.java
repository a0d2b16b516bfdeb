package ridgeproof.examination.safecopy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.finding.Location;
import ridgeproof.transaction.record.ByteSource;

/**
 * Makes copies of transactions that strangers may have: the layout and, as far as can be, the
 * findings are those of the original, while particulars are made up and images blank. The same
 * original gives the same copy.
 */
public final class SafeCopies {

  /** A value that loses a finding is made up anew so often. */
  private static final int MOST_ATTEMPTS = 12;

  private final Examiner examiner;
  private final ExaminationOptions options;

  /**
   * @param options as the original was examined
   */
  public SafeCopies(Examiner examiner, ExaminationOptions options) {
    this.examiner = examiner;
    this.options = options;
  }

  public SafeCopy of(FindingsReport original) {
    ByteSource source = original.transaction().source();
    ExaminationOptions quick = options.withDepth(Depth.STRUCTURE);
    boolean opened = original.depth() != Depth.STRUCTURE;
    FindingsReport whole =
        opened ? original : examiner.examine(source, options.withDepth(Depth.IMAGES));
    FindingsReport structure = opened ? examiner.examine(source, quick) : original;
    byte[] bytes = closest(new CopyWriter(whole), structure, quick);
    FindingsReport copy = examiner.examine(ByteSource.of(bytes), options);
    return new SafeCopy(
        ByteSource.of(bytes),
        FindingChange.missing(original, copy),
        FindingChange.missing(copy, original));
  }

  /** Of several attempts the one that changes the fewest findings. */
  private byte[] closest(CopyWriter writer, FindingsReport original, ExaminationOptions quick) {
    Map<CopyWriter.Place, Integer> attempts = new HashMap<>();
    byte[] best = new byte[0];
    int fewest = Integer.MAX_VALUE;
    for (int i = 0; i < MOST_ATTEMPTS && fewest > 0; i++) {
      byte[] bytes = writer.write(attempts);
      FindingsReport copy = examiner.examine(ByteSource.of(bytes), quick);
      List<FindingChange> changes =
          Stream.of(FindingChange.missing(original, copy), FindingChange.missing(copy, original))
              .flatMap(List::stream)
              .toList();
      if (changes.size() < fewest) {
        fewest = changes.size();
        best = bytes;
      }
      placesOf(changes).forEach(place -> attempts.merge(place, 1, Integer::sum));
    }
    return best;
  }

  private static Set<CopyWriter.Place> placesOf(List<FindingChange> changes) {
    return changes.stream()
        .map(change -> change.finding().location())
        .filter(place -> place.record().isPresent() && place.field().isPresent())
        .map(SafeCopies::placeOf)
        .collect(Collectors.toSet());
  }

  private static CopyWriter.Place placeOf(Location place) {
    return new CopyWriter.Place(place.record().getAsInt(), place.field().orElseThrow().field());
  }
}
