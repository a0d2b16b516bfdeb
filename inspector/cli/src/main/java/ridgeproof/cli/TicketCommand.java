package ridgeproof.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.examination.ExaminationOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.Ticket;
import ridgeproof.spec.SpecTables;

@Command(
    name = "ticket",
    description = {
      "Writes what a help desk needs to know of a file, without personal data.",
      "",
      "The file's name and every value that tells of a person are left out. The same file gives",
      "the same ticket on the same machine."
    },
    footer = {"", "Exit status: 0 once the ticket is written, whatever it says."})
final class TicketCommand implements Callable<Integer> {

  enum Format {
    text,
    markdown,
    html
  }

  @Parameters(paramLabel = "FILE", description = "a transaction file")
  Path path;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, markdown or html, text unless set")
  Format format;

  @Mixin DepthAndProfile choices;

  @Option(
      names = "--generated-at",
      paramLabel = "TIME",
      converter = InstantConverter.class,
      description = "a time to print, such as 2026-03-02T10:15:00Z; no time unless set")
  Instant generatedAt;

  @Mixin OutputOptions output;

  @Mixin LimitOptions limits;

  private final Console console;

  TicketCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    InputFile file = InputFile.open(path, limits.maxFileSize);
    ExaminationOptions options = choices.options(limits, tables);
    FindingsReport report = new Examiner(tables, limits.reading()).examine(file.bytes(), options);
    Ticket ticket =
        Ticket.of(file.facts(), report, Version.facts(), Optional.ofNullable(generatedAt));
    String text =
        switch (format) {
          case text -> ticket.asText();
          case markdown -> ticket.asMarkdown();
          case html -> ticket.asHtml();
        };
    output.write(text, console, List.of(path));
    return ExitStatus.OK;
  }
}
