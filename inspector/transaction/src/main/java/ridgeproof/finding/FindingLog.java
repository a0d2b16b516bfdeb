package ridgeproof.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.FieldRow;
import ridgeproof.spec.rule.RuleRow;
import ridgeproof.spec.rule.Severity;
import ridgeproof.spec.table.Source;

/** Collects findings while a file is read or examined, and fills the catalogue's texts for each. */
public final class FindingLog {

  private static final String STRUCTURE = "STR";
  private static final int LENGTH_FIELD = 1;
  private static final String WRONG_LENGTH = "RP-STR-004";

  private final SpecTables tables;
  private final List<Finding> findings = new ArrayList<>();
  private final int most;

  /**
   * @param most how many findings to keep; a damaged file could bring millions
   */
  public FindingLog(SpecTables tables, int most) {
    this.tables = tables;
    this.most = most;
  }

  public void add(String ruleId, Location location, Observed observed, String required) {
    add(ruleId, location, observed, required, Optional.empty(), List.of());
  }

  public void add(
      String ruleId,
      Location location,
      Observed observed,
      String required,
      List<Measure> evidence) {
    add(ruleId, location, observed, required, Optional.empty(), evidence);
  }

  /** As the other, where the requirement has a source of its own: a row of a layout, a limit. */
  public void add(
      String ruleId,
      Location location,
      Observed observed,
      String required,
      Optional<Source> source,
      List<Measure> evidence) {
    if (findings.size() >= most) {
      return;
    }
    RuleRow rule = tables.catalogue().rule(ruleId);
    Source basis = source.orElse(rule.source());
    findings.add(
        new Finding(
            rule,
            severity(rule, basis),
            location,
            observed,
            required,
            fill(rule.explanation(), location, observed, required),
            isLength(location)
                ? fill(tables.catalogue().rule(WRONG_LENGTH).remedy(), location, observed, required)
                : fill(rule.remedy(), location, observed, required),
            basis,
            evidence));
  }

  /**
   * A file is not held for what is only remembered or disputed; how its own bytes fit together
   * needs no list to be seen.
   */
  private static Severity severity(RuleRow rule, Source basis) {
    boolean soft = !basis.known().isFirm() && !rule.area().equals(STRUCTURE);
    return soft && rule.severity() == Severity.BLOCKING ? Severity.LIKELY : rule.severity();
  }

  /** Everything collected so far, in order. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** A length is computed by the station; editing it would make a damaged file look whole. */
  private static boolean isLength(Location location) {
    return location.field().map(FieldNumber::field).orElse(0) == LENGTH_FIELD;
  }

  private String fill(String text, Location location, Observed observed, String required) {
    if (text.indexOf('{') < 0) {
      return text;
    }
    String words = filled(text, location, observed, required);
    return text.startsWith("{")
        ? words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1)
        : words;
  }

  private String filled(String text, Location location, Observed observed, String required) {
    return text.replace("{field}", location.field().map(FieldNumber::toString).orElse("the field"))
        .replace("{name}", location.field().map(this::name).orElse("the value"))
        .replace("{record}", record(location))
        .replace("{finger}", finger(location.position()))
        .replace("{found}", observed.personal() ? "the value" : observed.text())
        .replace("{required}", required);
  }

  private String name(FieldNumber number) {
    return tables.layout(number.recordType()).rows().stream()
        .filter(row -> row.item().isEmpty() && row.covers(number))
        .map(FieldRow::name)
        .findFirst()
        .orElse("field " + number);
  }

  private static String record(Location location) {
    if (location.recordType().isEmpty()) {
      return "the file";
    }
    String type = "Type-" + location.recordType().getAsInt() + " record";
    return location.record().isPresent()
        ? "record " + location.record().getAsInt() + " (" + type + ")"
        : "the " + type;
  }

  private String finger(OptionalInt position) {
    return position.isEmpty() ? "the finger" : "the " + tables.positionName(position.getAsInt());
  }
}
