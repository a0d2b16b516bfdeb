package ridgeproof.ledger.health;

/** Whether one group of values lies beside another, by the rank sum test of Mann and Whitney. */
final class RankSum {

  private RankSum() {}

  /** The two-sided probability of ranks so far apart in groups that do not differ. */
  static double probability(double[] group, double[] others) {
    int n = group.length;
    int m = others.length;
    double[] all = new double[n + m];
    System.arraycopy(group, 0, all, 0, n);
    System.arraycopy(others, 0, all, n, m);
    double[] ranks = ChangePoint.ranks(all);
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += ranks[i];
    }
    double u = sum - n * (n + 1.0) / 2;
    double deviation = Math.sqrt((double) n * m * (n + m + 1.0) / 12);
    double z = Math.abs(u - (double) n * m / 2) / deviation;
    return Math.min(1, tail(z));
  }

  /**
   * Two-sided tail of the normal distribution, from above (Chernoff), so that it never flatters.
   */
  private static double tail(double z) {
    return 2 * Math.exp(-z * z / 2);
  }
}
