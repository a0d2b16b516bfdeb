package ridgeproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.examination.Verdict;
import ridgeproof.report.RenderOptions;
import ridgeproof.report.text.LayoutListing;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.TransactionReader;

@Command(
    name = "layout",
    description = "Lists the records, fields, offsets, and bytes of a file without checking them.",
    footer = {
      "",
      "Examples:",
      "  ridgeproof layout card.an2",
      "  ridgeproof layout --show-personal card.an2"
    })
final class LayoutCommand implements Callable<Integer> {

  private static final int WIDTH = 100;

  @Parameters(paramLabel = "FILE", description = "a transaction file")
  Path path;

  @Option(names = "--show-personal", description = "show personal data unmasked")
  boolean showPersonal;

  @Mixin OutputOptions output;

  @Mixin LimitOptions limits;

  private final Console console;

  LayoutCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    InputFile file = InputFile.open(path, limits.maxFileSize);
    Transaction transaction = new TransactionReader(tables, limits.reading()).read(file.bytes());
    RenderOptions options = new RenderOptions(showPersonal, false, WIDTH);
    output.write(
        LayoutListing.render(file.facts(), transaction, tables, options), console, List.of(path));
    return transaction.records().isEmpty() ? ExitStatus.of(Verdict.UNREADABLE) : ExitStatus.OK;
  }
}
