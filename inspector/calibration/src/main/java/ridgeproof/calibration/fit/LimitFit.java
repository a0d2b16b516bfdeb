package ridgeproof.calibration.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import ridgeproof.calibration.print.MeasuredPrint;
import ridgeproof.ridges.quality.QualityMetric;

/**
 * Finds limits case by case: of all combinations of limits that lie between the clean prints and
 * those to be caught, the one that misses least and objects to the fewest clean prints, both as it
 * stands and with a margin. How dear a false alarm is rises until each case keeps within its part
 * of the budget, and then until all rules together keep within it.
 */
public final class LimitFit {

  /** Defects weaker than this are not what limits are fitted for. */
  public static final double STRONG = 0.6;

  /** Share of the clean prints that all rules together may object to. */
  static final double BUDGET = 0.005;

  /** Share of the clean prints of its kind that one case may object to. */
  private static final double FIRST_BUDGET_OF_A_CASE = 0.004;

  private static final double LAST_BUDGET_OF_A_CASE = 0.001;

  private static final double FIRST_PRICE = 6;
  private static final double LAST_PRICE = 4096;

  /** Of a limit, by which it is moved to see how much hangs on it; the wider count for less. */
  private static final double[] MARGINS = {0.06, 0.15, 0.3};

  private final List<MeasuredPrint> training;

  public LimitFit(List<MeasuredPrint> training) {
    this.training = training;
  }

  /** The table for a plan. */
  public LimitTable fit(List<LimitCriterion> plan, String source) {
    double each = FIRST_BUDGET_OF_A_CASE;
    LimitTable table = fit(plan, each, source);
    while (falseAlarms(table) > BUDGET && each > 0) {
      each = each > LAST_BUDGET_OF_A_CASE ? each / 2 : 0;
      table = fit(plan, each, source);
    }
    return table;
  }

  /** Share of the clean prints that were found and that some rule objects to. */
  public double falseAlarms(LimitTable table) {
    List<MeasuredPrint> clean = training.stream().filter(p -> p.isClean() && p.isFound()).toList();
    Function<MeasuredPrint, Set<String>> judge = table.judge();
    long alarms = clean.stream().filter(p -> !judge.apply(p).isEmpty()).count();
    return clean.isEmpty() ? 0 : (double) alarms / clean.size();
  }

  private LimitTable fit(List<LimitCriterion> plan, double budget, String source) {
    List<LimitRow> rows = new ArrayList<>();
    Map<String, List<MeasuredPrint>> missed = new LinkedHashMap<>();
    for (LimitCriterion fitCase : plan) {
      String rule = fitCase.rule() + fitCase.kind() + fitCase.defects();
      List<MeasuredPrint> wanted = missed.computeIfAbsent(rule, key -> wanted(fitCase));
      double[] limits = search(fitCase, wanted, budget);
      for (int i = 0; i < limits.length; i++) {
        LimitCriterion.Bound bound = fitCase.bounds().get(i);
        rows.add(
            LimitRow.of(
                fitCase, bound, limits[i], bound.given().isPresent() ? bound.source() : source));
      }
      missed.put(
          rule, wanted.stream().filter(print -> !isCaught(fitCase, limits, print, 0)).toList());
    }
    return new LimitTable(rows);
  }

  private List<MeasuredPrint> wanted(LimitCriterion fitCase) {
    return training.stream()
        .filter(p -> p.kind() == fitCase.kind() && p.isFound() && p.strength() >= STRONG)
        .filter(p -> p.defect().filter(fitCase.defects()::contains).isPresent())
        .toList();
  }

  /** A case pays no more for false alarms than it needs to keep to its own part of them. */
  private double[] search(LimitCriterion fitCase, List<MeasuredPrint> wanted, double budget) {
    List<MeasuredPrint> clean =
        training.stream()
            .filter(p -> p.kind() == fitCase.kind() && p.isClean() && p.isFound())
            .toList();
    double[] limits = search(fitCase, wanted, clean, FIRST_PRICE);
    for (double price = 2 * FIRST_PRICE;
        price <= LAST_PRICE && 1 - missed(fitCase, limits, clean, 0) > budget;
        price *= 2) {
      limits = search(fitCase, wanted, clean, price);
    }
    return limits;
  }

  private static double[] search(
      LimitCriterion fitCase, List<MeasuredPrint> wanted, List<MeasuredPrint> clean, double price) {
    double[][] candidates =
        fitCase.bounds().stream()
            .map(bound -> candidates(bound, wanted, clean))
            .toArray(double[][]::new);
    List<double[]> best = new ArrayList<>();
    double least = Double.MAX_VALUE;
    int combinations = Arrays.stream(candidates).mapToInt(c -> c.length).reduce(1, (a, b) -> a * b);
    for (int n = 0; n < combinations; n++) {
      double[] limits = new double[candidates.length];
      int rest = n;
      for (int i = 0; i < limits.length; i++) {
        limits[i] = candidates[i][rest % candidates[i].length];
        rest /= candidates[i].length;
      }
      double cost = cost(fitCase, limits, wanted, clean, price);
      if (cost < least) {
        best.clear();
      }
      if (cost <= least) {
        least = cost;
        best.add(limits);
      }
    }
    // Where nothing tells limits apart, the middle lies farthest from both sides.
    return best.get(best.size() / 2);
  }

  private static double cost(
      LimitCriterion fitCase,
      double[] limits,
      List<MeasuredPrint> wanted,
      List<MeasuredPrint> clean,
      double price) {
    double cost =
        missed(fitCase, limits, wanted, 0) + price * (1 - missed(fitCase, limits, clean, 0));
    double weight = 0.5;
    for (double margin : MARGINS) {
      cost += weight * missed(fitCase, limits, wanted, -margin);
      cost += weight / 2 * price * (1 - missed(fitCase, limits, clean, margin));
      weight /= 4;
    }
    return cost;
  }

  private static double missed(
      LimitCriterion fitCase, double[] limits, List<MeasuredPrint> prints, double looser) {
    long caught = prints.stream().filter(p -> isCaught(fitCase, limits, p, looser)).count();
    return prints.isEmpty() ? 1 : 1 - (double) caught / prints.size();
  }

  /**
   * Whether all bounds are broken.
   *
   * @param looser by which share of themselves limits are moved so that more is caught
   */
  static boolean isCaught(
      LimitCriterion fitCase, double[] limits, MeasuredPrint print, double looser) {
    for (int i = 0; i < limits.length; i++) {
      LimitCriterion.Bound bound = fitCase.bounds().get(i);
      double moved = limits[i] * (bound.below() ? 1 + looser : 1 - looser);
      if (!bound.isBroken(print, moved)) {
        return false;
      }
    }
    return true;
  }

  private static double[] candidates(
      LimitCriterion.Bound bound, List<MeasuredPrint> wanted, List<MeasuredPrint> clean) {
    if (bound.given().isPresent()) {
      return new double[] {bound.given().getAsDouble()};
    }
    double[] bad = values(bound.measure(), wanted);
    double[] good = values(bound.measure(), clean);
    if (bad.length == 0) {
      // Nothing shows what it would catch: out of reach of every clean print.
      return new double[] {bound.below() ? 0.5 * quantile(good, 0) : 1.5 * quantile(good, 1)};
    }
    DoubleStream.Builder found = DoubleStream.builder();
    for (double share : new double[] {1, 0.99, 0.97, 0.95, 0.9, 0.8, 0.65, 0.5}) {
      found.add(quantile(bad, bound.below() ? share : 1 - share));
    }
    double worst = quantile(bad, bound.below() ? 1 : 0);
    if (good.length > 0) {
      double nearest = quantile(good, bound.below() ? 0 : 1);
      double second = quantile(good, bound.below() ? 0.01 : 0.99);
      double middle = quantile(good, 0.5);
      for (double goal : new double[] {nearest, second, middle}) {
        for (double way = 0; way <= 1; way += 0.125) {
          found.add(worst + way * (goal - worst));
        }
      }
    }
    return found.build().map(LimitFit::rounded).sorted().distinct().toArray();
  }

  static double rounded(double value) {
    if (value == 0) {
      return 0;
    }
    double unit = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 2);
    return Math.rint(value / unit) * unit;
  }

  private static double[] values(QualityMetric measure, List<MeasuredPrint> prints) {
    return prints.stream()
        .map(print -> print.value(measure))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .sorted()
        .toArray();
  }

  private static double quantile(double[] sorted, double share) {
    return sorted.length == 0
        ? 0
        : sorted[(int) Math.min(sorted.length - 1, Math.rint(share * (sorted.length - 1)))];
  }
}
