package ridgeproof.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.OutputFile;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.examination.Verdict;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.writer.TransactionWriter;
import ridgeproof.transaction.xml.writer.ConversionCheck;
import ridgeproof.transaction.xml.writer.Loss;
import ridgeproof.transaction.xml.writer.NotCarried;
import ridgeproof.transaction.xml.writer.TraditionalDrafts;
import ridgeproof.transaction.xml.writer.XmlTransactionWriter;

@Command(
    name = "convert",
    description = {
      "Writes a transaction in the other encoding of the standard.",
      "",
      "Values and images stay as they are. What the other encoding does not carry, or "
          + "carries only in another form than it asks for, is listed by record and field, "
          + "without its value. Lengths and the list of records (1.003) are computed; they are "
          + "listed where the original differs."
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof convert --to xml --output card.xml card.an2",
      "  ridgeproof convert --to traditional --output card.an2 card.xml",
      "",
      "Exit status: 0 everything was carried over, 1 something was not, 3 the file is no transaction."
    })
final class ConvertCommand implements Callable<Integer> {

  enum Target {
    xml,
    traditional
  }

  @Parameters(paramLabel = "FILE", description = "a transaction file in either encoding")
  Path path;

  @Option(
      names = "--to",
      paramLabel = "ENCODING",
      required = true,
      description = "xml (NIEM-conformant XML) or traditional")
  Target target;

  @Option(
      names = "--output",
      paramLabel = "TARGET",
      required = true,
      description = "the file to write")
  Path output;

  @Option(names = "--overwrite", description = "replaces an existing TARGET")
  boolean overwrite;

  @Mixin LimitOptions limits;

  private final Console console;

  ConvertCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    OutputFile.refuse(output, overwrite, List.of(path));
    SpecTables tables = SpecTables.open();
    InputFile file = InputFile.open(path, limits.maxFileSize);
    Transaction transaction = new TransactionReader(tables, limits.reading()).read(file.bytes());
    if (transaction.records().isEmpty()) {
      console.complain(path + ": is not a transaction; ridgeproof examine says more");
      return ExitStatus.of(Verdict.UNREADABLE);
    }
    List<Loss> losses = new ArrayList<>(write(transaction, tables));
    losses.addAll(ConversionCheck.of(transaction, written(tables), losses));
    losses.forEach(loss -> console.complain("not carried over as it is: " + loss));
    return losses.isEmpty() ? ExitStatus.OK : ExitStatus.of(Verdict.REVIEW);
  }

  /** What was written, read again: the check of every writer. */
  private Transaction written(SpecTables tables) {
    ParseLimits own = limits.reading();
    ParseLimits any =
        new ParseLimits(Integer.MAX_VALUE, own.maxRecords(), own.maxItems(), own.maxFindings());
    return new TransactionReader(tables, any)
        .read(InputFile.open(output, Integer.MAX_VALUE).bytes());
  }

  private List<Loss> write(Transaction transaction, SpecTables tables) {
    try (OutputFile written = OutputFile.open(output, overwrite, List.of(path))) {
      OutputStream out = new BufferedOutputStream(written.stream());
      List<Loss> losses = write(transaction, tables, out);
      out.flush();
      written.commit();
      return losses;
    } catch (IOException e) {
      throw OutputFile.failure(output, e);
    }
  }

  private List<Loss> write(Transaction transaction, SpecTables tables, OutputStream out)
      throws IOException {
    if (target == Target.xml) {
      return new XmlTransactionWriter(tables).write(transaction, out);
    }
    if (!transaction.isXml()) {
      out.write(TransactionWriter.write(transaction));
      List<Loss> losses = new ArrayList<>(NotCarried.unread(transaction));
      losses.addAll(NotCarried.lengths(transaction));
      losses.addAll(NotCarried.contents(transaction));
      return losses;
    }
    TraditionalDrafts drafts = new TraditionalDrafts(tables);
    out.write(drafts.write(transaction));
    return drafts.losses();
  }
}
