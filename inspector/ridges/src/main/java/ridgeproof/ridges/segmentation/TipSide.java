package ridgeproof.ridges.segmentation;

import ridgeproof.ridges.quality.BlockMap;
import ridgeproof.ridges.quality.FingerMeasures;

/**
 * On which side of a print the fingertip is, by the flow of its ridges: most of them bend around
 * the tip, so that left of the middle they rise to the right and right of it they fall. Whorls bend
 * both ways and say little; several prints together are reliable.
 *
 * @param up how clearly the tip is at the top: 1 entirely, negative at the bottom
 * @param right the same for the right side
 */
public record TipSide(double up, double right) {

  /** By the blocks with clear ridges. */
  public static TipSide of(FingerMeasures measures) {
    BlockMap map = measures.maps();
    double count = 0;
    double middleX = 0;
    double middleY = 0;
    for (int row = 0; row < map.rows(); row++) {
      for (int column = 0; column < map.columns(); column++) {
        if (map.isPrint(column, row)) {
          middleX += column;
          middleY += row;
          count++;
        }
      }
    }
    double up = 0;
    double right = 0;
    double weights = 1e-9;
    for (int row = 0; row < map.rows(); row++) {
      for (int column = 0; column < map.columns(); column++) {
        if (map.isPrint(column, row) && map.isRidge(column, row)) {
          double weight = map.certainty(column, row);
          double slope = Math.sin(Math.toRadians(2 * map.orientation(column, row)));
          double x = column - middleX / count;
          double y = row - middleY / count;
          double distance = Math.max(1e-9, Math.hypot(x, y));
          up += weight * slope * x / distance;
          right -= weight * slope * y / distance;
          weights += weight;
        }
      }
    }
    return new TipSide(up / weights, right / weights);
  }
}
