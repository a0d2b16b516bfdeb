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
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.OutputFile;
import ridgeproof.cli.io.Version;
import ridgeproof.cli.option.DepthAndProfile;
import ridgeproof.cli.option.InstantConverter;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.safecopy.SafeCopies;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ticket.AttachedCopy;
import ridgeproof.report.ticket.Ticket;
import ridgeproof.spec.SpecTables;

@Command(
    name = "ticket",
    description = {
      "Writes a ticket for a help desk or a vendor, without personal data.",
      "",
      "The ticket omits the name of the file and all personal data. On one machine, the same"
          + " file gives the same ticket on the same day or with the same --as-of."
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof ticket card.an2",
      "  ridgeproof ticket --attach-safe-copy copy.an2 --output ticket.txt card.an2",
      "",
      "Exit status: 0 ticket written, whatever its verdict;",
      "64 invalid usage, 70 internal error, 74 input or output error."
    })
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
      description = "text, markdown, or html (default: text)")
  Format format;

  @Mixin DepthAndProfile choices;

  @Option(
      names = "--generated-at",
      paramLabel = "TIME",
      converter = InstantConverter.class,
      description = "a time to print, such as 2026-03-02T10:15:00Z (default: none)")
  Instant generatedAt;

  @Option(
      names = "--attach-safe-copy",
      paramLabel = "COPY",
      description =
          "also write a copy for the vendor: the same layout byte for byte, but invented"
              + " biographic data and blank images; the ticket shows its name, so do not name a"
              + " person")
  Path copyPath;

  @Mixin OutputOptions output;

  @Mixin LimitOptions limits;

  private final Console console;

  TicketCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    output.refuse(List.of(path));
    refuseCopy();
    SpecTables tables = SpecTables.open();
    InputFile file = InputFile.open(path, limits.maxFileSize);
    ExaminationOptions options = choices.options(limits, tables);
    Examiner examiner = new Examiner(tables, limits.reading());
    FindingsReport report = examiner.examine(file.bytes(), options);
    Optional<AttachedCopy> copy =
        Optional.ofNullable(copyPath)
            .map(to -> attached(new SafeCopies(examiner, options).of(report)));
    Ticket ticket =
        Ticket.of(file.facts(), report, Version.facts(), Optional.ofNullable(generatedAt), copy);
    String text =
        switch (format) {
          case text -> ticket.asText();
          case markdown -> ticket.asMarkdown();
          case html -> ticket.asHtml();
        };
    output.write(text, console, List.of(path));
    return ExitStatus.OK;
  }

  private void refuseCopy() {
    if (copyPath == null) {
      return;
    }
    if (output.output != null && sameName(output.output, copyPath)) {
      throw CommandFailure.usage(copyPath + ": the ticket and the copy need different files");
    }
    OutputFile.refuse(copyPath, output.overwrite, taken());
  }

  private static boolean sameName(Path one, Path other) {
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }

  /** What the copy may not be written to. */
  private List<Path> taken() {
    return output.output == null ? List.of(path) : List.of(path, output.output);
  }

  private AttachedCopy attached(SafeCopy copy) {
    OutputFile.write(copyPath, copy.bytes().toArray(), output.overwrite, taken());
    String name = copyPath.getFileName().toString();
    return new AttachedCopy(
        new FileFacts(name, copy.bytes().length(), InputFile.sha256(copy.bytes())), copy);
  }
}
