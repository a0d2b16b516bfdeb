package ridgeproof.cli;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.report.catalogue.CoveragePage;
import ridgeproof.report.catalogue.RequirementCount;
import ridgeproof.report.catalogue.RuleExport;
import ridgeproof.report.catalogue.RuleListing;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.rule.RuleRow;

@Command(
    name = "rules",
    description = "Lists all rules, or explains one rule with its remedy and source.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof rules",
      "  ridgeproof rules RP-STR-004",
      "  ridgeproof rules --format csv --output rules.csv"
    })
final class RulesCommand implements Callable<Integer> {

  enum Format {
    text,
    json,
    csv
  }

  @Parameters(
      paramLabel = "ID",
      arity = "0..1",
      description = "a rule such as RP-STR-004, or an area such as STR")
  String id;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, json, or csv (default: text)")
  Format format;

  @Option(
      names = "--count",
      description = "count the requirements of the record layouts, by record type")
  boolean count;

  @Option(
      names = "--coverage",
      description = "write a Markdown page on how much of the tables is published")
  boolean coverage;

  @Mixin OutputOptions output;

  private final Console console;

  RulesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    output.write(text(tables), console, List.of());
    return ExitStatus.OK;
  }

  private String text(SpecTables tables) {
    if (count) {
      if (id != null || format != Format.text) {
        throw CommandFailure.usage("--count cannot be combined with a rule or another format");
      }
      return new RequirementCount(tables).text();
    }
    if (coverage) {
      if (id != null || format != Format.text) {
        throw CommandFailure.usage("--coverage cannot be combined with a rule or another format");
      }
      return new CoveragePage(tables).markdown();
    }
    List<RuleRow> rules = wanted(tables);
    return switch (format) {
      case json -> new RuleExport(tables).json(rules);
      case csv -> new RuleExport(tables).csv(rules);
      case text -> {
        RuleListing listing = new RuleListing(tables);
        boolean single = id != null && rules.get(0).id().equalsIgnoreCase(id);
        yield single ? listing.explain(rules.get(0)) : listing.list(rules);
      }
    };
  }

  private List<RuleRow> wanted(SpecTables tables) {
    List<RuleRow> all = List.copyOf(tables.catalogue().rules());
    if (id == null) {
      return all;
    }
    String wanted = id.toUpperCase(Locale.ROOT);
    List<RuleRow> rules =
        all.stream().filter(r -> r.area().equals(wanted) || r.id().equals(wanted)).toList();
    if (rules.isEmpty()) {
      throw CommandFailure.usage("no rule " + id + "; to list all: ridgeproof rules");
    }
    return rules;
  }
}
