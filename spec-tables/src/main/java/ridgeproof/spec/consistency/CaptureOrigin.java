package ridgeproof.spec.consistency;

import java.util.Locale;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.Table;

/**
 * A field that tells where a capture comes from. The first field of a kind that says something
 * decides.
 */
public record CaptureOrigin(Kind kind, FieldNumber field, Source source) {

  public static CaptureOrigin of(Table.Row row) {
    return new CaptureOrigin(
        row.parse("origin", Kind::parse), row.parse("field", FieldNumber::parse), row.source());
  }

  /** Who or what captured. */
  public enum Kind {
    /** The agency that sends. */
    AGENCY,
    /** The capture equipment, by make, model and serial number or by its identifier. */
    STATION,
    /** The person who captured; no published field tells, only agencies' own fields do. */
    OPERATOR;

    /** The word in tables and reports. */
    public String label() {
      return name().toLowerCase(Locale.ROOT);
    }

    public static Kind parse(String text) {
      return valueOf(text.toUpperCase(Locale.ROOT));
    }
  }
}
