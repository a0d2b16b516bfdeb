package ridgeproof.calibration.real;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ridgeproof.spec.limit.MatchLikelihood;
import ridgeproof.spec.table.Source;

/**
 * Fits what similarities weigh: a rising line through fixed similarities that separates pairs of
 * one finger from pairs of two (logistic regression, both kinds counting alike), kept smooth so
 * that it holds for sensors it has not seen.
 */
public final class LikelihoodFit {

  private static final double[] NODES = {0, 2, 5, 10, 15, 20, 25, 30, 40, 60, 80};
  private static final double MOST = 4;
  private static final double SMOOTHNESS = 0.02;
  private static final int ROUNDS = 6000;
  private static final double STEP = 0.02;
  private static final double LN10 = Math.log(10);

  private final double[] genuine;
  private final double[] other;

  private LikelihoodFit(double[] genuine, double[] other) {
    this.genuine = genuine;
    this.other = other;
  }

  /** On all pairs of different prints of some pools. */
  public static List<MatchLikelihood> on(List<PrintPool> pools) {
    List<Double> genuine = new ArrayList<>();
    List<Double> other = new ArrayList<>();
    for (PrintPool pool : pools) {
      for (int i = 0; i < pool.fingers().length; i++) {
        for (int j = 0; j < pool.fingers().length; j++) {
          if (i != j) {
            boolean same = pool.fingers()[i] == pool.fingers()[j];
            (same ? genuine : other).add(pool.similarity(i, j));
          }
        }
      }
    }
    return new LikelihoodFit(numbers(genuine), numbers(other)).rows();
  }

  private static double[] numbers(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private List<MatchLikelihood> rows() {
    double[] weights = weights(fitted());
    Source source = new Source("DESIGN", "fitted", Source.Knowledge.COMMON_PRACTICE);
    List<MatchLikelihood> rows = new ArrayList<>();
    for (int i = 0; i < NODES.length; i++) {
      if (weights[i] >= MOST) {
        double share = (MOST - weights[i - 1]) / (weights[i] - weights[i - 1]);
        double last = NODES[i - 1] + share * (NODES[i] - NODES[i - 1]);
        rows.add(new MatchLikelihood(last, MOST, source));
        break;
      }
      rows.add(new MatchLikelihood(NODES[i], weights[i], source));
    }
    return rows;
  }

  /** The first weight, then the logarithms of the slopes, by gradients (Kingma and Ba 2015). */
  private double[] fitted() {
    double[] at = new double[NODES.length];
    Arrays.fill(at, Math.log(0.1));
    at[0] = -1;
    double[] mean = new double[at.length];
    double[] square = new double[at.length];
    for (int round = 1; round <= ROUNDS; round++) {
      double[] gradient = gradient(at);
      for (int i = 0; i < at.length; i++) {
        mean[i] = 0.9 * mean[i] + 0.1 * gradient[i];
        square[i] = 0.999 * square[i] + 0.001 * gradient[i] * gradient[i];
        double corrected = mean[i] / (1 - Math.pow(0.9, round));
        double scale = Math.sqrt(square[i] / (1 - Math.pow(0.999, round))) + 1e-9;
        at[i] -= STEP * (1 - (double) round / (ROUNDS + 1)) * corrected / scale;
      }
    }
    return at;
  }

  private double[] gradient(double[] at) {
    double[] weights = weights(at);
    double[] byNode = new double[NODES.length];
    collect(genuine, weights, -1, byNode);
    collect(other, weights, 1, byNode);
    double[] gradient = new double[at.length];
    double above = 0;
    for (int i = NODES.length - 1; i >= 1; i--) {
      above += byNode[i];
      gradient[i] = above * (weights[i] - weights[i - 1]);
    }
    gradient[0] = above + byNode[0];
    for (int i = 2; i < at.length; i++) {
      double bend = 2 * SMOOTHNESS * (at[i] - at[i - 1]);
      gradient[i] += bend;
      gradient[i - 1] -= bend;
    }
    return gradient;
  }

  /** The derivative of the mean loss by the weight at each node. */
  private static void collect(double[] scores, double[] weights, int sign, double[] byNode) {
    for (double score : scores) {
      double s = Math.min(score, NODES[NODES.length - 1]);
      int at = 1;
      while (at < NODES.length - 1 && s > NODES[at]) {
        at++;
      }
      double share = (s - NODES[at - 1]) / (NODES[at] - NODES[at - 1]);
      double weight = weights[at - 1] + share * (weights[at] - weights[at - 1]);
      double pull = sign * LN10 / (1 + Math.exp(-sign * weight * LN10)) / scores.length;
      byNode[at - 1] += (1 - share) * pull;
      byNode[at] += share * pull;
    }
  }

  private static double[] weights(double[] at) {
    double[] weights = new double[NODES.length];
    weights[0] = at[0];
    for (int i = 1; i < NODES.length; i++) {
      weights[i] = weights[i - 1] + Math.exp(at[i]) * (NODES[i] - NODES[i - 1]);
    }
    return weights;
  }

  /** As the table of limits has them. */
  public static String csv(List<MatchLikelihood> rows, String fittedOn) {
    StringBuilder csv = new StringBuilder("similarity,weight,source,known\n");
    for (MatchLikelihood row : rows) {
      csv.append(
          String.format(
              Locale.ROOT,
              "%.0f,%.2f,DESIGN: fitted on %s,common practice%n",
              row.similarity(),
              row.weight(),
              fittedOn));
    }
    return csv.toString().replace(System.lineSeparator(), "\n");
  }
}
