package ridgeproof.ledger.bookkeeping;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.measure.GrayLevelStatistics;
import ridgeproof.imagery.platen.PlatenFacts;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.spec.layout.FingerPosition;

/** Takes of an image what the ledger keeps. */
final class Prints {

  private static final int MAX_POSITION = 99;
  private static final double DARK_SHARE = 0.1;

  /** What an encoder says of itself; the others are about the one image. */
  private static final List<String> ENCODER_FACTS =
      List.of("encoder number", "software number", "blocks", "process");

  private Prints() {}

  static EntryPrint of(ExaminedImage image, KeyedHash hash) {
    int position = known(image.position()).orElse(0);
    Map<Integer, Integer> scores = new TreeMap<>();
    image
        .ridges()
        .ifPresent(
            ridges ->
                ridges
                    .fingers()
                    .forEach((finger, seen) -> scores.put(finger.code(), seen.score().value())));
    return new EntryPrint(
        image.record().ordinal(),
        position,
        position >= 1 && FingerPosition.isRolledBox(position),
        image.data().map(hash::image).orElse(""),
        image.header().map(Prints::encoder).orElse(""),
        scores,
        measures(image),
        image.pixels().flatMap(PixelStatistics::platen).map(PlatenNote::of));
  }

  /** A longer number is no code, and could be anything. */
  static OptionalInt known(OptionalInt position) {
    return position.isPresent() && position.getAsInt() >= 0 && position.getAsInt() <= MAX_POSITION
        ? position
        : OptionalInt.empty();
  }

  private static String encoder(ImageHeader header) {
    return Stream.concat(
            Stream.of(header.format().name()),
            ENCODER_FACTS.stream()
                .filter(header.facts()::containsKey)
                .map(name -> name + " " + header.facts().get(name)))
        .collect(Collectors.joining(", "));
  }

  private static Map<PrintMeasure, Double> measures(ExaminedImage image) {
    Map<PrintMeasure, Double> measures = new EnumMap<>(PrintMeasure.class);
    image.compressionRatio().ifPresent(ratio -> measures.put(PrintMeasure.COMPRESSION, ratio));
    Optional<GrayLevelStatistics> print = image.pixels().flatMap(PixelStatistics::print);
    print.ifPresent(facts -> gray(facts, measures));
    print
        .flatMap(GrayLevelStatistics::ridges)
        .flatMap(ridges -> image.density().map(d -> ridges.millimetres(d.meanPpi())))
        .ifPresent(period -> measures.put(PrintMeasure.RIDGE_PERIOD, period));
    image.pixels().flatMap(PixelStatistics::platen).ifPresent(platen -> platen(platen, measures));
    return measures;
  }

  private static void gray(GrayLevelStatistics facts, Map<PrintMeasure, Double> measures) {
    facts
        .ground()
        .ifPresent(
            ground -> {
              measures.put(PrintMeasure.GROUND, (double) ground);
              if (facts.print().total() > 0) {
                measures.put(
                    PrintMeasure.CONTRAST, (double) ground - facts.print().quantile(DARK_SHARE));
              }
            });
  }

  private static void platen(PlatenFacts platen, Map<PrintMeasure, Double> measures) {
    platen.printWidthMm().ifPresent(width -> measures.put(PrintMeasure.WIDTH, width));
    platen.unevenness().ifPresent(gray -> measures.put(PrintMeasure.UNEVENNESS, gray));
    measures.put(PrintMeasure.GHOST, platen.ghostShare());
  }
}
