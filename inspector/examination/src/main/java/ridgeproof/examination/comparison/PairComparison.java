package ridgeproof.examination.comparison;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.rules.ridges.MatchLimits;
import ridgeproof.ridges.matching.SequenceLimits;
import ridgeproof.transaction.record.ByteRange;
import ridgeproof.transaction.record.LogicalRecord;

/** Compares the records that were paired: fields, then images, then the ridges in them. */
final class PairComparison {

  private final Map<Integer, ExaminedImage> firstImages;
  private final Map<Integer, ExaminedImage> secondImages;
  private final IgnoredFields ignored;
  private final Depth depth;
  private final ImageComparison images;
  private final TransactionPrints firstPrints;
  private final TransactionPrints secondPrints;
  private final SequenceLimits limits;

  PairComparison(
      FindingsReport first,
      FindingsReport second,
      ImageExtraction extraction,
      IgnoredFields ignored,
      Depth depth) {
    this.firstImages = first.imagesByRecord();
    this.secondImages = second.imagesByRecord();
    this.ignored = ignored;
    this.depth = depth;
    this.images = new ImageComparison(extraction, depth != Depth.STRUCTURE);
    this.firstPrints = new TransactionPrints(first, extraction);
    this.secondPrints = new TransactionPrints(second, extraction);
    this.limits = MatchLimits.usual(first.tables());
  }

  List<RecordPair> of(RecordPairing pairing) {
    Set<Integer> moved = pairing.moved();
    List<RecordPair> pairs =
        pairing.pairs().parallelStream()
            .map(pair -> compared(pair, moved.contains(pair.first().ordinal())))
            .toList();
    if (depth != Depth.RIDGES) {
      return pairs;
    }
    List<RecordPair> asking = pairs.stream().filter(this::asksForFingers).toList();
    firstPrints.measure(asking.stream().map(this::left).toList());
    secondPrints.measure(asking.stream().map(this::right).toList());
    FingerComparator question = new FingerComparator(firstPrints, secondPrints, limits);
    return pairs.stream()
        .map(
            pair ->
                asksForFingers(pair) ? pair.with(question.answer(left(pair), right(pair))) : pair)
        .toList();
  }

  private ExaminedImage left(RecordPair pair) {
    return firstImages.get(pair.first().ordinal());
  }

  private ExaminedImage right(RecordPair pair) {
    return secondImages.get(pair.second().ordinal());
  }

  private RecordPair compared(RecordPairing.Pair pair, boolean moved) {
    Optional<ExaminedImage> left = Optional.ofNullable(firstImages.get(pair.first().ordinal()));
    Optional<ExaminedImage> right = Optional.ofNullable(secondImages.get(pair.second().ordinal()));
    return new RecordPair(
        pair.first(),
        pair.second(),
        moved,
        !unread(pair.first()).equals(unread(pair.second())),
        FieldComparison.of(pair.first(), pair.second(), ignored, left.isPresent()),
        left.flatMap(image -> right.flatMap(other -> images.of(image, other))),
        left.filter(image -> !TransactionPrints.named(image).isEmpty()).isPresent(),
        Optional.empty());
  }

  /** Bytes that belong to no field, each as one character. */
  private static String unread(LogicalRecord record) {
    StringBuilder unread = new StringBuilder();
    for (ByteRange range : record.unread()) {
      unread.append(
          record.bytes().latin1(range.offset() - record.bytes().origin(), range.length()));
    }
    return unread.toString();
  }

  private boolean asksForFingers(RecordPair pair) {
    boolean otherPixels =
        pair.image()
            .filter(
                image ->
                    image instanceof ImageDifference.DifferentPixels pixels
                            && !pixels.isSameCapture()
                        || image instanceof ImageDifference.DifferentSize)
            .isPresent();
    return otherPixels && left(pair).layout().frictionRidge();
  }
}
