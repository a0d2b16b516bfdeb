package ridgeproof.cli.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.ReportTarget;
import ridgeproof.cli.io.Version;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.cli.option.OutputOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.ledger.Entry;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.bookkeeping.Bookkeeper;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.ledger.report.Answer;
import ridgeproof.ledger.report.LedgerExport;
import ridgeproof.ledger.store.LedgerError;
import ridgeproof.ledger.store.LedgerStore;
import ridgeproof.report.words.Counted;
import ridgeproof.spec.SpecTables;

/**
 * What the commands do with a ledger. It is apart from them, since the command line looks through
 * the classes of all commands, and none of the ledger is loaded for the others.
 */
final class LedgerWork {

  private static final int PROBLEMS = 2;
  private static final int REJECTED = 2;
  private static final int NO_RESPONSE = 3;

  private final LedgerPlace place;
  private final Console console;

  LedgerWork(LedgerInput input, Console console) {
    this.place = input.place();
    this.console = console;
  }

  /** The health of the stations; empty if the ledger cannot be read. */
  static Optional<StationHealth> health(LedgerPlace place, KeyedHash hash, LocalDate last) {
    try (LedgerStore store = place.open(hash)) {
      return Optional.of(StationHealth.of(store.queries(), last));
    } catch (LedgerError | CommandFailure e) {
      return Optional.empty();
    }
  }

  /** Reading or changing a ledger. */
  interface Work<T> {
    T with(LedgerStore store, KeyedHash hash);
  }

  <T> T use(Work<T> work) {
    KeyedHash hash = place.hash();
    try (LedgerStore store = place.open(hash)) {
      return work.with(store, hash);
    } catch (LedgerError e) {
      throw CommandFailure.inputOutput(e.getMessage());
    }
  }

  int check() {
    return use(
        (store, hash) -> {
          List<String> problems = store.check();
          if (problems.isEmpty()) {
            String entries = Counted.of(store.count(), "entry", "entries");
            console.print("The ledger is sound: " + entries + ".");
            return ExitStatus.OK;
          }
          console.print(String.join("\n", problems));
          return PROBLEMS;
        });
  }

  int export(OutputOptions output) {
    return use(
        (store, hash) -> {
          try (ReportTarget target = output.open(console, List.of())) {
            try {
              LedgerExport.write(store, target.writer());
              target.commit();
            } catch (IOException e) {
              throw target.failure(e);
            }
          }
          return ExitStatus.OK;
        });
  }

  int forget(LocalDate before) {
    long forgotten = use((store, hash) -> store.forgetBefore(before));
    console.print(
        "Removed " + Counted.of(forgotten, "entry", "entries") + " before " + before + ".");
    return ExitStatus.OK;
  }

  int takeIn(List<Path> files, LimitOptions limits) {
    SpecTables tables = SpecTables.open();
    Examiner examiner = new Examiner(tables, limits.reading());
    ExaminationOptions options = ExaminationOptions.standard().withDepth(Depth.STRUCTURE);
    return use(
        (store, hash) -> {
          Bookkeeper bookkeeper = new Bookkeeper(hash, tables, Version.number(), false, List.of());
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
