package ridgeproof.calibration.statistics;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;
import ridgeproof.calibration.print.Csv;

/**
 * What is published of natural prints; a table row.
 *
 * @param key of the statistic that it is held against; several sources may tell of one
 * @param low least that the source gives; the same as {@code high} for a single number
 * @param high greatest that the source gives; nothing where it only says "more than"
 * @param source who published it
 * @param known how the figure is known: published, from memory, common practice
 */
public record PublishedFigure(
    String key,
    String about,
    String unit,
    double low,
    OptionalDouble high,
    String source,
    String known) {

  private static final String RESOURCE = "/ridgeproof/calibration/published-figures.csv";

  public static List<PublishedFigure> all() {
    return Csv.resource(RESOURCE).stream().map(PublishedFigure::of).toList();
  }

  private static PublishedFigure of(CSVRecord row) {
    String high = row.get("high");
    return new PublishedFigure(
        row.get("figure"),
        row.get("about"),
        row.get("unit"),
        Double.parseDouble(row.get("low")),
        high.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(high)),
        row.get("source"),
        row.get("known"));
  }

  public double most() {
    return high.orElse(Double.POSITIVE_INFINITY);
  }
}
