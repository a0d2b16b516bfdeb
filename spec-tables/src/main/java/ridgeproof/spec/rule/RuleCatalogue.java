package ridgeproof.spec.rule;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import ridgeproof.spec.table.Table;

/** Every rule there is, in the order of the file. */
public final class RuleCatalogue {

  private static final Pattern ID = Pattern.compile("RP-(STR|FLD|COD|TXN|IMG|RDG|SEQ|PTL)-\\d{3}");

  private final Map<String, RuleRow> rows;

  private RuleCatalogue(Map<String, RuleRow> rows) {
    this.rows = Collections.unmodifiableMap(rows);
  }

  public static RuleCatalogue load() {
    Map<String, RuleRow> rows = new LinkedHashMap<>();
    for (Table.Row row : Table.resource("rules/catalogue.csv").rows()) {
      String id = row.required("id");
      if (!ID.matcher(id).matches()) {
        throw row.error("id", id + " is not RP-, an area and three digits");
      }
      RuleRow rule =
          new RuleRow(
              id,
              row.parse("severity", Severity::valueOf),
              row.required("title"),
              row.required("explanation"),
              row.required("remedy"),
              row.source());
      if (rows.put(id, rule) != null) {
        throw row.error("id", id + " is there twice");
      }
    }
    return new RuleCatalogue(rows);
  }

  /**
   * The row of an id that the code names.
   *
   * @throws IllegalArgumentException if there is none, which is a defect of ours
   */
  public RuleRow rule(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException("no rule " + id));
  }

  public Optional<RuleRow> find(String id) {
    return Optional.ofNullable(rows.get(id));
  }

  public Collection<RuleRow> rules() {
    return rows.values();
  }
}
