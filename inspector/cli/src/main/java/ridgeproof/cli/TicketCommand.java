package ridgeproof.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ridgeproof.cli.drawing.SyntheticPrints;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.OutputFile;
import ridgeproof.cli.io.Version;
import ridgeproof.cli.option.ExaminationMixin;
import ridgeproof.cli.option.InstantConverter;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.examination.safecopy.SafeCopy;
import ridgeproof.report.FileFacts;
import ridgeproof.report.ticket.AttachedCopy;
import ridgeproof.report.ticket.Ticket;
import ridgeproof.report.ticket.TicketRequest;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.TransactionReader;

@Command(
    name = "ticket",
    description = {
      "Writes a ticket for a help desk or the station's vendor, without personal data.",
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
    html,
    json
  }

  /** The message of a response. */
  private static final FieldNumber MESSAGE = new FieldNumber(2, 60);

  @Parameters(paramLabel = "FILE", description = "a transaction file")
  Path path;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, markdown, html, or json (default: text)")
  Format format;

  @Mixin ExaminationMixin choices;

  @Option(
      names = "--generated-at",
      paramLabel = "TIME",
      converter = InstantConverter.class,
      description = "a time to print, such as 2026-03-02T10:15:00Z (default: none)")
  Instant generatedAt;

  @Option(
      names = "--message",
      paramLabel = "TEXT",
      description = "the bureau's message about this file, to be explained in the ticket")
  String message;

  @Option(
      names = "--response",
      paramLabel = "FILE",
      description = "the bureau's response, of which the message fields (2.060) are used")
  Path response;

  @Option(
      names = "--with-control-number",
      description =
          "show the control number (1.009), which ties rejections of one applicant together")
  boolean withControlNumber;

  @Option(
      names = "--attach-safe-copy",
      paramLabel = "COPY",
      description =
          "also write a copy for the vendor: the same layout byte for byte, but invented"
              + " biographic data and synthetic or blank images; the ticket shows its name, so do not name a"
              + " person")
  Path copyPath;

  @Mixin OutputOptions output;

  @Mixin LimitOptions limits;

  @Spec CommandSpec spec;

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
    TicketRequest request = TicketRequest.standard().withCommandLine(commandLine());
    if (generatedAt != null) {
      request = request.withTime(generatedAt);
    }
    if (copyPath != null) {
      request =
          request.withCopy(
              attached(new Deidentifier(examiner, options, new SyntheticPrints()).of(report)));
    }
    Optional<String> answer = answer(tables);
    if (answer.isPresent()) {
      request = request.withMessage(answer.get());
    }
    if (withControlNumber) {
      request = request.withControlNumber();
    }
    Ticket ticket = Ticket.of(file.facts(), report, Version.facts(), request);
    String text =
        switch (format) {
          case text -> ticket.asText();
          case markdown -> ticket.asMarkdown();
          case html -> ticket.asHtml();
          case json -> ticket.asJson();
        };
    output.write(text, console, List.of(path));
    return ExitStatus.OK;
  }

  private Optional<String> answer(SpecTables tables) {
    if (response == null) {
      return Optional.ofNullable(message);
    }
    if (message != null) {
      throw CommandFailure.usage("--message cannot be combined with --response");
    }
    InputFile file = InputFile.open(response, limits.maxFileSize);
    Transaction answered = new TransactionReader(tables, limits.reading()).read(file.bytes());
    List<String> texts =
        answered.recordsOfType(MESSAGE.recordType()).stream()
            .flatMap(record -> record.field(MESSAGE).stream())
            .flatMap(field -> field.subfields().stream())
            .map(subfield -> subfield.text(1))
            .toList();
    if (texts.isEmpty()) {
      throw CommandFailure.inputOutput(response + ": no message field (" + MESSAGE + ") in it");
    }
    return Optional.of(String.join("; ", texts));
  }

  /** As it was typed, with words for what could name a person. */
  private String commandLine() {
    Map<String, String> words = new HashMap<>();
    words.put(path.toString(), "FILE");
    words.put(String.valueOf(copyPath), "COPY");
    words.put(String.valueOf(output.output), "OUTPUT");
    words.put(String.valueOf(response), "RESPONSE");
    words.put(String.valueOf(message), "TEXT");
    if (choices.profile != null) {
      words.put(choices.profile, Path.of(choices.profile).getFileName().toString());
    }
    return "ridgeproof "
        + spec.commandLine().getParseResult().originalArgs().stream()
            .map(argument -> shown(argument, words))
            .collect(Collectors.joining(" "));
  }

  private static String shown(String argument, Map<String, String> words) {
    int value = argument.startsWith("--") ? argument.indexOf('=') : -1;
    String text = argument.substring(value + 1);
    return argument.substring(0, value + 1) + words.getOrDefault(text, text);
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
        new FileFacts(name, copy.bytes().length(), copy.bytes().sha256()), copy);
  }
}
