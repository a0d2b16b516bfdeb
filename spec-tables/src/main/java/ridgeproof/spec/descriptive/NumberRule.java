package ridgeproof.spec.descriptive;

import java.util.Locale;
import java.util.regex.Pattern;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;

/**
 * What is known of the entries of one Type-2 field.
 *
 * @param meaning the pattern in plain words
 */
public record NumberRule(
    FieldNumber field, Kind kind, Pattern pattern, String meaning, Source source) {

  /** What it means when an entry matches. */
  public enum Kind {
    /** It has the published form. */
    SHAPE,
    /** It has one of the forms in which such numbers are issued. */
    FORM,
    /** Such a number is never given out. */
    NEVER_ISSUED,
    /** It lies within one of the published ranges. */
    RANGE,
    /** It says that the value is not known. */
    UNKNOWN,
    /** It only fills the field. */
    FILLER;

    public static Kind parse(String cell) {
      return valueOf(cell.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
  }

  public boolean matches(String entry) {
    return pattern.matcher(entry).matches();
  }
}
