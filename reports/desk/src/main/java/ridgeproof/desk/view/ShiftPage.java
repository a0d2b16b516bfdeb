package ridgeproof.desk.view;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import ridgeproof.ledger.report.FaultPicture;

/**
 * What a ledger and the files on the desk tell of the stations.
 *
 * @param ledger where the desk has one
 * @param stations of the files on the desk, in the order of their names
 */
public record ShiftPage(Optional<FromLedger> ledger, List<Station> stations) {

  /**
   * What a ledger tells.
   *
   * @param people how many people of each station it rests on, in words
   * @param faults the surest first
   * @param said in a sentence
   */
  public record FromLedger(List<String> people, List<Fault> faults, String said) {}

  /**
   * What is wrong with a station.
   *
   * @param picture drawn as it is, unless there are values
   * @param values as JSON numbers, one for each person; empty text where no measure changed
   * @param at index of the first value after the change
   */
  public record Fault(
      String title, String observed, String remedy, FaultPicture picture, String values, int at) {}

  /**
   * One station.
   *
   * @param files how many files of it were looked at
   * @param faults what is found over many people
   * @param warnings what a few files hint at, in sentences
   * @param drift whether a drift was found, in a sentence
   * @param platens what its platen looks like, for each size of image
   * @param curves measures from file to file
   */
  public record Station(
      String name,
      int files,
      List<Fault> faults,
      List<String> warnings,
      String drift,
      List<Platen> platens,
      List<Curve> curves) {}

  /**
   * A drawing of a platen, in cells.
   *
   * @param images how many images it rests on
   * @param light mean gray level of nine parts, row by row; negative where a print covers it
   * @param uneven whether its parts differ by more than they should
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
      boolean uneven,
      List<Spot> spots,
      List<Double> deadRows,
      List<Double> deadColumns,
      String words) {

    /** The part that is darkest, of those that are known. */
    public int darkest() {
      return IntStream.range(0, light.size())
          .filter(part -> light.get(part) >= 0)
          .boxed()
          .min(Comparator.comparing(light::get))
          .orElse(0);
    }

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
