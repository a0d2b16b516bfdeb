package ridgeproof.examination.facts;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.ridges.PrintAnalyzer;
import ridgeproof.ridges.segmentation.Segment.Doubt;
import ridgeproof.ridges.segmentation.SlapSegmenter;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.consistency.ImageRecordRow;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.Transaction;

/** Looks at the ridges of images for which fingers were laid down. */
public final class RidgeAnalyzer {

  private static final double WORKING_PPI = 500;

  /** What does not make it doubtful that there is a print of a fingertip. */
  private static final Set<Doubt> NO_DOUBT = Set.of(Doubt.PLACE_AMBIGUOUS, Doubt.CUT_AT_SIDE);

  private final SpecTables tables;
  private final int version;
  private final Positions positions;
  private final MissingFingers missing;
  private final double blankShare;

  public RidgeAnalyzer(Transaction transaction, SpecTables tables) {
    this.tables = tables;
    version = transaction.version();
    positions = new Positions(tables);
    missing = new MissingFingers(transaction, tables);
    blankShare = tables.pixelLimits().limit("blank-share").share();
  }

  /** How many pixels it will look at, at its own resolution; 0 where it will not look. */
  long workingPixels(ExaminedImage image, ImageHeader header) {
    if (fingers(image).isEmpty()) {
      return 0;
    }
    double scale = WORKING_PPI / image.density().get().meanPpi();
    return (long) (FileBudget.pixelsOf(image, header) * scale * scale);
  }

  /** Nothing for palms, for traces and for what shows nothing: other rules tell of those. */
  Optional<RidgeAnalysis> look(ExaminedImage image, GrayImage pixels, PixelStatistics facts) {
    List<FingerPosition> shown = fingers(image);
    if (shown.isEmpty() || !facts.showsPrint(blankShare)) {
      return Optional.empty();
    }
    double ppi = image.density().get().meanPpi();
    int surplus = surplusPrints(pixels, ppi, shown);
    PrintAnalyzer.Seen seen = seen(pixels, ppi, shown, surplus);
    return seen.fingers().isEmpty() && seen.slap().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new RidgeAnalysis(
                impression(image, image.position().getAsInt()),
                seen.fingers(),
                seen.slap(),
                surplus));
  }

  /**
   * Where more prints are there than are due, the name of each follows from its place among all.
   */
  private PrintAnalyzer.Seen seen(
      GrayImage pixels, double ppi, List<FingerPosition> shown, int surplus) {
    return surplus == 0
        ? PrintAnalyzer.analyse(pixels, ppi, shown, this::isMissing)
        : PrintAnalyzer.analyse(pixels, ppi, shown, finger -> false).without(this::isMissing);
  }

  /**
   * The fingers that the image is to show, from left to right; none where no ridges are measured.
   */
  private List<FingerPosition> fingers(ExaminedImage image) {
    boolean measured =
        image.layout().frictionRidge()
            && image.position().isPresent()
            && image.density().isPresent()
            && !positions.isTrace(image.impression());
    return measured && isPositionOf(image.layout(), image.position().getAsInt())
        ? FingerPosition.shownBy(image.position().getAsInt())
        : List.of();
  }

  /** A record of a palm that states a finger still shows a palm. */
  private boolean isPositionOf(ImageRecordRow layout, int code) {
    return layout
        .positions()
        .flatMap(field -> tables.layout(layout.type()).field(field, version))
        .flatMap(FieldRow::values)
        .map(rule -> rule.matches(Integer.toString(code), this::isListed))
        .orElse(true);
  }

  private boolean isListed(String table, String code) {
    return tables.codes(table).find(code).isPresent();
  }

  /** How many more prints are clearly there than fingers that are not declared missing. */
  private int surplusPrints(GrayImage pixels, double ppi, List<FingerPosition> shown) {
    long declared = shown.stream().filter(this::isMissing).count();
    if (shown.size() == 1 || declared == 0) {
      return 0;
    }
    long clear =
        SlapSegmenter.segment(pixels, ppi, shown).segments().stream()
            .filter(segment -> segment.box().isPresent())
            .filter(segment -> NO_DOUBT.containsAll(segment.doubts()))
            .count();
    return (int) Math.max(0, clear - (shown.size() - declared));
  }

  private boolean isMissing(FingerPosition finger) {
    return missing.of(finger.code()).isPresent();
  }

  /** Boxes 1 to 10 may hold plain prints; where nothing is said they hold rolls. */
  private Impression impression(ExaminedImage image, int code) {
    return FingerPosition.isRolledBox(code)
            && !positions.impressionKind(image.impression()).equals("plain")
        ? Impression.ROLLED
        : Impression.PLAIN;
  }
}
