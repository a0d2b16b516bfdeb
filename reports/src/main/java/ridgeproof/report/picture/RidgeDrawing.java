package ridgeproof.report.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.matching.Minutia;
import ridgeproof.ridges.pattern.SingularPoint;
import ridgeproof.ridges.quality.BlockMap;
import ridgeproof.ridges.quality.FingerMeasures;

/**
 * What was seen of ridges as shapes to lay over the image, in pixels of the image.
 *
 * @param ridges runs of blocks with clear ridges
 * @param boxes around prints, four corners each as x, y pairs
 * @param cores cores of the pattern
 * @param deltas deltas of the pattern
 * @param minutiae ends and forks of ridges
 */
record RidgeDrawing(
    List<Run> ridges,
    List<double[]> boxes,
    List<SingularPoint> cores,
    List<SingularPoint> deltas,
    List<Minutia> minutiae) {

  /** A row of blocks side by side. */
  record Run(double x, double y, double width, double height) {}

  static RidgeDrawing of(RidgeAnalysis facts) {
    List<FingerMeasures> prints =
        facts.fingers().values().stream().flatMap(finger -> finger.measures().stream()).toList();
    Stream<RotatedBox> found =
        facts.slap().isPresent()
            ? facts.slap().get().segments().stream().flatMap(segment -> segment.box().stream())
            : prints.stream().map(print -> print.extent().box());
    return new RidgeDrawing(
        prints.stream().flatMap(print -> runs(print.maps()).stream()).toList(),
        found.map(RotatedBox::corners).toList(),
        points(prints, SingularPoint.Kind.CORE),
        points(prints, SingularPoint.Kind.DELTA),
        prints.stream().flatMap(print -> print.minutiae().list().stream()).toList());
  }

  private static List<SingularPoint> points(List<FingerMeasures> prints, SingularPoint.Kind kind) {
    return prints.stream()
        .flatMap(print -> print.pattern().points().stream())
        .filter(point -> point.kind() == kind)
        .toList();
  }

  private static List<Run> runs(BlockMap map) {
    List<Run> runs = new ArrayList<>();
    double side = map.blockPixels();
    for (int row = 0; row < map.rows(); row++) {
      int start = -1;
      for (int column = 0; column <= map.columns(); column++) {
        boolean ridge = column < map.columns() && map.isRidge(column, row);
        if (ridge && start < 0) {
          start = column;
        } else if (!ridge && start >= 0) {
          runs.add(new Run(start * side, row * side, (column - start) * side, side));
          start = -1;
        }
      }
    }
    return runs;
  }
}
