package ridgeproof.spec.limit;

import java.util.LinkedHashMap;
import java.util.Map;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.TableError;

/** The numbers that measures of decoded pixels are held against, by name. */
public final class PixelLimits {

  private static final String TABLE = "limits/pixel-measures.csv";

  /**
   * One of them.
   *
   * @param value in the unit
   * @param unit gray levels, percent, mm or what is counted
   */
  public record PixelLimit(double value, String unit, Source source) {

    /** A limit in percent as a share of 1. */
    public double share() {
      return value / 100;
    }
  }

  private final Map<String, PixelLimit> limits = new LinkedHashMap<>();

  private PixelLimits() {}

  public static PixelLimits load() {
    PixelLimits loaded = new PixelLimits();
    for (Table.Row row : Table.resource(TABLE).rows()) {
      loaded.limits.put(
          row.required("name"),
          new PixelLimit(
              row.parse("value", Double::parseDouble), row.required("unit"), row.source()));
    }
    return loaded;
  }

  /**
   * The limit of this name.
   *
   * @throws TableError if the table has none
   */
  public PixelLimit limit(String name) {
    PixelLimit limit = limits.get(name);
    if (limit == null) {
      throw new TableError(TABLE, "no row " + name);
    }
    return limit;
  }

  /** Its number. */
  public double value(String name) {
    return limit(name).value();
  }
}
