package ridgeproof.spec.limit;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

/**
 * One bound of a measure of ridges. A rule holds that a print is at fault where all bounds of one
 * of its situations are broken.
 *
 * @param situation what is wrong, in a few words; the rows of one rule that share it go together
 * @param impression rolled or plain
 * @param measure the measure, by its key
 * @param least smaller values break the bound
 * @param most greater values do
 * @param unit of the bounds
 */
public record RidgeLimit(
    String rule,
    String situation,
    String impression,
    String measure,
    OptionalDouble least,
    OptionalDouble most,
    String unit,
    Source source) {

  private static final String TABLE = "limits/ridge-limits.csv";
  private static final String DOCUMENT = "DESIGN";

  public static List<RidgeLimit> load() {
    return Table.resource(TABLE).rows().stream().map(RidgeLimit::of).toList();
  }

  private static RidgeLimit of(Table.Row row) {
    return new RidgeLimit(
        row.required("rule"),
        row.required("case"),
        row.required("impression"),
        row.required("measure"),
        bound(row, "least"),
        bound(row, "most"),
        row.required("unit"),
        new Source(DOCUMENT, row.required("source"), Source.Knowledge.COMMON_PRACTICE));
  }

  private static OptionalDouble bound(Table.Row row, String column) {
    return row.optional(column).stream().mapToDouble(Double::parseDouble).findFirst();
  }

  /** A value with the unit of the bounds, as reports write it. */
  public String amount(double value) {
    String number = String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.0f", value);
    return switch (unit) {
      case "share" -> String.format(Locale.ROOT, "%.0f %%", 100 * value);
      case "ratio" -> number;
      case "count" -> String.format(Locale.ROOT, "%.0f", value);
      default -> number + " " + unit;
    };
  }

  /** Whether a value is beyond either bound. */
  public boolean isBrokenBy(double value) {
    return least.isPresent() && value < least.getAsDouble()
        || most.isPresent() && value > most.getAsDouble();
  }
}
