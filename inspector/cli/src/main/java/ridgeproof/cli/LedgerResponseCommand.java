package ridgeproof.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import ridgeproof.examination.Depth;
import ridgeproof.examination.ExaminationOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.bookkeeping.Bookkeeper;
import ridgeproof.ledger.report.Answer;
import ridgeproof.spec.SpecTables;

/** Takes in what a bureau answered. */
@Command(
    name = "response",
    description = {
      "Reads response files, explains them, says which submission of the ledger each answers, and",
      "records them. A response can also be recorded with examine --ledger."
    },
    footer = {
      "",
      "Exit status: 0 all accepted, 2 a submission was rejected, 3 a file is no response,",
      "64 wrong usage, 74 cannot be read or written."
    })
final class LedgerResponseCommand implements Callable<Integer> {

  private static final int REJECTED = 2;
  private static final int NO_RESPONSE = 3;

  @Mixin LedgerInput input;

  @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "response files")
  List<Path> files;

  @Mixin LimitOptions limits;

  private final Console console;

  LedgerResponseCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    KeyedHash hash = input.place().hash();
    Bookkeeper bookkeeper = new Bookkeeper(hash, tables, Version.number(), false, List.of());
    Examiner examiner = new Examiner(tables, limits.reading());
    ExaminationOptions options = ExaminationOptions.standard().withDepth(Depth.STRUCTURE);
    return input.use(
        store -> {
          int worst = ExitStatus.OK;
          for (Path path : files) {
            InputFile file = InputFile.open(path, limits.maxFileSize);
            FindingsReport report = examiner.examine(file.bytes(), options);
            Entry entry =
                bookkeeper.entry(file.facts().sha256(), report, Instant.now(Clock.systemUTC()));
            if (entry.response().isEmpty()) {
              console.complain(path + ": not a response to a submission; nothing was recorded");
              worst = Math.max(worst, NO_RESPONSE);
            } else {
              Answer answer = Answer.of(entry, report.transaction(), store, tables);
              store.add(entry);
              console.print(answer.text(file.facts().name()));
              worst = Math.max(worst, answer.accepted() ? ExitStatus.OK : REJECTED);
            }
          }
          return worst;
        });
  }
}
