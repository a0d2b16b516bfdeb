package ridgeproof.archive;

import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;

import java.io.IOException;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import org.apache.hadoop.conf.Configuration;
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
import ridgeproof.archive.examining.ResultRow;
import ridgeproof.archive.examining.TableTask;
import ridgeproof.archive.input.ArchiveInput;
import ridgeproof.archive.input.ByteBins;
import ridgeproof.archive.input.InputBatches;
import ridgeproof.archive.store.ArchiveStore;
import ridgeproof.archive.store.ArchiveTable;
import ridgeproof.archive.store.KnownHashes;
import ridgeproof.ledger.KeyedHash;

/** Examines what is not in the archive yet, batch by batch. */
final class ArchiveRun {

  /** Parts of a batch for each core: the end of a batch, when cores run idle, becomes short. */
  private static final int PARTS_PER_CORE = 24;

  private final SparkSession spark;
  private final JavaSparkContext context;
  private final Configuration hadoop;
  private final ArchiveStore store;
  private final ExaminationPlan plan;
  private final KeyedHash hash;
  private final RunProgress progress;
  private final Broadcast<SerializableConfiguration> configuration;
  private final KnownHashes inputs = new KnownHashes();
  private final KnownHashes contents = new KnownHashes();

  ArchiveRun(SparkSession spark, ArchiveStore store, ExaminationPlan plan, RunProgress progress) {
    this.spark = spark;
    this.context = JavaSparkContext.fromSparkContext(spark.sparkContext());
    this.hadoop = context.hadoopConfiguration();
    this.store = store;
    this.plan = plan;
    this.hash = plan.hash();
    this.progress = progress;
    this.configuration = context.broadcast(new SerializableConfiguration(hadoop));
  }

  /** What a run did. */
  record Outcome(long examined, long quarantined, long alreadyThere) {}

  /** Results of a batch, to be computed. */
  private interface Results {
    JavaRDD<Row> of(Broadcast<KnownHashes> contents, Instant examined);
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
    InputBatches batches =
        new InputBatches(
            listing,
            input -> !inputs.contains(ExaminationPlan.inputHash(hash, input.identity())),
            maxFiles,
            maxBytes);
    Outcome outcome = new Outcome(0, 0, 0);
    for (List<ArchiveInput> batch = batches.next(); !batch.isEmpty(); batch = batches.next()) {
      progress.begin(batch.size());
      outcome = batch(outcome, results(batch), false);
    }
    return new Outcome(outcome.examined(), outcome.quarantined(), batches.leftOut());
  }

  /**
   * Examines what a column of tables holds; a batch is some files of the tables.
   *
   * @param columns the bytes, and what tells rows apart if there is such a column
   */
  Outcome examineTable(Iterator<ArchiveInput> listing, long maxBytes, List<String> columns)
      throws IOException {
    rememberAll();
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
    return (known, examined) ->
        context
            .parallelize(parts, parts.size())
            .mapPartitions(
                new ExaminingTask(plan, known, examined, configuration, progress.done()));
  }

  private Results results(Dataset<Row> table) {
    Broadcast<KnownHashes> before = context.broadcast(inputs);
    return (known, examined) ->
        table
            .toJavaRDD()
            .mapPartitions(new TableTask(plan, before, known, examined, progress.done()));
  }

  /** Examines, stages and commits a batch. */
  private Outcome batch(Outcome before, Results results, boolean mayRepeatInputs)
      throws IOException {
    Broadcast<KnownHashes> known = context.broadcast(contents);
    Path stage = store.stage();
    String folder = new Path(stage, "results").toString();
    spark
        .createDataFrame(results.of(known, Instant.now()), ResultRow.SCHEMA)
        .write()
        .parquet(folder);
    Dataset<Row> written = spark.read().schema(ResultRow.SCHEMA).parquet(folder);
    if (mayRepeatInputs) {
      written =
          written
              .withColumn("input", coalesce(col("file.input"), col("quarantine.input")))
              .dropDuplicates("input");
    }
    new BatchTables(spark, written, stage).write(table(ArchiveTable.FILES));
    long examined = remember(written.where("file is not null").select("file.*"));
    long quarantined = written.where("quarantine is not null").count();
    store.commit();
    known.destroy();
    progress.committed();
    return new Outcome(
        before.examined() + examined, before.quarantined() + quarantined, before.alreadyThere());
  }

  private void rememberAll() {
    remember(table(ArchiveTable.FILES));
    Iterator<Row> broken = table(ArchiveTable.QUARANTINE).select("input").toLocalIterator();
    broken.forEachRemaining(row -> inputs.add(row.getString(0)));
  }

  /** Remembers the inputs and contents of files, and counts them. */
  private long remember(Dataset<Row> files) {
    Iterator<Row> hashes = files.select("input", "file_hash").toLocalIterator();
    long count = 0;
    while (hashes.hasNext()) {
      Row row = hashes.next();
      inputs.add(row.getString(0));
      contents.add(row.getString(1));
      count++;
    }
    return count;
  }

  private Dataset<Row> table(ArchiveTable table) {
    return spark.read().schema(table.schema()).parquet(store.table(table).toString());
  }
}
