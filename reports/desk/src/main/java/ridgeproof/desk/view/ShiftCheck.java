package ridgeproof.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ridgeproof.desk.work.Examined;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.PixelStatistics;
import ridgeproof.imagery.platen.PlatenFacts;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.EntryPrint;
import ridgeproof.ledger.PlatenNote;
import ridgeproof.ledger.PrintMeasure;
import ridgeproof.ledger.health.StationFault;

/** Looks at the latest images of each station whose files are on the desk. */
public final class ShiftCheck {

  private static final int LATEST = 40;
  private static final int PARTS = PlatenFacts.LIGHT_PARTS * PlatenFacts.LIGHT_PARTS;
  private static final List<PrintMeasure> CURVES =
      List.of(PrintMeasure.GROUND, PrintMeasure.UNEVENNESS, PrintMeasure.RIDGE_PERIOD);

  private final Texts texts;

  public ShiftCheck(Texts texts) {
    this.texts = texts;
  }

  /** A file: what was found in it, and what a ledger would keep of it. */
  public record Shot(String station, Examined examined, Entry entry) {}

  /**
   * The page.
   *
   * @param shots in the order of arrival
   */
  public ShiftPage of(List<Shot> shots) {
    Map<String, List<Shot>> byStation =
        shots.stream()
            .filter(shot -> !shot.entry().prints().isEmpty())
            .collect(Collectors.groupingBy(Shot::station, TreeMap::new, Collectors.toList()));
    List<ShiftPage.Station> stations = new ArrayList<>();
    byStation.forEach((name, all) -> stations.add(station(name, latest(all))));
    return new ShiftPage(stations);
  }

  private static List<Shot> latest(List<Shot> shots) {
    return shots.subList(Math.max(0, shots.size() - LATEST), shots.size());
  }

  private ShiftPage.Station station(String name, List<Shot> shots) {
    List<ShiftPage.Platen> platens = platens(shots);
    List<String> warnings = new ArrayList<>();
    if (platens.stream().anyMatch(platen -> !platen.spots().isEmpty())) {
      warnings.add(StationFault.SPOT.title() + ". " + StationFault.SPOT.remedy());
    }
    if (platens.stream()
        .anyMatch(platen -> !platen.deadRows().isEmpty() || !platen.deadColumns().isEmpty())) {
      warnings.add(StationFault.DEAD_LINE.title() + ". " + StationFault.DEAD_LINE.remedy());
    }
    return new ShiftPage.Station(
        name,
        shots.size(),
        warnings,
        platens,
        CURVES.stream().flatMap(measure -> curve(measure, shots)).toList());
  }

  private List<ShiftPage.Platen> platens(List<Shot> shots) {
    Map<String, List<PlatenFacts>> bySize = new TreeMap<>();
    for (Shot shot : shots) {
      for (ExaminedImage image : shot.examined().report().images()) {
        image
            .pixels()
            .flatMap(PixelStatistics::platen)
            .filter(facts -> facts.width() > 0 && facts.height() > 0)
            .ifPresent(
                facts ->
                    bySize
                        .computeIfAbsent(
                            String.format(
                                Locale.ROOT, "%04d x %04d", facts.width(), facts.height()),
                            key -> new ArrayList<>())
                        .add(facts));
      }
    }
    return bySize.values().stream().map(this::platen).toList();
  }

  private ShiftPage.Platen platen(List<PlatenFacts> images) {
    PlatenFacts first = images.get(0);
    PlatenCheck check = new PlatenCheck(images.stream().map(PlatenNote::of).toList());
    List<Integer> light = IntStream.range(0, PARTS).mapToObj(part -> light(images, part)).toList();
    List<ShiftPage.Spot> spots = check.spots();
    List<Double> rows = check.deadRows();
    List<Double> columns = check.deadColumns();
    boolean few = images.size() < PlatenCheck.MIN_IMAGES;
    String words =
        few
            ? texts.of("shift.few", PlatenCheck.MIN_IMAGES)
            : spots.isEmpty() && rows.isEmpty() && columns.isEmpty()
                ? texts.of("shift.clean")
                : texts.of("shift.marked", spots.size(), rows.size() + columns.size());
    return new ShiftPage.Platen(
        texts.of(
            "shift.platen",
            millimeters(first.width()),
            millimeters(first.height()),
            texts.counted("shift.images", images.size())),
        images.size(),
        first.width(),
        first.height(),
        light,
        spots,
        rows,
        columns,
        words);
  }

  private static long millimeters(int cells) {
    return Math.round(cells * PlatenFacts.CELL_MM);
  }

  private static int light(List<PlatenFacts> images, int part) {
    return (int)
        Math.round(
            images.stream()
                .filter(facts -> facts.light().size() == PARTS)
                .mapToInt(facts -> facts.light().get(part))
                .filter(gray -> gray >= 0)
                .average()
                .orElse(-1));
  }

  private Stream<ShiftPage.Curve> curve(PrintMeasure measure, List<Shot> shots) {
    List<Double> values =
        shots.stream()
            .map(shot -> mean(measure, shot.entry()))
            .filter(OptionalDouble::isPresent)
            .map(OptionalDouble::getAsDouble)
            .toList();
    if (values.isEmpty()) {
      return Stream.empty();
    }
    String key = "shift.curve." + measure.column();
    String list =
        values.stream()
            .map(value -> String.format(Locale.ROOT, "%.4f", value))
            .collect(Collectors.joining(",", "[", "]"));
    return Stream.of(
        new ShiftPage.Curve(
            texts.of(key),
            texts.of(key + ".unit"),
            list,
            texts.of(
                "shift.curve.words",
                PlatenCheck.number(values.get(0)),
                PlatenCheck.number(values.get(values.size() - 1)))));
  }

  private static OptionalDouble mean(PrintMeasure measure, Entry entry) {
    return entry.prints().stream()
        .map(EntryPrint::measures)
        .filter(measures -> measures.containsKey(measure))
        .mapToDouble(measures -> measures.get(measure))
        .average();
  }
}
