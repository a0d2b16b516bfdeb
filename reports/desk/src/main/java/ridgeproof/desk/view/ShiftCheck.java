package ridgeproof.desk.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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
import ridgeproof.ledger.Station;
import ridgeproof.ledger.health.HealthFinding;
import ridgeproof.ledger.health.LevelSeries;
import ridgeproof.ledger.health.StationFault;
import ridgeproof.ledger.health.StationHealth;

/**
 * Looks at what a ledger tells of the stations, and at the images of each station whose files are
 * on the desk: at all of them as at a ledger, at the latest also where they are few.
 */
public final class ShiftCheck {

  private static final int LATEST = 40;
  private static final int PARTS = PlatenFacts.LIGHT_PARTS * PlatenFacts.LIGHT_PARTS;
  private static final List<PrintMeasure> CURVES =
      List.of(
          PrintMeasure.GROUND,
          PrintMeasure.CONTRAST,
          PrintMeasure.UNEVENNESS,
          PrintMeasure.RIDGE_PERIOD);

  /** Gray levels between two parts of a bare platen that need nobody's attention; from memory. */
  private static final int MAX_UNEVEN = 12;

  private final Texts texts;
  private final StationFaults faults;

  public ShiftCheck(Texts texts) {
    this.texts = texts;
    this.faults = new StationFaults(texts);
  }

  /** A file: what was found in it, and what a ledger would keep of it. */
  public record Shot(String station, Examined examined, Entry entry) {}

  /**
   * The page.
   *
   * @param ledger what it tells; empty without one, and empty within where it cannot be read
   * @param shots in the order of arrival
   */
  public ShiftPage of(Optional<Optional<StationHealth>> ledger, List<Shot> shots) {
    Map<String, List<Shot>> byStation =
        shots.stream()
            .filter(shot -> !shot.entry().prints().isEmpty())
            .sorted(Comparator.comparing(shot -> shot.entry().day()))
            .collect(Collectors.groupingBy(Shot::station, TreeMap::new, Collectors.toList()));
    Map<String, List<Entry>> entries = new TreeMap<>();
    byStation.forEach((name, all) -> entries.put(name, all.stream().map(Shot::entry).toList()));
    StationHealth health = StationHealth.of(entries);
    List<ShiftPage.Station> stations = new ArrayList<>();
    byStation.forEach((name, all) -> stations.add(station(name, all, findings(health, name))));
    return new ShiftPage(ledger.map(faults::fromLedger), stations);
  }

  private static List<HealthFinding> findings(StationHealth health, String name) {
    String shown = new Station(name, "", "").name();
    return health.findings().stream().filter(finding -> finding.station().equals(shown)).toList();
  }

  private static List<Shot> latest(List<Shot> shots) {
    return shots.subList(Math.max(0, shots.size() - LATEST), shots.size());
  }

  private ShiftPage.Station station(String name, List<Shot> all, List<HealthFinding> found) {
    List<Shot> shots = latest(all);
    List<ShiftPage.Platen> platens = platens(shots);
    Set<StationFault> known = found.stream().map(HealthFinding::fault).collect(Collectors.toSet());
    List<String> warnings = new ArrayList<>();
    if (!known.contains(StationFault.SPOT)
        && platens.stream().anyMatch(platen -> !platen.spots().isEmpty())) {
      warnings.add(warning(StationFault.SPOT.title(), StationFault.SPOT));
    }
    if (!known.contains(StationFault.DEAD_LINE)
        && platens.stream()
            .anyMatch(platen -> !platen.deadRows().isEmpty() || !platen.deadColumns().isEmpty())) {
      warnings.add(warning(StationFault.DEAD_LINE.title(), StationFault.DEAD_LINE));
    }
    if (!known.contains(StationFault.LIGHT)
        && platens.stream().anyMatch(ShiftPage.Platen::uneven)) {
      warnings.add(warning(texts.of("shift.uneven", MAX_UNEVEN), StationFault.LIGHT));
    }
    return new ShiftPage.Station(
        name,
        all.size(),
        found.stream().map(faults::fault).toList(),
        warnings,
        drift(all.size(), found),
        platens,
        CURVES.stream().flatMap(measure -> curve(measure, shots)).toList());
  }

  private static String warning(String title, StationFault fault) {
    return title + ". " + fault.remedy();
  }

  private String drift(int files, List<HealthFinding> found) {
    return files < StationHealth.MIN_PEOPLE_FOR_A_CHANGE
        ? texts.of("shift.drift.few", StationHealth.MIN_PEOPLE_FOR_A_CHANGE)
        : found.stream().anyMatch(finding -> finding.evidence() instanceof LevelSeries)
            ? ""
            : texts.of("shift.drift.none");
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
    boolean uneven = !few && unevenness(light) > MAX_UNEVEN;
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
        uneven,
        spots,
        rows,
        columns,
        words);
  }

  private static int unevenness(List<Integer> light) {
    IntSummaryStatistics seen =
        light.stream().mapToInt(Integer::intValue).filter(gray -> gray >= 0).summaryStatistics();
    return seen.getCount() < 2 ? 0 : seen.getMax() - seen.getMin();
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
    return Stream.of(
        new ShiftPage.Curve(
            texts.of(key),
            texts.of(key + ".unit"),
            StationFaults.numbers(values),
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
