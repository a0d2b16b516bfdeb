package ridgeproof.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import ridgeproof.corpus.fault.ImageChange;
import ridgeproof.examination.safecopy.PrintOrder;
import ridgeproof.imagery.GrayImage;

/** What in a whole image makes the finding of a rule. */
final class ImageFaults {

  private static final Set<String> MIRRORED = Set.of("RP-SEQ-020", "RP-SEQ-022", "RP-SEQ-023");
  private static final Set<String> UPSIDE_DOWN = Set.of("RP-SEQ-021", "RP-SEQ-024");
  private static final Set<String> INVERTED = Set.of("RP-IMG-037", "RP-IMG-051");
  private static final Set<String> ENLARGED = Set.of("RP-IMG-053");
  private static final Set<String> TWO_LEVELS = Set.of("RP-IMG-044");
  private static final Set<String> LINES_LOST = Set.of("RP-IMG-047");
  private static final Set<String> WRAPPED = Set.of("RP-IMG-048");
  private static final Set<String> ONE_LEVEL = Set.of("RP-IMG-033");

  /** Coding with loss evens out an enlargement: percent of repeated pixels, by attempt. */
  private static final int[] REPEATED = {0, 50, 100, 25, 75};

  private static final int HALF = 50;
  private static final int BETWEEN_RIDGE_AND_VALLEY = 150;
  private static final int WHITE = 255;

  private final PrintOrder order;
  private final Set<String> rules;

  ImageFaults(PrintOrder order) {
    this.order = order;
    this.rules = order.faults().values().stream().flatMap(Set::stream).collect(Collectors.toSet());
  }

  GrayImage in(GrayImage image) {
    GrayImage changed = image;
    for (UnaryOperator<GrayImage> edit : edits()) {
      changed = edit.apply(changed);
    }
    return changed;
  }

  private List<UnaryOperator<GrayImage>> edits() {
    List<UnaryOperator<GrayImage>> edits = new ArrayList<>();
    add(edits, ENLARGED, "enlarge", REPEATED[Math.min(order.attempt(), REPEATED.length - 1)]);
    add(edits, TWO_LEVELS, "two-levels", BETWEEN_RIDGE_AND_VALLEY);
    add(edits, WRAPPED, "wrap", HALF);
    add(edits, MIRRORED, "mirror");
    if (order.sideways()) {
      edits.add(ImageChange.edit("quarter", List.of()));
    } else {
      add(edits, UPSIDE_DOWN, "upside-down");
    }
    add(edits, LINES_LOST, "lines-lost", order.lostFrom());
    add(edits, INVERTED, "invert");
    add(edits, ONE_LEVEL, "even", WHITE);
    return edits;
  }

  private void add(
      List<UnaryOperator<GrayImage>> edits, Set<String> any, String edit, Integer... numbers) {
    if (rules.stream().anyMatch(any::contains)) {
      edits.add(ImageChange.edit(edit, List.of(numbers)));
    }
  }
}
