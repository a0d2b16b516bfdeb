package ridgeproof.cli;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import ridgeproof.report.RuleListing;
import ridgeproof.spec.RuleRow;
import ridgeproof.spec.SpecTables;

@Command(
    name = "rules",
    description = "Lists every rule, or explains one with its remedy and source.")
final class RulesCommand implements Callable<Integer> {

  @Parameters(
      paramLabel = "ID",
      arity = "0..1",
      description = "a rule such as RP-STR-004, or an area such as STR")
  String id;

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
    RuleListing listing = new RuleListing(tables);
    if (id == null) {
      return listing.list(List.copyOf(tables.catalogue().rules()));
    }
    String wanted = id.toUpperCase(Locale.ROOT);
    List<RuleRow> area =
        tables.catalogue().rules().stream().filter(rule -> rule.area().equals(wanted)).toList();
    if (!area.isEmpty()) {
      return listing.list(area);
    }
    return tables
        .catalogue()
        .find(wanted)
        .map(listing::explain)
        .orElseThrow(() -> CommandFailure.usage("no rule " + id + "; ridgeproof rules lists them"));
  }
}
