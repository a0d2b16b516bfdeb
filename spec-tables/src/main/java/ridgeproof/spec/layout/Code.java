package ridgeproof.spec.layout;

import java.util.Map;
import ridgeproof.spec.table.Source;
import ridgeproof.spec.table.VersionRange;

/**
 * One code of a code table.
 *
 * @param properties the table's own further columns, by name
 */
public record Code(
    String code,
    String name,
    VersionRange versions,
    Source source,
    Map<String, String> properties) {

  /** A further column of the table, empty text where the row says nothing. */
  public String property(String column) {
    return properties.getOrDefault(column, "");
  }
}
