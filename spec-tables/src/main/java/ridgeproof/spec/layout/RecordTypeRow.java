package ridgeproof.spec.layout;

import java.util.Optional;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;
import ridgeproof.spec.table.VersionRange;

/**
 * A type of logical record.
 *
 * @param imageField the field that holds the image or other binary data, if the type has one
 */
public record RecordTypeRow(
    int type,
    String name,
    Encoding encoding,
    VersionRange versions,
    Optional<FieldNumber> imageField,
    Source source) {

  public static RecordTypeRow of(Table.Row row) {
    return new RecordTypeRow(
        row.parse("type", Integer::parseInt),
        row.required("name"),
        row.parse("encoding", Encoding::parse),
        row.versions(),
        row.optional("image_field").map(cell -> row.parse("image_field", FieldNumber::parse)),
        row.source());
  }

  /** How the fields of a record stand in the file. */
  public enum Encoding {
    /** Text fields, each led by its number. */
    TAGGED,
    /** Unsigned numbers at fixed places. */
    BINARY;

    private static Encoding parse(String cell) {
      return switch (cell) {
        case "tagged" -> TAGGED;
        case "binary" -> BINARY;
        default -> throw new IllegalArgumentException("neither tagged nor binary");
      };
    }
  }
}
