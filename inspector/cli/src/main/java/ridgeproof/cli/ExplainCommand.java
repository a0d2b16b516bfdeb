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
import ridgeproof.examination.message.BureauMessages;
import ridgeproof.examination.message.Explanation;
import ridgeproof.report.catalogue.MessageListing;
import ridgeproof.spec.SpecTables;

@Command(
    name = "explain",
    description = {
      "Explains a message from a bureau: what it means, which rules find its cause, "
          + "what to do.",
      "",
      "Without a message it lists those that are known."
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof explain L0008",
      "  ridgeproof explain \"Fingerprint sequence error\"",
      "",
      "Exit status: 0 the message is known, 1 it is not."
    })
final class ExplainCommand implements Callable<Integer> {

  private static final int UNKNOWN = 1;

  enum Format {
    text,
    json
  }

  @Parameters(
      paramLabel = "MESSAGE",
      arity = "0..*",
      description = "the code or the text of the message")
  List<String> words = List.of();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text or json (default: text)")
  Format format;

  @Mixin OutputOptions output;

  private final Console console;

  ExplainCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    MessageListing listing = new MessageListing(tables);
    if (words.isEmpty()) {
      if (format == Format.json) {
        throw CommandFailure.usage("--format json explains a message: give its code or text");
      }
      output.write(listing.list(), console, List.of());
      return ExitStatus.OK;
    }
    Explanation explanation = new BureauMessages(tables).explain(String.join(" ", words));
    output.write(
        format == Format.json ? listing.json(explanation) : listing.text(explanation),
        console,
        List.of());
    return explanation.isKnown() ? ExitStatus.OK : UNKNOWN;
  }
}
