package ridgeproof.report.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import ridgeproof.report.ReportPhrases;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.RecordTypeRow;
import ridgeproof.spec.requirement.Requirement;
import ridgeproof.spec.requirement.RequirementKind;
import ridgeproof.spec.requirement.Requirements;
import ridgeproof.spec.rule.RuleRow;

/** The page {@code docs/rules.md}: every rule, and how many requirements the layouts state. */
public final class RulesPage {

  private final SpecTables tables;
  private final ReportPhrases wording;

  public RulesPage(SpecTables tables) {
    this.tables = tables;
    this.wording = new ReportPhrases(tables);
  }

  /** The page in Markdown. */
  public String markdown() {
    StringBuilder out = new StringBuilder();
    out.append("# Rules\n\n");
    out.append("Made from the tables by `mvn -pl reports -am test -Dtest=RulesPageTest ");
    out.append("-Dsurefire.failIfNoSpecifiedTests=false -Dridgeproof.write-rules-page=true`; ");
    out.append("edit the tables, not this page.\n\n");
    appendRules(out);
    appendRequirements(out);
    appendShadowed(out);
    return out.toString();
  }

  private void appendRules(StringBuilder out) {
    out.append("## Catalogue\n\n");
    out.append("`ridgeproof rules ID` explains a rule with its remedy. BLOCKING: a bureau that ");
    out.append(
        "follows the source rejects the file or cannot read it; LIKELY: commonly rejected, ");
    out.append(
        "or the print may not match; ADVICE: allowed, but worth checking; NOTE: for information.\n\n");
    out.append("| rule | severity | what | source | known |\n|---|---|---|---|---|\n");
    for (RuleRow rule : tables.catalogue().rules()) {
      String place = rule.source().place().isEmpty() ? "" : ", " + rule.source().place();
      row(
          out,
          rule.id(),
          rule.severity().name(),
          rule.title(),
          wording.title(rule.source().document()) + place,
          rule.source().known().label());
    }
    out.append('\n').append(tables.catalogue().rules().size()).append(" rules.\n\n");
  }

  private void appendRequirements(StringBuilder out) {
    RequirementCount count = new RequirementCount(tables);
    out.append("## Requirements of the record layouts\n\n");
    out.append("A requirement is one condition in a row of a layout, with an id such as ");
    out.append(
        "`14.021.3/max-length`. Each is tested with a transaction that meets it and one that ");
    out.append("breaks it alone.\n\n| record type |");
    for (RequirementKind kind : RequirementKind.values()) {
      out.append(' ').append(kind.label()).append(" |");
    }
    out.append(" in all |\n|---|").append("---:|".repeat(RequirementKind.values().length + 1));
    out.append('\n');
    Map<String, Integer> sums = new LinkedHashMap<>();
    for (Map.Entry<RecordTypeRow, Map<RequirementKind, Integer>> entry :
        count.byKind().entrySet()) {
      RecordTypeRow type = entry.getKey();
      appendKinds(out, "Type-" + type.type() + " " + type.name(), entry.getValue());
      entry.getValue().forEach((kind, number) -> sums.merge(kind.label(), number, Integer::sum));
    }
    out.append("| in all |");
    for (RequirementKind kind : RequirementKind.values()) {
      out.append(' ').append(sums.getOrDefault(kind.label(), 0)).append(" |");
    }
    out.append(' ').append(count.total()).append(" |\n\n");
  }

  private static void appendKinds(
      StringBuilder out, String name, Map<RequirementKind, Integer> kinds) {
    out.append("| ").append(name).append(" |");
    for (RequirementKind kind : RequirementKind.values()) {
      out.append(' ').append(kinds.getOrDefault(kind, 0)).append(" |");
    }
    int sum = kinds.values().stream().mapToInt(Integer::intValue).sum();
    out.append(' ').append(sum).append(" |\n");
  }

  private void appendShadowed(StringBuilder out) {
    out.append("## Cells that are not requirements\n\n");
    out.append(
        "What another check reports first cannot be broken alone, so it is not counted.\n\n");
    out.append("| kind | why | cells |\n|---|---|---:|\n");
    Map<List<String>, Long> shadows =
        new Requirements(tables)
            .all().stream()
                .filter(requirement -> !requirement.isObservable())
                .collect(
                    Collectors.groupingBy(
                        RulesPage::shadow, LinkedHashMap::new, Collectors.counting()));
    shadows.forEach((key, number) -> row(out, key.get(0), key.get(1), Long.toString(number)));
  }

  private static List<String> shadow(Requirement requirement) {
    return List.of(requirement.kind().label(), requirement.shadow().orElseThrow());
  }

  private static void row(StringBuilder out, String... cells) {
    out.append('|');
    for (String cell : cells) {
      out.append(' ').append(cell.replace("|", "\\|")).append(" |");
    }
    out.append('\n');
  }
}
