package ridgeproof.archive;

import java.io.IOException;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.util.SerializableConfiguration;
import ridgeproof.archive.examining.ExaminationPlan;
import ridgeproof.archive.examining.ExaminingTask;
import ridgeproof.archive.examining.ResultRow;
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

  /**
   * Examines the inputs of a listing.
   *
   * @param maxFiles of a batch
   * @param maxBytes of a batch
   */
  Outcome examine(Iterator<ArchiveInput> listing, long maxFiles, long maxBytes) throws IOException {
    remember(table(ArchiveTable.FILES), inputs, "input");
    remember(table(ArchiveTable.QUARANTINE), inputs, "input");
    remember(table(ArchiveTable.FILES).where("not repeat"), contents, "file_hash");
    InputBatches batches =
        new InputBatches(
            listing,
            input -> !inputs.contains(ExaminationPlan.inputHash(hash, input.identity())),
            maxFiles,
            maxBytes);
    long examined = 0;
    long quarantined = 0;
    for (List<ArchiveInput> batch = batches.next(); !batch.isEmpty(); batch = batches.next()) {
      progress.begin(batch.size());
      long broken = examine(batch);
      quarantined += broken;
      examined += batch.size() - broken;
      progress.committed();
    }
    return new Outcome(examined, quarantined, batches.leftOut());
  }

  private long examine(List<ArchiveInput> batch) throws IOException {
    int cores = context.defaultParallelism();
    List<List<ArchiveInput>> parts = ByteBins.of(batch, PARTS_PER_CORE * cores);
    Broadcast<KnownHashes> known = context.broadcast(contents);
    JavaRDD<Row> rows =
        context
            .parallelize(parts, parts.size())
            .mapPartitions(
                new ExaminingTask(plan, known, Instant.now(), configuration, progress.done()));
    Path stage = store.stage();
    String results = new Path(stage, "results").toString();
    spark.createDataFrame(rows, ResultRow.SCHEMA).write().parquet(results);
    Dataset<Row> written = spark.read().schema(ResultRow.SCHEMA).parquet(results);
    new BatchTables(spark, written, stage).write(table(ArchiveTable.FILES));
    remember(
        written.where("file is not null").select("file.input", "file.file_hash"),
        contents,
        "file_hash");
    long quarantined = written.where("quarantine is not null").count();
    store.commit();
    known.destroy();
    return quarantined;
  }

  private static void remember(Dataset<Row> rows, KnownHashes into, String column) {
    Iterator<Row> hashes = rows.select(column).toLocalIterator();
    while (hashes.hasNext()) {
      into.add(hashes.next().getString(0));
    }
  }

  private Dataset<Row> table(ArchiveTable table) {
    return spark.read().schema(table.schema()).parquet(store.table(table).toString());
  }
}
