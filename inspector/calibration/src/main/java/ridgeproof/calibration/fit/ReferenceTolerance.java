package ridgeproof.calibration.fit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.ridges.quality.QualityMetric;
import ridgeproof.ridges.quality.QualityMetric.Unit;

/**
 * Widens limits that would object to a sound print of a real person: of the case that does, the row
 * that has to move least moves until the print lies inside it by a margin.
 */
public final class ReferenceTolerance {

  /** Of the value of the real print. */
  private static final double MARGIN = 0.06;

  private static final Set<Unit> SIZES =
      EnumSet.of(Unit.MM2, Unit.MM, Unit.COUNT, Unit.DEGREES, Unit.POINTS);
  private static final Set<QualityMetric> SHAPES =
      EnumSet.of(
          QualityMetric.WIDTH_TO_LENGTH,
          QualityMetric.ROLL_TO_PLAIN_WIDTH,
          QualityMetric.GAP_SHARE,
          QualityMetric.ROTATION_CONFIDENCE);

  /**
   * A print of a real person.
   *
   * @param accepted rules that a person would agree with
   */
  public record Sound(MeasuredPrint print, Set<String> accepted) {}

  private ReferenceTolerance() {}

  public static LimitTable widened(LimitTable table, List<Sound> prints) {
    List<LimitRow> rows = new ArrayList<>(table.rows());
    for (Sound sound : prints) {
      for (String group : rows.stream().map(LimitRow::group).distinct().toList()) {
        widen(rows, group, sound);
      }
    }
    return new LimitTable(rows);
  }

  private static void widen(List<LimitRow> rows, String group, Sound sound) {
    List<LimitRow> one =
        rows.stream().filter(row -> row.group().equals(group)).collect(Collectors.toList());
    LimitRow first = one.get(0);
    boolean sameKind = first.kind() == sound.print().kind();
    boolean ofSize = one.stream().anyMatch(ReferenceTolerance::isOfSize);
    boolean applies = (sameKind || !ofSize) && !sound.accepted().contains(first.rule());
    if (!applies || !one.stream().allMatch(row -> moved(row, sound.print()) > 0)) {
      return;
    }
    LimitRow least = one.get(0);
    for (LimitRow row : one) {
      least = moved(row, sound.print()) < moved(least, sound.print()) ? row : least;
    }
    rows.set(rows.indexOf(least), inside(least, sound.print()));
  }

  /** The ink and the paper are the same for rolls and plain prints; how much there is is not. */
  private static boolean isOfSize(LimitRow row) {
    return SIZES.contains(row.measure().unit()) || SHAPES.contains(row.measure());
  }

  /** By which share of itself a limit would have to move; 0 when the print is well inside. */
  private static double moved(LimitRow row, MeasuredPrint print) {
    OptionalDouble value = print.value(row.measure());
    if (value.isEmpty()) {
      return 0;
    }
    double now = row.least().orElseGet(() -> row.most().orElseThrow());
    double goal = goal(row, value.getAsDouble());
    boolean inside = row.least().isPresent() ? goal >= now : goal <= now;
    return inside ? 0 : Math.abs(goal - now) / Math.max(1e-9, Math.abs(now));
  }

  private static double goal(LimitRow row, double value) {
    return row.least().isPresent() ? value * (1 - MARGIN) : value * (1 + MARGIN);
  }

  private static LimitRow inside(LimitRow row, MeasuredPrint print) {
    double goal = LimitFit.rounded(goal(row, print.value(row.measure()).orElseThrow()));
    String source =
        row.source().contains("widened")
            ? row.source()
            : row.source() + "; widened: sound ink prints";
    return new LimitRow(
        row.rule(),
        row.caseName(),
        row.kind(),
        row.measure(),
        row.least().isPresent() ? OptionalDouble.of(goal) : OptionalDouble.empty(),
        row.least().isPresent() ? OptionalDouble.empty() : OptionalDouble.of(goal),
        source);
  }
}
