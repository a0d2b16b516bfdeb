package ridgeproof.spec.layout;

import java.util.Optional;
import ridgeproof.spec.table.Source;
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

  /** How the fields of a record stand in the file. */
  public enum Encoding {
    /** Text fields, each led by its number. */
    TAGGED,
    /** Unsigned numbers at fixed places. */
    BINARY
  }
}
