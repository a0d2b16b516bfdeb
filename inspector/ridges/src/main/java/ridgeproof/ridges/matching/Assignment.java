package ridgeproof.ridges.matching;

import java.util.Arrays;

/**
 * Gives each row a column of its own so that the sum of their values is greatest (Kuhn 1955,
 * Munkres 1957).
 *
 * @param columns of each row
 * @param value the sum
 */
record Assignment(int[] columns, double value) {

  /** A value that no assignment takes while there is another way. */
  static final double FORBIDDEN = -1e6;

  /** The best one; there are at least as many columns as rows. */
  static Assignment best(double[][] values) {
    int rows = values.length;
    int columns = rows == 0 ? 0 : values[0].length;
    double[] rowPrice = new double[rows + 1];
    double[] columnPrice = new double[columns + 1];
    int[] rowOf = new int[columns + 1];
    for (int row = 1; row <= rows; row++) {
      rowOf[0] = row;
      extend(values, rowPrice, columnPrice, rowOf);
    }
    int[] columnOf = new int[rows];
    double sum = 0;
    for (int column = 1; column <= columns; column++) {
      if (rowOf[column] > 0) {
        columnOf[rowOf[column] - 1] = column - 1;
        sum += values[rowOf[column] - 1][column - 1];
      }
    }
    return new Assignment(columnOf, sum);
  }

  /** Gives one more row a column, along the shortest way of rows that have to change theirs. */
  private static void extend(
      double[][] values, double[] rowPrice, double[] columnPrice, int[] rowOf) {
    int columns = columnPrice.length - 1;
    double[] shortest = new double[columns + 1];
    Arrays.fill(shortest, Double.POSITIVE_INFINITY);
    boolean[] settled = new boolean[columns + 1];
    int[] before = new int[columns + 1];
    int column = 0;
    while (rowOf[column] != 0) {
      settled[column] = true;
      int row = rowOf[column];
      int next = 0;
      double step = Double.POSITIVE_INFINITY;
      for (int other = 1; other <= columns; other++) {
        if (!settled[other]) {
          double cost = -values[row - 1][other - 1] - rowPrice[row] - columnPrice[other];
          if (cost < shortest[other]) {
            shortest[other] = cost;
            before[other] = column;
          }
          if (shortest[other] < step) {
            step = shortest[other];
            next = other;
          }
        }
      }
      for (int other = 0; other <= columns; other++) {
        if (settled[other]) {
          rowPrice[rowOf[other]] += step;
          columnPrice[other] -= step;
        } else {
          shortest[other] -= step;
        }
      }
      column = next;
    }
    while (column != 0) {
      rowOf[column] = rowOf[before[column]];
      column = before[column];
    }
  }
}
