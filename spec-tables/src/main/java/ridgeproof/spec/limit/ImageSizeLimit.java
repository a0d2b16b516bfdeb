package ridgeproof.spec.limit;

import java.util.Set;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.VersionRange;

/**
 * The largest image that the standard has for a friction ridge position.
 *
 * @param recordTypes the record types for which the row holds
 * @param maxWidthMm millimetres
 * @param maxHeightMm millimetres
 */
public record ImageSizeLimit(
    Set<Integer> recordTypes,
    String position,
    double maxWidthMm,
    double maxHeightMm,
    VersionRange versions,
    Source source) {

  private static final double MM_PER_INCH = 25.4;

  public static ImageSizeLimit of(Table.Row row) {
    return new ImageSizeLimit(
        row.parse("record_types", Table::numbers),
        row.required("position"),
        row.parse("max_width_in", Double::parseDouble) * MM_PER_INCH,
        row.parse("max_height_in", Double::parseDouble) * MM_PER_INCH,
        row.versions(),
        row.source());
  }
}
