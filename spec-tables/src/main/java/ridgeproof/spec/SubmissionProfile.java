package ridgeproof.spec;

import java.util.List;
import ridgeproof.spec.table.Source;

/**
 * What a kind of submission has to hold.
 *
 * @param name what {@code --profile} is given
 * @param prints the prints it needs
 */
public record SubmissionProfile(
    String name, String title, String description, List<NeededPrint> prints, Source source) {

  /**
   * One image that is needed.
   *
   * @param position friction ridge position code, 1 to 15
   * @param kind {@code rolled}, {@code plain} or {@code slap}
   * @param or positions that together stand for this one, for instance 11 and 12 for 15; may be
   *     empty
   */
  public record NeededPrint(int position, String kind, List<Integer> or) {}
}
