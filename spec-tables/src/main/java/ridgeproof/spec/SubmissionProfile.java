package ridgeproof.spec;

import java.util.List;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

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
  public record NeededPrint(int position, String kind, List<Integer> or) {

    private static NeededPrint of(Table.Row row) {
      return new NeededPrint(
          row.parse("position", Integer::parseInt),
          row.required("kind"),
          List.copyOf(row.parse("or", Table::numbers)));
    }
  }

  static List<SubmissionProfile> load() {
    List<Table.Row> prints = Table.resource("profiles/prints.csv").rows();
    return Table.resource("profiles/submissions.csv").rows().stream()
        .map(row -> of(row, prints))
        .toList();
  }

  private static SubmissionProfile of(Table.Row row, List<Table.Row> prints) {
    String name = row.required("profile");
    return new SubmissionProfile(
        name,
        row.required("title"),
        row.required("description"),
        prints.stream()
            .filter(print -> print.required("profile").equals(name))
            .map(NeededPrint::of)
            .toList(),
        row.source());
  }
}
