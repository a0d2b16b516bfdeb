package ridgeproof.examination.safecopy;

import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.imagery.standin.StandInImages;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.transaction.record.ByteSource;
import ridgeproof.transaction.record.Field;

/**
 * Orders prints of nobody in the place of those of the original, and remembers for each of them how
 * strong its faults have to be to show as they did.
 */
final class StandIns {

  /** As many times the artist is asked before an image stays blank. */
  static final int ATTEMPTS = 5;

  private static final String OF_IMAGES = "RP-(IMG|RDG|SEQ)-.*";
  private static final Set<String> OF_SCALE =
      Set.of("RP-IMG-039", "RP-IMG-040", "RP-IMG-052", "RP-RDG-013");
  private static final String PRESENT_AFTER_ALL = "RP-TXN-005";
  private static final String NOT_FOUND = "RP-RDG-020";
  private static final String SIDEWAYS = "RP-SEQ-025";
  private static final String NOT_UPRIGHT = "RP-SEQ-024";
  private static final String QUARTER = "90 degrees";
  private static final int USUAL_PPI = 500;

  /** The mean over adult fingers (common practice). */
  private static final double USUAL_RIDGE_INCHES = 0.46 / 25.4;

  /** What became of the record of an image with each number of attempts. */
  private static final class Trials {
    private int attempt;
    private int best;
    private int fewest = Integer.MAX_VALUE;
  }

  private final FindingsReport original;
  private final Function<PrintOrder, Optional<GrayImage>> artist;
  private final DeidentifiedWriter writer;
  private final ShownFingers fingers;
  private final Map<Integer, ExaminedImage> images;
  private final Map<Integer, Trials> trials = new HashMap<>();
  private final Map<List<Integer>, Optional<byte[]>> made = new HashMap<>();

  StandIns(
      FindingsReport original,
      Function<PrintOrder, Optional<GrayImage>> artist,
      DeidentifiedWriter writer) {
    this.original = original;
    this.artist = artist;
    this.writer = writer;
    this.fingers = ShownFingers.of(original);
    this.images = original.imagesByRecord();
  }

  /**
   * Takes note of how far the copy was from the original, and tries what is next.
   *
   * @param faults by record, of those that differ
   * @return whether anything is left to try
   */
  boolean learn(Map<Integer, Integer> faults) {
    boolean more = false;
    for (int ordinal : images.keySet()) {
      Trials trial = trials.computeIfAbsent(ordinal, key -> new Trials());
      int found = faults.getOrDefault(ordinal, 0);
      if (found < trial.fewest) {
        trial.fewest = found;
        trial.best = trial.attempt;
      }
      if (found > 0 && trial.attempt < ATTEMPTS && isDrawable(images.get(ordinal))) {
        trial.attempt++;
        more = true;
      }
    }
    return more;
  }

  /**
   * Goes back to the attempt of each record that came closest.
   *
   * @return whether that is another copy than the last
   */
  boolean settle() {
    boolean other = trials.values().stream().anyMatch(trial -> trial.attempt != trial.best);
    trials.values().forEach(trial -> trial.attempt = trial.best);
    return other;
  }

  private int attempt(int ordinal) {
    return trials.containsKey(ordinal) ? trials.get(ordinal).attempt : 0;
  }

  /** The bytes in the place of the image of a record; empty where it has to be blank. */
  Optional<byte[]> of(int ordinal) {
    ExaminedImage image = images.get(ordinal);
    if (image == null || attempt(ordinal) >= ATTEMPTS || !isDrawable(image)) {
      return Optional.empty();
    }
    ExaminedImage first = firstOf(image);
    return made.computeIfAbsent(
        List.of(first.record().ordinal(), attempt(first.record().ordinal())), key -> draw(first));
  }

  /** What was the same image twice becomes the same drawing twice. */
  private ExaminedImage firstOf(ExaminedImage image) {
    return original.images().stream()
        .filter(other -> bytes(other).equals(bytes(image)) && isDrawable(other))
        .findFirst()
        .orElse(image);
  }

  private static Optional<ByteBuffer> bytes(ExaminedImage image) {
    return image.data().map(ByteSource::asBuffer);
  }

  private static boolean isDrawable(ExaminedImage image) {
    return image.layout().frictionRidge()
        && image.positions().size() == 1
        && image.pixels().isPresent()
        && DeidentifiedWriter.isSound(image);
  }

  private Optional<byte[]> draw(ExaminedImage image) {
    int position = image.positions().get(0);
    boolean rolled =
        image
            .ridges()
            .map(facts -> facts.impression() == Impression.ROLLED)
            .orElse(FingerPosition.isRolledBox(position));
    Map<Integer, Set<String>> faults = faults(image);
    PrintOrder order =
        new PrintOrder(
            position,
            rolled,
            image.pixels().orElseThrow().width(),
            image.pixels().orElseThrow().height(),
            ppiOfRidges(image, faults),
            isSideways(image),
            lostFrom(image),
            missing(),
            rolled ? fingers.rolls() : fingers.plains(),
            rolled ? fingers.strangers() : Set.of(),
            faults,
            writer.seedOfPrints(),
            attempt(image.record().ordinal()));
    return artist
        .apply(order)
        .flatMap(
            picture ->
                image.record().fields().stream()
                    .filter(Field::isData)
                    .findFirst()
                    .flatMap(
                        field ->
                            StandInImages.inPlaceOf(
                                image.record().dataOf(field),
                                writer.blank(image.record(), field),
                                image.statedFormat().orElse(ImageFormat.RAW),
                                image.bitsPerPixel().orElse(0),
                                picture)));
  }

  /** Annotated as missing, unless it is in the image all the same; or not found in it. */
  private Set<Integer> missing() {
    Set<Integer> missing = new HashSet<>(original.missingFingers());
    missing.removeAll(positionsOf(PRESENT_AFTER_ALL));
    missing.addAll(positionsOf(NOT_FOUND));
    return missing;
  }

  private Set<Integer> positionsOf(String rule) {
    return original.everyFinding().stream()
        .filter(finding -> finding.ruleId().equals(rule))
        .flatMap(finding -> finding.location().position().stream().boxed())
        .collect(Collectors.toSet());
  }

  private boolean isSideways(ExaminedImage image) {
    return original.everyFinding().stream()
        .filter(finding -> concerns(finding, image))
        .anyMatch(
            finding ->
                finding.ruleId().equals(SIDEWAYS)
                    || finding.ruleId().equals(NOT_UPRIGHT)
                        && finding.observed().text().contains(QUARTER));
  }

  /** In percent of its height. */
  private static int lostFrom(ExaminedImage image) {
    return image
        .print()
        .map(GrayLevelStatistics::emptyBand)
        .filter(band -> band.rows() > 0)
        .map(band -> 100 * band.top() / image.pixels().orElseThrow().height())
        .orElse(0);
  }

  private static boolean concerns(Finding finding, ExaminedImage image) {
    int ordinal = image.record().ordinal();
    return finding.location().record().orElse(ordinal) == ordinal;
  }

  private static int ppiOfRidges(ExaminedImage image, Map<Integer, Set<String>> faults) {
    boolean contradicted =
        faults.values().stream().flatMap(Set::stream).anyMatch(OF_SCALE::contains);
    double ppi =
        image
            .print()
            .flatMap(GrayLevelStatistics::ridges)
            .filter(ridges -> contradicted)
            .map(ridges -> ridges.pixels() / USUAL_RIDGE_INCHES)
            .orElse(image.density().map(PixelDensity::meanPpi).orElse((double) USUAL_PPI));
    return (int) Math.round(ppi);
  }

  /** What is said of the file as a whole is true of each image. */
  private Map<Integer, Set<String>> faults(ExaminedImage image) {
    Map<Integer, Set<String>> faults = new HashMap<>();
    for (Finding finding : original.unexplained()) {
      if (finding.ruleId().matches(OF_IMAGES) && concerns(finding, image)) {
        int position = finding.location().position().orElse(0);
        int finger =
            position == image.positions().get(0) && !FingerPosition.isRolledBox(position)
                ? 0
                : position;
        faults.computeIfAbsent(finger, key -> new TreeSet<>()).add(finding.ruleId());
      }
    }
    return faults;
  }
}
