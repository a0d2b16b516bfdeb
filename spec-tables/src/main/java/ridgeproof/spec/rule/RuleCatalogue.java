package ridgeproof.spec.rule;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import ridgeproof.spec.table.Lazy;
import ridgeproof.spec.table.Table;

/** Every rule there is, in the order of the file. */
public final class RuleCatalogue {

  private static final Pattern ID =
      Pattern.compile("RP-(STR|FLD|COD|TXN|IMG|RDG|SEQ|PTL|XML)-\\d{3}");

  private final Map<String, RuleRow> rows;
  private final Lazy<Map<String, Map<RuleRow.Capture, String>>> remedies =
      new Lazy<>(this::readRemedies);

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
        throw row.error("id", id + " is a duplicate");
      }
    }
    return new RuleCatalogue(rows);
  }

  /**
   * The same rows, and these.
   *
   * @throws IllegalArgumentException if an id is none, or is there already
   */
  public RuleCatalogue plus(List<RuleRow> more) {
    Map<String, RuleRow> all = new LinkedHashMap<>(rows);
    for (RuleRow rule : more) {
      if (!ID.matcher(rule.id()).matches() || all.put(rule.id(), rule) != null) {
        throw new IllegalArgumentException(rule.id() + " is no id, or a duplicate");
      }
    }
    return new RuleCatalogue(all);
  }

  private Map<String, Map<RuleRow.Capture, String>> readRemedies() {
    Map<String, Map<RuleRow.Capture, String>> remedies = new HashMap<>();
    for (Table.Row row : Table.resource("rules/capture-remedies.csv").rows()) {
      String id = row.required("rule");
      if (!rows.containsKey(id)) {
        throw row.error("rule", "no rule " + id);
      }
      RuleRow.Capture capture =
          row.parse("capture", word -> RuleRow.Capture.valueOf(word.toUpperCase(Locale.ROOT)));
      Map<RuleRow.Capture, String> ofRule =
          remedies.computeIfAbsent(id, rule -> new EnumMap<>(RuleRow.Capture.class));
      if (ofRule.put(capture, row.required("remedy")) != null) {
        throw row.error("capture", id + " has two remedies for " + capture);
      }
    }
    return remedies;
  }

  /** What helps with a print captured so; empty where the remedy of the rule itself suits it. */
  public Optional<String> remedy(String id, RuleRow.Capture capture) {
    return Optional.ofNullable(remedies.get().getOrDefault(id, Map.of()).get(capture));
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

  /**
   * The ids that a cell names, in the order of the catalogue: blanks between, and {@code RP-RDG-*}
   * for all that begin so.
   *
   * @throws IllegalArgumentException if a name is that of no rule
   */
  public List<String> matching(String cell) {
    List<String> names = Table.words(cell).toList();
    for (String name : names) {
      if (rows.keySet().stream().noneMatch(id -> isNamed(id, name))) {
        throw new IllegalArgumentException("no rule " + name);
      }
    }
    return rows.keySet().stream()
        .filter(id -> names.stream().anyMatch(name -> isNamed(id, name)))
        .toList();
  }

  private static boolean isNamed(String id, String name) {
    return name.endsWith("*")
        ? id.startsWith(name.substring(0, name.length() - 1))
        : id.equals(name);
  }

  public Collection<RuleRow> rules() {
    return rows.values();
  }
}
