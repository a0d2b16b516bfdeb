package ridgeproof.spec.limit;

import java.util.List;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.TableError;

/**
 * What a similarity of two prints weighs: the power of ten by which it is likelier between two
 * prints of one finger than between prints of two. Between the rows it is interpolated.
 */
public record MatchLikelihood(double similarity, double weight, Source source) {

  private static final String TABLE = "limits/match-likelihoods.csv";

  /** In rising order of both numbers. */
  public static List<MatchLikelihood> load() {
    return read(Table.resource(TABLE));
  }

  static List<MatchLikelihood> read(Table table) {
    List<MatchLikelihood> rows =
        table.rows().stream()
            .map(
                row ->
                    new MatchLikelihood(
                        row.parse("similarity", Double::parseDouble),
                        row.parse("weight", Double::parseDouble),
                        row.source()))
            .toList();
    for (int i = 1; i < rows.size(); i++) {
      boolean rises =
          rows.get(i).similarity() > rows.get(i - 1).similarity()
              && rows.get(i).weight() >= rows.get(i - 1).weight();
      if (!rises) {
        throw new TableError(
            table.name(), "row " + (i + 1) + ": a greater similarity never weighs less");
      }
    }
    return rows;
  }
}
