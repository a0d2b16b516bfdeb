package ridgeproof.desk.view;

import java.util.List;

/**
 * What the files on the desk tell of the stations that captured them.
 *
 * @param stations in the order of their names
 */
public record ShiftPage(List<Station> stations) {

  /**
   * One station.
   *
   * @param files how many files of it were looked at
   * @param warnings what to do something about, in sentences
   * @param platens what its platen looks like, for each size of image
   * @param curves measures from file to file
   */
  public record Station(
      String name, int files, List<String> warnings, List<Platen> platens, List<Curve> curves) {}

  /**
   * A drawing of a platen, in cells.
   *
   * @param images how many images it rests on
   * @param light mean gray level of nine parts, row by row; negative where a print covers it
   * @param spots cells that were stained in most images in which they were bare
   * @param deadRows rows of pixels that stand out in most images, in cells
   * @param deadColumns columns of pixels that do, in cells
   * @param words what the drawing shows
   */
  public record Platen(
      String title,
      int images,
      int width,
      int height,
      List<Integer> light,
      List<Spot> spots,
      List<Double> deadRows,
      List<Double> deadColumns,
      String words) {

    /** The gray level of a part as a color; empty where nothing is known. */
    public String color(int part) {
      int gray = light.get(part);
      return gray < 0 ? "none" : "rgb(" + gray + "," + gray + "," + gray + ")";
    }
  }

  /** A cell of a platen. */
  public record Spot(int x, int y) {}

  /**
   * A measure from file to file.
   *
   * @param values as JSON numbers, one for each file in the order of arrival
   * @param words the first and the last in words
   */
  public record Curve(String title, String unit, String values, String words) {}
}
