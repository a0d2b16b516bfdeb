package ridgeproof.examination.safecopy;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis.Impression;
import ridgeproof.finding.Finding;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.PixelDensity;
import ridgeproof.imagery.standin.StandInImages;
import ridgeproof.ridges.matching.FingerMatchResult;

/**
 * Orders prints of nobody in the place of those of the original, and remembers what became of it.
 */
final class StandIns {

  /**
   * What only a drawing can show again; whatever else is found of an image is kept with its bytes.
   */
  private static final List<String> DRAWN = List.of("RP-RDG-", "RP-SEQ-", "RP-TXN-", "RP-IMG-03");

  private final FindingsReport original;
  private final Function<PrintOrder, Optional<GrayImage>> artist;
  private final long seed;
  private final Map<Integer, ExaminedImage> images;
  private final Map<Integer, Integer> attempts = new HashMap<>();
  private final Set<Integer> blank = new HashSet<>();
  private final Map<List<Integer>, Optional<byte[]>> made = new HashMap<>();

  StandIns(FindingsReport original, Function<PrintOrder, Optional<GrayImage>> artist, long seed) {
    this.original = original;
    this.artist = artist;
    this.seed = seed;
    this.images = original.imagesByRecord();
  }

  /** The faults of this record did not show. */
  void tryHarder(int ordinal) {
    attempts.merge(ordinal, 1, Integer::sum);
  }

  /** A drawing of this record makes matters worse. */
  void leaveBlank(int ordinal) {
    blank.add(ordinal);
  }

  /** The bytes in the place of the image of a record; empty where it has to be blank. */
  Optional<byte[]> of(int ordinal) {
    ExaminedImage image = images.get(ordinal);
    return image == null || blank.contains(ordinal) || !isDrawable(image)
        ? Optional.empty()
        : made.computeIfAbsent(
            List.of(ordinal, attempts.getOrDefault(ordinal, 0)), key -> draw(image));
  }

  private boolean isDrawable(ExaminedImage image) {
    return image.layout().frictionRidge()
        && image.positions().size() == 1
        && image.pixels().isPresent()
        && image.decodingDefects().isEmpty()
        && image.header().filter(header -> header.defects().isEmpty()).isPresent()
        && original.everyFinding().stream()
            .filter(f -> f.location().record().orElse(0) == image.record().ordinal())
            .filter(f -> f.location().field().isEmpty())
            .allMatch(f -> DRAWN.stream().anyMatch(f.ruleId()::startsWith));
  }

  private Optional<byte[]> draw(ExaminedImage image) {
    int ppi =
        image
            .density()
            .map(PixelDensity::horizontalPpi)
            .map(Math::round)
            .map(Long::intValue)
            .orElse(500);
    boolean rolled =
        image
            .ridges()
            .map(facts -> facts.impression() == Impression.ROLLED)
            .orElse(image.positions().get(0) <= 10);
    int ordinal = image.record().ordinal();
    PrintOrder order =
        new PrintOrder(
            image.positions().get(0),
            rolled,
            image.pixels().orElseThrow().width(),
            image.pixels().orElseThrow().height(),
            ppi,
            original.missingFingers(),
            rolled ? Map.of() : exchanged(),
            faults(image),
            seed,
            attempts.getOrDefault(ordinal, 0));
    return artist
        .apply(order)
        .flatMap(picture -> StandInImages.inPlaceOf(image.data().orElseThrow(), picture, ppi));
  }

  /** The finger that each plain print is of, where it is of another than it is called. */
  private Map<Integer, Integer> exchanged() {
    Map<Integer, Integer> shown = new HashMap<>();
    original
        .sequence()
        .ifPresent(
            sequence ->
                sequence.answers().answers().stream()
                    .filter(answer -> answer.verdict() == FingerMatchResult.Verdict.CONTRADICTED)
                    .forEach(
                        answer ->
                            answer
                                .other()
                                .ifPresent(o -> shown.put(answer.position().code(), o.code()))));
    return shown;
  }

  private Map<Integer, Set<String>> faults(ExaminedImage image) {
    Map<Integer, Set<String>> faults = new HashMap<>();
    for (Finding finding : original.everyFinding()) {
      if (finding.location().record().orElse(0) == image.record().ordinal()) {
        int position = finding.location().position().orElse(0);
        int finger = position == image.positions().get(0) && position > 10 ? 0 : position;
        faults.computeIfAbsent(finger, key -> new TreeSet<>()).add(finding.ruleId());
      }
    }
    return faults;
  }
}
