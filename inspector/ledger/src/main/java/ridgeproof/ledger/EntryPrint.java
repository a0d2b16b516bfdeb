package ridgeproof.ledger;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A friction ridge image without its pixels.
 *
 * @param record ordinal of the record
 * @param position friction ridge position code, 0 where none is stated
 * @param rolled whether it is filed as a rolled print
 * @param image keyed hash of the bytes of the image, to tell whether it was captured again
 * @param encoder what the codestream says of the program that wrote it
 * @param scores 0 to 100, by the position code of the finger; empty where ridges were not examined
 * @param measures those that were taken
 * @param platen what is seen of the platen, where it was measured
 */
public record EntryPrint(
    int record,
    int position,
    boolean rolled,
    String image,
    String encoder,
    Map<Integer, Integer> scores,
    Map<PrintMeasure, Double> measures,
    Optional<PlatenNote> platen) {

  public EntryPrint {
    scores = Map.copyOf(scores);
    Map<PrintMeasure, Double> copy = new EnumMap<>(PrintMeasure.class);
    copy.putAll(measures);
    measures = copy;
  }
}
