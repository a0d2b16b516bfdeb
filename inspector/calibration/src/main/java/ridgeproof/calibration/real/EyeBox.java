package ridgeproof.calibration.real;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import ridgeproof.calibration.print.Csv;
import ridgeproof.calibration.print.ReferencePrints;
import ridgeproof.ridges.map.RotatedBox;
import ridgeproof.ridges.quality.FingerAnalyzer;
import ridgeproof.ridges.segmentation.SlapSegmenter;
import ridgeproof.spec.layout.FingerPosition;

/**
 * A box that a person drew around the last joint of a finger in a public reference transaction.
 *
 * @param record number of the record in the file, from 1
 * @param image position code of the image
 */
public record EyeBox(String file, int record, int image, FingerPosition finger, RotatedBox box) {

  private static final String RESOURCE = "/ridgeproof/calibration/eye-boxes.csv";

  /**
   * How well a box drawn by eye is met.
   *
   * @param share intersection over union with what was found; 0 for a finger that was not
   */
  public record Overlap(EyeBox drawn, double share) {}

  static List<EyeBox> load() {
    return Csv.resource(RESOURCE).stream().map(EyeBox::of).toList();
  }

  private static EyeBox of(CSVRecord row) {
    return new EyeBox(
        row.get("file"),
        Integer.parseInt(row.get("record")),
        Integer.parseInt(row.get("position")),
        FingerPosition.ofCode(Integer.parseInt(row.get("finger"))).orElseThrow(),
        new RotatedBox(
            number(row, "centre_x"),
            number(row, "centre_y"),
            number(row, "width"),
            number(row, "height"),
            number(row, "degrees")));
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** Each box of the files in a folder with what is found there. */
  public static List<Overlap> overlaps(Path folder) throws IOException {
    List<EyeBox> boxes = load();
    List<Overlap> overlaps = new ArrayList<>();
    for (String file : boxes.stream().map(EyeBox::file).distinct().toList()) {
      for (ReferencePrints.Image image : ReferencePrints.images(folder.resolve(file))) {
        for (EyeBox box : boxes) {
          if (box.file().equals(file) && box.image() == image.box()) {
            Optional<RotatedBox> found = found(image, box.finger());
            overlaps.add(new Overlap(box, found.map(f -> share(box.box(), f)).orElse(0.0)));
          }
        }
      }
    }
    return overlaps;
  }

  private static Optional<RotatedBox> found(ReferencePrints.Image image, FingerPosition finger) {
    List<FingerPosition> shown = FingerPosition.shownBy(image.box());
    return shown.size() == 1
        ? FingerAnalyzer.analyse(image.gray(), image.ppi())
            .measures()
            .map(measures -> measures.extent().box())
        : SlapSegmenter.segment(image.gray(), image.ppi(), shown).segments().stream()
            .filter(segment -> segment.position() == finger)
            .flatMap(segment -> segment.box().stream())
            .findFirst();
  }

  /** Intersection over union. */
  static double share(RotatedBox one, RotatedBox other) {
    List<double[]> common = corners(one);
    List<double[]> clip = corners(other);
    for (int i = 0; i < clip.size() && !common.isEmpty(); i++) {
      common = cut(common, clip.get(i), clip.get((i + 1) % clip.size()));
    }
    double both = area(common);
    return both / (one.width() * one.height() + other.width() * other.height() - both);
  }

  private static List<double[]> corners(RotatedBox box) {
    double[] flat = box.corners();
    List<double[]> corners = new ArrayList<>();
    for (int i = 0; i < flat.length; i += 2) {
      corners.add(new double[] {flat[i], flat[i + 1]});
    }
    return corners;
  }

  /** What of a polygon lies on the inner side of an edge (Sutherland and Hodgman 1974). */
  private static List<double[]> cut(List<double[]> polygon, double[] from, double[] to) {
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      double[] here = polygon.get(i);
      double[] next = polygon.get((i + 1) % polygon.size());
      double a = side(from, to, here);
      double b = side(from, to, next);
      if (a >= 0) {
        kept.add(here);
      }
      if (a >= 0 != b >= 0) {
        double t = a / (a - b);
        kept.add(
            new double[] {here[0] + t * (next[0] - here[0]), here[1] + t * (next[1] - here[1])});
      }
    }
    return kept;
  }

  private static double side(double[] from, double[] to, double[] point) {
    return (to[0] - from[0]) * (point[1] - from[1]) - (to[1] - from[1]) * (point[0] - from[0]);
  }

  private static double area(List<double[]> polygon) {
    double twice = 0;
    for (int i = 0; i < polygon.size(); i++) {
      double[] a = polygon.get(i);
      double[] b = polygon.get((i + 1) % polygon.size());
      twice += a[0] * b[1] - b[0] * a[1];
    }
    return Math.abs(twice) / 2;
  }

  /** The files that boxes were drawn in. */
  static String files(List<Overlap> overlaps) {
    return overlaps.stream()
        .map(overlap -> overlap.drawn().file())
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
