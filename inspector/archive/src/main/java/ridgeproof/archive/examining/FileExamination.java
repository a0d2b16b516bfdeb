package ridgeproof.archive.examining;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.hadoop.conf.Configuration;
import ridgeproof.archive.examining.FileResult.InputFacts;
import ridgeproof.archive.input.ArchiveInput;
import ridgeproof.archive.input.InputBytes;
import ridgeproof.archive.store.KnownHashes;
import ridgeproof.cli.io.TransactionSigns;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.ledger.bookkeeping.Bookkeeper;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.record.ByteSource;

/** Examines the inputs of one task one after the other; each ends in one row, whatever it is. */
final class FileExamination implements AutoCloseable {

  private final ExaminationPlan plan;
  private final KnownHashes known;
  private final Instant examined;
  private final Configuration configuration;
  private final KeyedHash hash;
  private final TransactionSigns signs;
  private final ExaminationOptions options;
  private final Examiner examiner;
  private final ReportRows rows;
  private final GuardedWork work;

  /**
   * @param known hashes of files that the archive has
   * @param examined the time that the rows state
   */
  FileExamination(
      ExaminationPlan plan, KnownHashes known, Instant examined, Configuration configuration) {
    SpecTables tables = WorkerTables.TABLES;
    this.plan = plan;
    this.known = known;
    this.examined = examined;
    this.configuration = configuration;
    this.hash = plan.hash();
    this.signs = new TransactionSigns(tables);
    this.options = plan.options(tables);
    this.examiner = new Examiner(tables, plan.limits().reading());
    this.rows =
        new ReportRows(new Bookkeeper(hash, tables, plan.program(), false, List.of()), examined);
    this.work = new GuardedWork(plan.patience());
  }

  /** Reads and examines a file. */
  FileResult of(ArchiveInput input) {
    InputFacts facts = facts(input, null);
    if (input.whyNot().isPresent()) {
      return refused(facts, Reason.NOT_READABLE, input.whyNot().get());
    }
    if (input.bytes() > plan.limits().maxBytes()) {
      return refused(facts, Reason.TOO_LARGE, "more than " + plan.limits().maxBytes() + " bytes");
    }
    return guarded(facts, () -> read(input, facts));
  }

  /**
   * Examines bytes that a table holds.
   *
   * @param id what tells the row of the table from others
   */
  FileResult of(String id, byte[] bytes) {
    InputFacts facts =
        new InputFacts(ExaminationPlan.inputHash(hash, id), null, bytes.length, null);
    if (bytes.length > plan.limits().maxBytes()) {
      return refused(facts, Reason.TOO_LARGE, "more than " + plan.limits().maxBytes() + " bytes");
    }
    return guarded(facts, () -> examine(facts, bytes));
  }

  private FileResult read(ArchiveInput input, InputFacts facts) {
    byte[] bytes;
    try {
      bytes = InputBytes.read(input, plan.limits().maxBytes(), configuration);
    } catch (IOException e) {
      return refused(facts, Reason.NOT_READABLE, "cannot be read");
    }
    if (bytes.length > plan.limits().maxBytes()) {
      return refused(facts, Reason.TOO_LARGE, "more than " + plan.limits().maxBytes() + " bytes");
    }
    byte[] beginning = Arrays.copyOf(bytes, Math.min(bytes.length, TransactionSigns.SAMPLE));
    Optional<String> other = signs.whyNot(input.name(), beginning);
    return other.isPresent()
        ? refused(facts, Reason.NOT_A_TRANSACTION, other.get())
        : examine(facts, bytes);
  }

  private FileResult examine(InputFacts facts, byte[] bytes) {
    ByteSource source = ByteSource.of(bytes);
    InputFacts read = new InputFacts(facts.hash(), source.sha256(), bytes.length, facts.modified());
    if (known.contains(read.fileHash())) {
      return FileResult.repeat(read, examined, LocalDate.ofEpochDay(plan.today()));
    }
    FindingsReport report = examiner.examine(source, options);
    return rows.of(read, report);
  }

  private FileResult guarded(InputFacts facts, GuardedWork.Examining examining) {
    try {
      return work.of(examining);
    } catch (GuardedWork.Broken e) {
      return refused(facts, e.reason(), e.getMessage());
    }
  }

  private InputFacts facts(ArchiveInput input, String fileHash) {
    return new InputFacts(
        ExaminationPlan.inputHash(hash, input.identity()),
        fileHash,
        input.bytes(),
        Instant.ofEpochMilli(input.modified()));
  }

  private FileResult refused(InputFacts facts, Reason reason, String detail) {
    return FileResult.quarantine(
        facts, reason, detail, plan.program(), examined, LocalDate.ofEpochDay(plan.today()));
  }

  @Override
  public void close() {
    work.close();
  }
}
