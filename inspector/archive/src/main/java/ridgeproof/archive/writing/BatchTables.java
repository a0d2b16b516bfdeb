package ridgeproof.archive.writing;

import static org.apache.spark.sql.functions.broadcast;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.lit;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.util.SerializableConfiguration;
import ridgeproof.archive.examining.FileResult;
import ridgeproof.archive.examining.ResultKey;
import ridgeproof.archive.examining.StagedResults;
import ridgeproof.archive.store.ArchiveTable;
import scala.Tuple2;

/** Divides the results of a batch among the tables, by day. */
public final class BatchTables {

  private static final int PARTS_PER_CORE = 4;

  private final JavaSparkContext context;
  private final Broadcast<SerializableConfiguration> configuration;
  private final Supplier<Dataset<Row>> archived;

  /**
   * @param archived rows of files that the archive has, for those that are there again; asked for
   *     only then
   */
  public BatchTables(
      JavaSparkContext context,
      Broadcast<SerializableConfiguration> configuration,
      Supplier<Dataset<Row>> archived) {
    this.context = context;
    this.configuration = configuration;
    this.archived = archived;
  }

  /**
   * Writes the tables.
   *
   * @param mayRepeatInputs whether several results can be of one input, of which one counts
   */
  public WrittenTables write(List<StagedResults> staged, Path stage, boolean mayRepeatInputs) {
    JavaPairRDD<ResultKey, byte[]> all = read(staged);
    JavaPairRDD<ResultKey, byte[]> results =
        mayRepeatInputs
            ? all.mapToPair(result -> new Tuple2<>(result._1.input(), result))
                .reduceByKey((one, other) -> one._1.compareTo(other._1) <= 0 ? one : other)
                .mapToPair(Tuple2::_2)
            : all;
    if (staged.stream().anyMatch(part -> part.repeats() > 0)) {
      results = results.filter(result -> !FileResult.isRepeat(result._2)).union(copied(results));
    }
    return results
        .repartitionAndSortWithinPartitions(new DayPartitioner(context.defaultParallelism()))
        .mapPartitions(new WritingTask(stage.toString(), configuration))
        .collect()
        .stream()
        .reduce(WrittenTables.none(), WrittenTables::and);
  }

  private JavaPairRDD<ResultKey, byte[]> read(List<StagedResults> staged) {
    Broadcast<SerializableConfiguration> hadoop = configuration;
    int parts = Math.min(staged.size(), PARTS_PER_CORE * context.defaultParallelism());
    return context
        .parallelize(staged, Math.max(1, parts))
        .flatMapToPair(part -> part.read(hadoop.value().value()).iterator());
  }

  /** Rows for files that the archive has, with what was found out about them then. */
  private JavaPairRDD<ResultKey, byte[]> copied(JavaPairRDD<ResultKey, byte[]> results) {
    List<String> own = List.of("input", "bytes", "modified", "examined");
    Dataset<Row> firsts = archived.get().where("not repeat").as("first");
    Dataset<Row> repeats =
        firsts
            .sparkSession()
            .createDataFrame(
                results
                    .filter(result -> FileResult.isRepeat(result._2))
                    .map(result -> FileResult.of(result._2).row()),
                ArchiveTable.FILES.schema());
    Column[] columns =
        Arrays.stream(ArchiveTable.FILES.schema().fieldNames())
            .map(
                name ->
                    "repeat".equals(name)
                        ? lit(true).as(name)
                        : col((own.contains(name) ? "again." : "first.") + name).as(name))
            .toArray(Column[]::new);
    return firsts
        .join(
            broadcast(repeats.as("again")), col("first.file_hash").equalTo(col("again.file_hash")))
        .select(columns)
        .toJavaRDD()
        .mapToPair(
            row -> {
              FileResult result = FileResult.repeat(row);
              return new Tuple2<>(result.key(), result.bytes());
            });
  }
}
