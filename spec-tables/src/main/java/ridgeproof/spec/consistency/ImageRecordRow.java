package ridgeproof.spec.consistency;

import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Table;

/**
 * Which fields of a record type describe its image.
 *
 * @param frictionRidge whether the image shows fingers, palms or soles
 * @param compressionTable the code table of the compression field
 * @param depth bits per pixel where the type fixes it
 */
public record ImageRecordRow(
    int type,
    boolean frictionRidge,
    Optional<FieldNumber> impression,
    Optional<FieldNumber> positions,
    Optional<FieldNumber> amputation,
    FieldNumber width,
    FieldNumber height,
    Optional<FieldNumber> scaleUnits,
    Optional<FieldNumber> horizontalScale,
    Optional<FieldNumber> verticalScale,
    Optional<FieldNumber> compression,
    String compressionTable,
    OptionalInt depth,
    Optional<FieldNumber> bitsPerPixel) {

  public static ImageRecordRow of(Table.Row row) {
    return new ImageRecordRow(
        row.parse("type", Integer::parseInt),
        row.text("friction_ridge").equals("yes"),
        number(row, "impression"),
        number(row, "positions"),
        number(row, "amputation"),
        row.parse("width", FieldNumber::parse),
        row.parse("height", FieldNumber::parse),
        number(row, "scale_units"),
        number(row, "horizontal_scale"),
        number(row, "vertical_scale"),
        number(row, "compression"),
        row.required("compression_table"),
        row.integer("depth"),
        number(row, "bits_per_pixel"));
  }

  private static Optional<FieldNumber> number(Table.Row row, String column) {
    return row.optional(column).map(cell -> row.parse(column, FieldNumber::parse));
  }
}
