package ridgeproof.ridges.matching;

import java.util.List;
import java.util.OptionalDouble;
import ridgeproof.imagery.PixelDensity;

/**
 * By how much one print of a finger is turned against another. A matcher of minutiae finds them
 * alike however they are turned and does not say by how much; so pairs of minutiae vote for turns
 * and shifts (the Hough transform, as in Ratha and others, 1996, from memory).
 */
public final class TurnBetween {

  private static final int TURNS = 36;
  private static final double STEP = 360.0 / TURNS;

  /** Degrees that the directions of one minutia in two prints may differ. */
  private static final double SPREAD = 18;

  /** Millimetres of a cell of shifts; skin stretches about so much. */
  private static final double CELL = 1.2;

  /** Cells to all sides of no shift. */
  private static final int REACH = 64;

  /** Pairs that agree below which the prints share too little. */
  private static final int MIN_PAIRS = 6;

  private static final double CLEARLY = 1.3;

  private static final double APART = 45;

  private TurnBetween() {}

  /**
   * Degrees clockwise from the first to the second, -180 to 180; nothing where no turn is clearly
   * better than all that are far from it.
   *
   * @param firstPpi pixels per inch of the image that the first are in
   */
  public static OptionalDouble of(
      Minutiae first, double firstPpi, Minutiae second, double secondPpi) {
    double[] votes = new double[TURNS];
    int best = 0;
    for (int turn = 0; turn < TURNS; turn++) {
      votes[turn] =
          agreeing(
              first.list(),
              PixelDensity.MM_PER_INCH / firstPpi,
              second.list(),
              PixelDensity.MM_PER_INCH / secondPpi,
              turn * STEP);
      best = votes[turn] > votes[best] ? turn : best;
    }
    double rival = 0;
    for (int turn = 0; turn < TURNS; turn++) {
      if (Math.abs(Math.IEEEremainder((turn - best) * STEP, 360)) > APART) {
        rival = Math.max(rival, votes[turn]);
      }
    }
    return votes[best] < MIN_PAIRS || votes[best] < CLEARLY * rival
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.IEEEremainder(best * STEP, 360));
  }

  /** The most pairs that agree in one shift once the first print is turned so. */
  private static int agreeing(
      List<Minutia> first, double firstMm, List<Minutia> second, double secondMm, double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    int side = 2 * REACH + 1;
    int[] shifts = new int[side * side];
    for (Minutia a : first) {
      double x = (a.x() * cos - a.y() * sin) * firstMm;
      double y = (a.x() * sin + a.y() * cos) * firstMm;
      for (Minutia b : second) {
        double off = Math.IEEEremainder(b.degrees() - a.degrees() - degrees, 360);
        int column = (int) Math.round((b.x() * secondMm - x) / CELL) + REACH;
        int row = (int) Math.round((b.y() * secondMm - y) / CELL) + REACH;
        if (Math.abs(off) <= SPREAD && column >= 0 && row >= 0 && column < side && row < side) {
          shifts[row * side + column]++;
        }
      }
    }
    int most = 0;
    for (int row = 0; row + 1 < side; row++) {
      for (int column = 0; column + 1 < side; column++) {
        int at = row * side + column;
        int square = shifts[at] + shifts[at + 1] + shifts[at + side] + shifts[at + side + 1];
        most = Math.max(most, square);
      }
    }
    return most;
  }
}
