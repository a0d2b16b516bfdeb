package ridgeproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ridgeproof.examination.RidgeFacts;
import ridgeproof.ridges.BlockMap;
import ridgeproof.ridges.FingerAnalysis;
import ridgeproof.ridges.FingerMeasures;
import ridgeproof.ridges.Minutia;
import ridgeproof.ridges.RotatedBox;
import ridgeproof.ridges.SingularPoint;

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

  static RidgeDrawing of(RidgeFacts facts) {
    RidgeDrawing drawing =
        new RidgeDrawing(
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>());
    facts.fingers().values().stream()
        .map(FingerAnalysis::measures)
        .forEach(measures -> measures.ifPresent(drawing::add));
    Stream<RotatedBox> found =
        facts.slap().isPresent()
            ? facts.slap().get().segments().stream().flatMap(segment -> segment.box().stream())
            : facts.fingers().values().stream()
                .flatMap(finger -> finger.measures().stream())
                .map(measures -> measures.extent().box());
    found.map(RotatedBox::corners).forEach(drawing.boxes::add);
    return drawing;
  }

  private void add(FingerMeasures measures) {
    addRuns(measures.maps());
    for (SingularPoint point : measures.pattern().points()) {
      (point.kind() == SingularPoint.Kind.CORE ? cores : deltas).add(point);
    }
    minutiae.addAll(measures.minutiae().list());
  }

  private void addRuns(BlockMap map) {
    double side = map.blockPixels();
    for (int row = 0; row < map.rows(); row++) {
      int start = -1;
      for (int column = 0; column <= map.columns(); column++) {
        boolean ridge = column < map.columns() && map.isRidge(column, row);
        if (ridge && start < 0) {
          start = column;
        } else if (!ridge && start >= 0) {
          ridges.add(new Run(start * side, row * side, (column - start) * side, side));
          start = -1;
        }
      }
    }
  }
}
