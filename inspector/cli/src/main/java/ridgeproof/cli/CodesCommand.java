package ridgeproof.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.report.catalogue.CodeListing;
import ridgeproof.spec.SpecTables;

@Command(
    name = "codes",
    description =
        "Lists the code tables, the codes of one table, or all codes that contain a word.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof codes",
      "  ridgeproof codes finger-positions",
      "  ridgeproof codes --find tattoo"
    })
final class CodesCommand implements Callable<Integer> {

  @Parameters(
      index = "0",
      paramLabel = "TABLE",
      arity = "0..1",
      description = "a code table, such as finger-positions")
  String table;

  @Parameters(
      index = "1",
      paramLabel = "WORD",
      arity = "0..1",
      description = "only entries whose code or name contains this word")
  String word;

  @Option(
      names = "--find",
      paramLabel = "WORD",
      description = "search the codes and names of all tables for a word")
  String everywhere;

  @Mixin OutputOptions output;

  private final Console console;

  CodesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    output.write(text(tables), console, List.of());
    return ExitStatus.OK;
  }

  private String text(SpecTables tables) {
    if (everywhere != null) {
      return CodeListing.find(tables, everywhere);
    }
    if (table == null) {
      return CodeListing.tables(tables);
    }
    if (!tables.hasCodeTable(table)) {
      throw CommandFailure.usage("no code table " + table + "; to list all: ridgeproof codes");
    }
    return CodeListing.codes(tables.codes(table), word == null ? "" : word);
  }
}
