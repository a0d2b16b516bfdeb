package ridgeproof.archive;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.apache.spark.util.SerializableConfiguration;
import ridgeproof.archive.examining.ExaminationPlan;
import ridgeproof.archive.examining.ExaminingTask;
import ridgeproof.archive.examining.StagedResults;
import ridgeproof.archive.examining.TableTask;
import ridgeproof.archive.input.ArchiveInput;
import ridgeproof.archive.input.ByteBins;
import ridgeproof.archive.input.InputBatches;
import ridgeproof.archive.store.ArchiveStore;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.archive.store.DataFile;
import ridgeproof.archive.store.KnownHashes;
import ridgeproof.archive.store.KnownRows;
import ridgeproof.archive.writing.BatchTables;
import ridgeproof.archive.writing.WrittenTables;
import ridgeproof.ledger.KeyedHash;

/** Examines what is not in the archive yet, batch by batch. */
final class ArchiveRun {

  /** Parts of a batch for each core: the end of a batch, when cores run idle, becomes short. */
  private static final int PARTS_PER_CORE = 24;

  /** Files of tables that one task reads what is known from. */
  private static final int FILES_PER_PART = 100;

  private final JavaSparkContext context;
  private final ArchiveStore store;
  private final ExaminationPlan plan;
  private final KeyedHash hash;
  private final RunProgress progress;
  private final Broadcast<SerializableConfiguration> configuration;
  private final BatchTables tables;
  private final KnownRows known = KnownRows.none();

  ArchiveRun(
      JavaSparkContext context, ArchiveStore store, ExaminationPlan plan, RunProgress progress) {
    this.context = context;
    this.store = store;
    this.plan = plan;
    this.hash = plan.hash();
    this.progress = progress;
    this.configuration =
        context.broadcast(new SerializableConfiguration(context.hadoopConfiguration()));
    this.tables = new BatchTables(context, configuration, this::archived);
  }

  /** What a run did. */
  record Outcome(long examined, long quarantined, long alreadyThere) {}

  /** Results of a batch, to be computed. */
  private interface Results {
    JavaRDD<StagedResults> of(String folder, Broadcast<KnownHashes> contents, Instant examined);
  }

  /**
   * Examines the files of a listing.
   *
   * @param maxFiles of a batch
   * @param maxBytes of a batch
   */
  Outcome examineFiles(Iterator<ArchiveInput> listing, long maxFiles, long maxBytes)
      throws IOException {
    rememberAll();
    InputBatches batches = new InputBatches(listing, this::isNew, maxFiles, maxBytes);
    Outcome outcome = new Outcome(0, 0, 0);
    for (List<ArchiveInput> batch = batches.next(); !batch.isEmpty(); batch = batches.next()) {
      progress.begin(batch.size());
      outcome = batch(outcome, results(batch), false);
    }
    return new Outcome(outcome.examined(), outcome.quarantined(), batches.leftOut());
  }

  /** The hashes of a new archive's inputs are left to the tasks; the driver has one core. */
  private boolean isNew(ArchiveInput input) {
    return known.inputs().size() == 0
        || !known.inputs().contains(ExaminationPlan.inputHash(hash, input.identity()));
  }

  /**
   * Examines what a column of tables holds; a batch is some files of the tables.
   *
   * @param columns the bytes, and what tells rows apart if there is such a column
   */
  Outcome examineTable(Iterator<ArchiveInput> listing, long maxBytes, List<String> columns)
      throws IOException {
    rememberAll();
    SparkSession spark = ArchiveSession.open();
    // A row is a whole file, of which the usual thousands would not fit into memory.
    spark.conf().set("spark.sql.parquet.columnarReaderBatchSize", 16);
    InputBatches batches = new InputBatches(listing, ArchiveRun::isTable, Long.MAX_VALUE, maxBytes);
    Outcome outcome = new Outcome(0, 0, 0);
    long rows = 0;
    for (List<ArchiveInput> batch = batches.next(); !batch.isEmpty(); batch = batches.next()) {
      String[] files = batch.stream().map(ArchiveInput::address).toArray(String[]::new);
      Dataset<Row> table =
          spark
              .read()
              .parquet(files)
              .select(columns.stream().map(functions::col).toArray(Column[]::new));
      long all = table.count();
      rows += all;
      progress.begin((int) all);
      outcome = batch(outcome, results(table), true);
    }
    long done = outcome.examined() + outcome.quarantined();
    return new Outcome(outcome.examined(), outcome.quarantined(), rows - done);
  }

  private static boolean isTable(ArchiveInput file) {
    return file.name().endsWith(".parquet")
        && !file.name().startsWith(".")
        && !file.name().startsWith("_");
  }

  private Results results(List<ArchiveInput> batch) {
    List<List<ArchiveInput>> parts =
        ByteBins.of(batch, PARTS_PER_CORE * context.defaultParallelism());
    return (folder, contents, examined) ->
        context
            .parallelize(parts, parts.size())
            .mapPartitions(
                new ExaminingTask(
                    plan, folder, contents, examined, configuration, progress.done()));
  }

  private Results results(Dataset<Row> table) {
    Broadcast<KnownHashes> before = context.broadcast(known.inputs());
    return (folder, contents, examined) ->
        table
            .toJavaRDD()
            .mapPartitions(
                new TableTask(
                    plan, folder, before, contents, examined, configuration, progress.done()));
  }

  /** Examines, stages and commits a batch. */
  private Outcome batch(Outcome before, Results results, boolean mayRepeatInputs)
      throws IOException {
    Broadcast<KnownHashes> contents = context.broadcast(known.contents());
    Path stage = store.stage();
    String folder = new Path(stage, "results").toString();
    List<StagedResults> staged = results.of(folder, contents, Instant.now()).collect();
    WrittenTables written = tables.write(staged, stage, mayRepeatInputs);
    store.commit(written.files());
    known.addAll(written.known());
    contents.destroy();
    progress.committed();
    return new Outcome(
        before.examined() + written.examined(),
        before.quarantined() + written.quarantined(),
        before.alreadyThere());
  }

  /** Reads what the archive holds, as many files at a time as keeps all cores busy. */
  private void rememberAll() throws IOException {
    List<DataFile> files = new ArrayList<>(store.data(ArchiveTable.FILES));
    files.addAll(store.data(ArchiveTable.QUARANTINE));
    Broadcast<SerializableConfiguration> shared = configuration;
    int parts = PARTS_PER_CORE * context.defaultParallelism();
    int step = parts * FILES_PER_PART;
    for (int i = 0; i < files.size(); i += step) {
      List<DataFile> some = new ArrayList<>(files.subList(i, Math.min(i + step, files.size())));
      context
          .parallelize(some, Math.min(parts, some.size()))
          .mapPartitions(part -> List.of(KnownRows.in(part, shared.value().value())).iterator())
          .collect()
          .forEach(known::addAll);
    }
  }

  private Dataset<Row> archived() {
    return ArchiveSession.open()
        .read()
        .schema(ArchiveTable.FILES.schema())
        .parquet(store.table(ArchiveTable.FILES).toString());
  }
}
